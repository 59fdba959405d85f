/** Writes marks into a score's text, and takes them out again, without touching anything else. */
import { MARK_PREFIX, type Mark, markText } from '../../core/annotation.ts';
import { foreignIdNumbers, ID_PREFIX } from './ownMarks.ts';
import { readScore } from './readScore.ts';
import type { HornPart, NotePlace, Score, Span } from './score.ts';
import { indentBefore, lineEndOf } from './whitespace.ts';

/** Something a part lacks and gets from us: the sign under a stopped word, the word that ends a stopped passage. */
export type Addition =
  | { readonly kind: 'stopped-sign'; readonly noteIndex: number }
  /** A word over the staff, directly before the note. */
  | { readonly kind: 'word'; readonly noteIndex: number; readonly text: string };

/** What to write into one part. */
export interface PartMarks {
  readonly partId: string;
  readonly marks: readonly Mark[];
  readonly additions?: readonly Addition[];
}

export interface WriteOptions {
  /** Write each mark's valves as a `fingering` of its note; default false. */
  readonly fingerings?: boolean;
}

/**
 * The score's text with these marks, in place of all that earlier runs wrote.
 * @throws {RangeError} when a part or note is not in the score
 */
export function writeMarks(score: Score, parts: readonly PartMarks[], options: WriteOptions = {}): string {
  const writer = new MarkWriter(score, options);
  for (const part of parts) writer.addPart(part);
  return writer.write();
}

/**
 * A MusicXML text without any mark of ours; every other character stays.
 * @throws {ScoreError} when the text is not a well-formed MusicXML score
 */
export function clearMarks(text: string): string {
  return writeMarks(readScore(text), []);
}

/** A change at one offset: what is there until `end` gives way to `text`. */
interface Edit extends Span {
  readonly text: string;
}

class MarkWriter {
  private readonly score: Score;
  private readonly options: WriteOptions;
  private readonly edits: Edit[];
  private readonly usedIds: Set<number>;
  private readonly lineEnd: string;
  private lastId = 0;

  constructor(score: Score, options: WriteOptions) {
    this.score = score;
    this.options = options;
    this.edits = score.ownSpans.map(({ start, end }) => ({ start, end, text: '' }));
    this.usedIds = foreignIdNumbers(score.text, score.ownSpans);
    this.lineEnd = lineEndOf(score.text);
  }

  addPart({ partId, marks, additions = [] }: PartMarks): void {
    const horn = this.score.horns.filter(({ id }) => id === partId)[0];
    if (!horn) throw new RangeError(`"partId" must be a part of the score that was read, got "${partId}"`);
    for (const addition of additions) this.add(horn, addition);
    for (const mark of marks) this.mark(horn, mark);
  }

  write(): string {
    const { text } = this.score;
    // At one offset what is put in comes before what is taken out, and in the order it was added.
    const order = this.edits
      .map((edit, i) => ({ edit, i }))
      .sort((a, b) => a.edit.start - b.edit.start || a.edit.end - b.edit.end || a.i - b.i);
    const pieces: string[] = [];
    let done = 0;
    for (const { edit } of order) {
      if (edit.start > done) pieces.push(text.slice(done, edit.start));
      pieces.push(edit.text);
      if (edit.end > done) done = edit.end;
    }
    pieces.push(text.slice(done));
    return pieces.join('');
  }

  private mark(horn: HornPart, { noteIndex, lines, valves, colour }: Mark): void {
    const place = placeOf(horn, noteIndex);
    const rank = horn.passage.notes[noteIndex]!.chordRank;
    const colours = colour !== null && !place.hasColour;
    if (colours) this.insert(place.attributesAt, ` color="${colour}"`);
    if (lines.length > 0 || colours) {
      this.insertDirection(
        place,
        markText(lines, colours ? rank : null),
        ' font-size="8" font-style="normal" font-weight="normal"',
      );
    }
    if (this.options.fingerings && valves !== null) {
      this.insertNotations(place, this.element('fingering', escapeText(MARK_PREFIX + valves)));
    }
  }

  private add(horn: HornPart, addition: Addition): void {
    const place = placeOf(horn, addition.noteIndex);
    if (addition.kind === 'word') this.insertDirection(place, markText([addition.text], null), '');
    else this.insertNotations(place, `<${this.score.prefix}stopped/>`);
  }

  private insertDirection(place: NotePlace, words: string, font: string): void {
    const text = escapeText(words).replace(/\n/g, this.lineEnd);
    const children = [this.element('direction-type', this.element('words', text, font))];
    if (place.voice !== null) children.push(this.element('voice', escapeText(place.voice)));
    if (place.staff !== null) children.push(this.element('staff', escapeText(place.staff)));
    const direction = this.element(
      'direction',
      children.join(''),
      ` id="${this.nextId()}" placement="above"`,
    );
    this.insert(place.chordStart, direction + indentBefore(this.score.text, place.chordStart));
  }

  private insertNotations(place: NotePlace, technical: string): void {
    const { text } = this.score;
    const indent = indentBefore(text, text.indexOf('<', text.indexOf('>', place.attributesAt)));
    const notations = this.element(
      'notations',
      this.element('technical', technical),
      ` id="${this.nextId()}"`,
    );
    this.insert(place.notationsAt, indent + notations);
  }

  private element(name: string, content: string, attributes = ''): string {
    const tag = this.score.prefix + name;
    return `<${tag}${attributes}>${content}</${tag}>`;
  }

  private insert(at: number, text: string): void {
    this.edits.push({ start: at, end: at, text });
  }

  private nextId(): string {
    do this.lastId += 1;
    while (this.usedIds.has(this.lastId));
    return ID_PREFIX + this.lastId;
  }
}

function placeOf(horn: HornPart, noteIndex: number): NotePlace {
  const place = horn.places[noteIndex];
  if (!place) {
    throw new RangeError(`"noteIndex" must be an integer 0–${horn.places.length - 1}, got ${noteIndex}`);
  }
  return place;
}

function escapeText(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
}
