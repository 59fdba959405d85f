/** Reads a MusicXML score: one pass of an XML parser, no tree. */
import { SaxesParser } from 'saxes';
import { ScoreError } from '../bytes/scoreError.ts';
import { CharacterData } from './characterData.ts';
import { mayHoldMarks } from './ownMarks.ts';
import { type PartEntry, PartList } from './partList.ts';
import { PartReader } from './partReader.ts';
import { requestedIds } from './partRequest.ts';
import type { Score, Span } from './score.ts';
import type { Attributes, ElementReader, Source } from './source.ts';
import { TempoMarks } from './tempoMarks.ts';
import { xmlFault } from './xmlFault.ts';

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
  private readonly characters: CharacterData;
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
  private isInMeasure = false;
  private isTaking = false;
  private takenFrom = 0;

  constructor(text: string, options: ReadOptions) {
    this.text = text;
    this.characters = new CharacterData(text);
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
    parser.on('doctype', (doctype) => {
      Object.assign(parser.ENTITIES, this.characters.declare(doctype));
    });
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
      this.isTaking = this.inner.open(this.localName(tagName), attributes, isChild);
      if (this.isTaking) this.takenFrom = this.parser.position;
    } else if (depth === 0) this.openRoot(tagName);
    else if (depth === 1) this.openSection(this.localName(tagName), attributes);
    else if (depth === 2) this.openSecond(this.localName(tagName), attributes);
    else if (depth === 3 && this.isInMeasure && this.reader !== null) {
      this.inner = this.reader.openChild(this.localName(tagName), attributes);
      this.innerDepth = 3;
    }
  }

  private close(tagName: string): void {
    const depth = --this.depth;
    if (this.inner !== null) {
      if (depth > this.innerDepth) {
        if (this.isTaking) {
          this.isTaking = false;
          const text = this.characters.between(this.takenFrom, this.parser.position);
          this.inner.take(this.localName(tagName), text);
        }
        if (depth === this.innerDepth + 1) this.inner.endChild(this.localName(tagName));
        return;
      }
      this.inner = null;
      if (depth === 3) this.reader?.closeChild();
    }
    if (depth === 2 && this.isInMeasure) {
      this.isInMeasure = false;
      this.reader?.endMeasure();
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
      this.isInMeasure = true;
    } else if (this.reader !== null && name === 'measure') {
      this.measureIndex += 1;
      this.reader.startMeasure(this.measureIndex, attributes.number ?? '');
      this.isInMeasure = true;
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
    this.wantedIds = requestedIds(asked, parts);
  }

  /** The name without MusicXML's own prefix; elements of other vocabularies come out under a name that nothing here knows. */
  private localName(tagName: string): string {
    if (this.prefix === '') return tagName;
    return tagName.indexOf(this.prefix) === 0 ? tagName.slice(this.prefix.length) : '';
  }
}
