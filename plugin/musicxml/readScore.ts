/** Reads a MusicXML score: one pass of an XML parser, no tree. */
import { SaxesParser } from 'saxes';
import { mayHoldMarks } from './ownMarks.ts';
import { type PartEntry, PartList } from './partList.ts';
import { PartReader } from './partReader.ts';
import type { Score, Span } from './score.ts';
import { ScoreError } from './scoreError.ts';
import type { Attributes, ElementReader, Source } from './source.ts';
import { TempoMarks } from './tempoMarks.ts';
import { xmlFault } from './xmlFault.ts';

const LESS_THAN = 60;
const SLASH = 47;
const AMPERSAND = 38;
const CARRIAGE_RETURN = 13;

export interface ReadOptions {
  /** Parts to read as horns in place of those that look like horns: ids, names or pieces of them, or places in the score from 1. */
  readonly parts?: readonly string[];
}

/**
 * Reads the horn parts of a MusicXML text.
 * @returns the score; `horns` is empty when no part is a horn, and `parts` then tells what there is
 * @throws {ScoreError} when the text is not a well-formed MusicXML score, or a part asked for is not in it
 */
export function readScore(text: string, options: ReadOptions = {}): Score {
  return new ScoreReader(text, options).read();
}

/** Follows the frame of a score (root, part list, parts, measures) and hands what is inside to the part's reader. */
class ScoreReader implements Source {
  readonly text: string;
  readonly ownSpans: Span[] = [];
  private readonly options: ReadOptions;
  private readonly parser = new SaxesParser();
  private readonly partList = new PartList();
  private readonly tempos = new TempoMarks();
  private readonly readers = new Map<string, PartReader>();
  private wantedIds: ReadonlySet<string> | null = null;
  private mayHold: boolean | null = null;
  private prefix = '';
  private isTimewise = false;
  private isConcertScore = false;
  private depth = 0;
  /** The child of the root that is open. */
  private section = '';
  private reader: PartReader | null = null;
  /** What reads the inside of the element open at `innerDepth`. */
  private inner: ElementReader | null = null;
  private innerDepth = 0;
  private measureIndex = -1;
  private measure = '';
  private isTaking = false;
  private takenFrom = 0;
  private readonly entities: { [name: string]: string } = {};

  constructor(text: string, options: ReadOptions) {
    this.text = text;
    this.options = options;
  }

  offset(): number {
    return this.parser.position;
  }

  tagStart(): number {
    return this.text.lastIndexOf('<', this.parser.position - 1);
  }

  read(): Score {
    const { parser, partList } = this;
    parser.on('error', (error) => {
      throw xmlFault(error.message, parser.line, parser.column);
    });
    parser.on('doctype', (doctype) => this.defineEntities(doctype));
    parser.on('opentag', (tag) => this.open(tag.name, tag.attributes as Attributes));
    parser.on('closetag', (tag) => this.close(tag.name));
    parser.write(this.text).close();
    this.findWanted();
    const horns = [];
    for (const { id } of partList.parts) {
      const reader = this.wantedIds!.has(id) ? this.readers.get(id) : undefined;
      if (reader) horns.push(reader.finish());
    }
    this.ownSpans.sort((a, b) => a.start - b.start);
    const parts = partList.parts.map(({ id, name, isHorn }) => ({ id, name, isHorn }));
    const { text, ownSpans, prefix } = this;
    return { text, parts, horns, ownSpans, prefix };
  }

  private open(tagName: string, attributes: Attributes): void {
    const depth = this.depth++;
    if (this.inner !== null) {
      const isChild = depth === this.innerDepth + 1;
      if (this.inner.open(this.localName(tagName), attributes, isChild)) this.startTaking();
    } else if (depth === 0) this.openRoot(tagName);
    else if (depth === 1) this.openSection(this.localName(tagName), attributes);
    else if (depth === 2) this.openSecond(this.localName(tagName), attributes);
    else if (depth === 3 && this.reader !== null) {
      this.inner = this.reader.openChild(this.localName(tagName), attributes);
      this.innerDepth = 3;
    }
  }

  private close(tagName: string): void {
    const depth = --this.depth;
    if (this.inner !== null) {
      if (depth > this.innerDepth) {
        if (this.isTaking) this.inner.take(this.localName(tagName), this.endTaking());
        if (depth === this.innerDepth + 1) this.inner.endChild(this.localName(tagName));
        return;
      }
      this.inner = null;
      if (depth === 3) this.reader?.closeChild();
    }
    if (depth === 2 && this.reader !== null) {
      this.reader.endMeasure();
      if (this.isTimewise) this.reader = null;
    } else if (depth === 1) {
      this.reader = null;
      this.section = '';
    }
  }

  private openRoot(tagName: string): void {
    const colon = tagName.indexOf(':');
    this.prefix = tagName.slice(0, colon + 1);
    const name = tagName.slice(colon + 1);
    this.isTimewise = name === 'score-timewise';
    if (this.isTimewise || name === 'score-partwise') return;
    const { line, column } = this.parser;
    throw new ScoreError(
      `<${tagName}> is not a MusicXML score`,
      'export the music as MusicXML',
      line,
      column,
    );
  }

  private openSection(name: string, attributes: Attributes): void {
    this.section = name;
    if (name === 'part-list') {
      this.inner = this.partList;
      this.innerDepth = 1;
    } else if (name === 'part' && !this.isTimewise) {
      this.reader = this.readerOf(attributes.id ?? '');
      this.measureIndex = -1;
    } else if (name === 'measure' && this.isTimewise) {
      this.measureIndex += 1;
      this.measure = attributes.number ?? '';
    }
  }

  private openSecond(name: string, attributes: Attributes): void {
    if (this.section === 'defaults') {
      if (name === 'concert-score') this.isConcertScore = true;
    } else if (this.isTimewise && this.section === 'measure' && name === 'part') {
      this.reader = this.readerOf(attributes.id ?? '');
      this.reader.startMeasure(this.measureIndex, this.measure);
    } else if (this.reader !== null) {
      this.measureIndex += 1;
      this.reader.startMeasure(this.measureIndex, attributes.number ?? '');
    }
  }

  private readerOf(id: string): PartReader {
    const known = this.readers.get(id);
    if (known) return known;
    let entry: PartEntry | undefined = this.partList.parts.filter((part) => part.id === id)[0];
    if (!entry) {
      entry = { id, name: id, isHorn: false, hornInstruments: null };
      this.partList.parts.push(entry);
    }
    this.findWanted();
    const depth = this.wantedIds!.has(id) ? 'horn' : this.holdsMarks() ? 'marks' : 'tempos';
    const reader = new PartReader(entry, depth, this.isConcertScore, this, this.tempos);
    this.readers.set(id, reader);
    return reader;
  }

  /** Parts that are no horns need a closer look only in a text that may hold marks of ours. */
  private holdsMarks(): boolean {
    if (this.mayHold === null) this.mayHold = mayHoldMarks(this.text);
    return this.mayHold;
  }

  private findWanted(): void {
    if (this.wantedIds !== null) return;
    const { parts } = this.partList;
    const asked = this.options.parts;
    if (asked === undefined) {
      this.wantedIds = new Set(parts.filter(({ isHorn }) => isHorn).map(({ id }) => id));
      return;
    }
    const ids = new Set<string>();
    for (const request of asked) {
      const found = partsCalled(request, parts);
      if (found.length === 0) {
        const names = parts.map(({ name }) => `"${name}"`).join(', ') || 'none';
        throw new ScoreError(
          `there is no part "${request}"`,
          `choose one of the parts of this score (${names})`,
        );
      }
      for (const { id } of found) ids.add(id);
    }
    this.wantedIds = ids;
  }

  /** The name without MusicXML's own prefix; elements of other vocabularies come out under a name that nothing here knows. */
  private localName(tagName: string): string {
    if (this.prefix === '') return tagName;
    return tagName.indexOf(this.prefix) === 0 ? tagName.slice(this.prefix.length) : '';
  }

  // Text is cut out of the source where it is wanted: cheaper than listening to all of it.
  private startTaking(): void {
    this.isTaking = true;
    this.takenFrom = this.parser.position;
  }

  private endTaking(): string {
    this.isTaking = false;
    const { text, takenFrom } = this;
    for (let at = takenFrom; ; at++) {
      const code = text.charCodeAt(at);
      if (code === LESS_THAN && text.charCodeAt(at + 1) === SLASH) return text.slice(takenFrom, at);
      if (code === LESS_THAN || code === AMPERSAND || code === CARRIAGE_RETURN || at > this.parser.position)
        break;
    }
    const end = this.tagStart();
    return end <= takenFrom ? '' : this.plainText(text.slice(takenFrom, end));
  }

  /** The characters that a stretch of content stands for: references, CDATA, comments and line ends resolved. */
  private plainText(raw: string): string {
    const parser = new SaxesParser({ fragment: true });
    let text = '';
    const take = (piece: string) => {
      text += piece;
    };
    parser.on('error', () => {});
    parser.on('text', take);
    parser.on('cdata', take);
    for (const entity in this.entities) parser.ENTITIES[entity] = this.entities[entity]!;
    parser.write(raw).close();
    return text;
  }

  /** Entities that the document declares itself; the parser knows only XML's own five. */
  private defineEntities(doctype: string): void {
    const declaration = /<!ENTITY\s+([^\s%"'<>]+)\s+(?:"([^"<&%]*)"|'([^'<&%]*)')\s*>/g;
    for (let match = declaration.exec(doctype); match; match = declaration.exec(doctype)) {
      this.entities[match[1]!] = match[2] ?? match[3] ?? '';
      this.parser.ENTITIES[match[1]!] = this.entities[match[1]!]!;
    }
  }
}

/** The parts that a request means: by id, by name, by place, or by a piece of their names. */
function partsCalled(request: string, parts: readonly PartEntry[]): readonly PartEntry[] {
  const wanted = request.trim().toLowerCase();
  const byId = parts.filter(({ id }) => id.toLowerCase() === wanted);
  if (byId.length > 0) return byId;
  const byName = parts.filter(({ name }) => name.toLowerCase() === wanted);
  if (byName.length > 0) return byName;
  if (/^\d+$/.test(wanted)) return parts.slice(Number(wanted) - 1, Number(wanted));
  return wanted === '' ? [] : parts.filter(({ name }) => name.toLowerCase().indexOf(wanted) >= 0);
}
