/** Reads a MusicXML score: one pass of an XML parser, no tree. */
import { SaxesParser } from 'saxes';
import { ScoreError, type ScoreFault } from '../bytes/scoreError.ts';
import { CharacterData } from './characterData.ts';
import { Entities } from './entities.ts';
import { NoteFeed } from './noteFeed.ts';
import { PartList } from './partList.ts';
import type { PartReader } from './partReader.ts';
import { PartReaders } from './partReaders.ts';
import type { Score, Span } from './score.ts';
import type { Attributes, ElementReader, Source } from './source.ts';
import type { TempoReader } from './tempoReader.ts';
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

/** Notes, rests and words in the parts that are read: twenty times what the horns of the longest works have. */
const MOST_KEPT = 500_000;

/** Follows the frame of a score (root, part list, parts, measures) and hands what is inside to the part's reader. */
class ScoreReader implements Source {
  readonly text: string;
  readonly ownSpans: Span[] = [];
  private readonly entities = new Entities();
  private readonly characters: CharacterData;
  private readonly parser = new SaxesParser();
  private readonly feed: NoteFeed;
  private readonly partList = new PartList(this);
  private readonly readers: PartReaders;
  private prefix = '';
  private isTimewise = false;
  private isConcertScore = false;
  private depth = 0;
  /** The child of the root that is open. */
  private section = '';
  private reader: PartReader | TempoReader | null = null;
  private isInMeasure = false;
  /** What reads the inside of the element open at `innerDepth`. */
  private inner: ElementReader | null = null;
  private innerDepth = 0;
  private measureIndex = -1;
  /** Of a timewise score, the measure that is open. */
  private measure: Attributes = {};
  /** Its parts so far. */
  private readonly partsInMeasure = new Set<string>();
  private isTaking = false;
  private takenFrom = 0;
  private kept = 0;

  constructor(text: string, options: ReadOptions) {
    this.text = text;
    this.feed = new NoteFeed(text, this.parser);
    this.characters = new CharacterData(text, this.entities);
    this.readers = new PartReaders(this, this.partList, options.parts);
  }

  offset(): number {
    return this.feed.offset;
  }

  tagStart(): number {
    return this.text.lastIndexOf('<', this.feed.offset - 1);
  }

  localName(tagName: string): string {
    if (this.prefix === '') return tagName;
    // Elements of other vocabularies come out under a name that nothing here knows.
    return tagName.indexOf(this.prefix) === 0 ? tagName.slice(this.prefix.length) : '';
  }

  fault(fault: ScoreFault): ScoreError {
    const { line, column } = this.feed.place();
    return new ScoreError(fault, line, column);
  }

  keep(count: number): void {
    this.kept += count;
    if (this.kept > MOST_KEPT) throw new ScoreError(({ tooMuchMusic }) => tooMuchMusic(MOST_KEPT));
  }

  read(): Score {
    const { parser, partList } = this;
    parser.on('error', ({ message }) => {
      throw xmlFault(message, this.feed.place(), this.text);
    });
    this.entities.lendTo(parser);
    parser.on('doctype', (doctype) => {
      this.entities.declare(doctype);
      this.entities.lendTo(parser);
    });
    parser.on('opentag', (tag) => this.open(tag.name, tag.attributes as Attributes));
    parser.on('closetag', (tag) => this.close(tag.name));
    this.feed.run(() => this.prefix);
    const horns = this.readers.finish();
    this.ownSpans.sort((a, b) => a.start - b.start);
    const parts = partList.parts.map(({ id, name, isHorn }) => ({ id, name, isHorn }));
    const { text, ownSpans, entities, prefix } = this;
    return { text, parts, horns, ownSpans, entities, prefix };
  }

  private open(tagName: string, attributes: Attributes): void {
    const depth = this.depth++;
    if (this.inner !== null) {
      const isChild = depth === this.innerDepth + 1;
      this.isTaking = this.inner.open(this.localName(tagName), attributes, isChild);
      if (this.isTaking) this.takenFrom = this.feed.offset;
    } else if (depth === 3) {
      if (this.reader === null || !this.isInMeasure) return;
      const name = this.localName(tagName);
      this.inner = this.reader.openChild(name, attributes);
      this.innerDepth = 3;
    } else if (depth === 0) this.openRoot(tagName);
    else if (depth === 1) this.openSection(this.localName(tagName), attributes);
    else if (depth === 2) this.openSecond(this.localName(tagName), attributes);
  }

  private close(tagName: string): void {
    const depth = --this.depth;
    if (this.inner !== null) {
      if (depth > this.innerDepth) {
        if (this.isTaking) {
          this.isTaking = false;
          const text = this.characters.between(this.takenFrom, this.feed.offset);
          this.inner.take(this.localName(tagName), text);
        }
        if (depth === this.innerDepth + 1) this.inner.endChild(this.localName(tagName));
        return;
      }
      this.inner = null;
      if (depth === 3) this.reader?.closeChild();
    }
    if (depth === 3) this.feed.ready(this.isInMeasure ? this.reader : null);
    if (depth === 2 && this.isInMeasure) {
      this.isInMeasure = false;
      this.feed.ready(null);
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
    throw this.fault(({ notMusicXml }) => notMusicXml(tagName));
  }

  private openSection(name: string, attributes: Attributes): void {
    this.section = name;
    if (name === 'part-list') {
      this.inner = this.partList;
      this.innerDepth = 1;
    } else if (name === 'part' && !this.isTimewise) {
      const id = attributes.id ?? '';
      if (this.readers.has(id)) throw this.repeated(id);
      this.reader = this.readers.of(id, this.isConcertScore);
      this.measureIndex = -1;
    } else if (name === 'measure' && this.isTimewise) {
      this.measureIndex += 1;
      this.measure = attributes;
      this.partsInMeasure.clear();
    }
  }

  private openSecond(name: string, attributes: Attributes): void {
    if (this.section === 'defaults') {
      if (name === 'concert-score') this.isConcertScore = true;
    } else if (this.isTimewise && this.section === 'measure' && name === 'part') {
      const id = attributes.id ?? '';
      if (this.partsInMeasure.has(id)) throw this.repeated(id);
      this.partsInMeasure.add(id);
      this.reader = this.readers.of(id, this.isConcertScore);
      this.startMeasure(this.measure);
    } else if (this.reader !== null && name === 'measure') {
      this.measureIndex += 1;
      this.startMeasure(attributes);
    }
  }

  private startMeasure({ number = '', implicit }: Attributes): void {
    this.isInMeasure = true;
    this.reader?.startMeasure(this.measureIndex, number, implicit === 'yes');
    this.feed.ready(this.reader);
  }

  private repeated(id: string): ScoreError {
    return this.fault(({ partTwice }) => partTwice(id.slice(0, 200)));
  }
}
