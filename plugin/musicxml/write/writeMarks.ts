/** Writes marks into a score's text, and takes them out again, without touching anything else. */
import {
  escapedText,
  isLowerVoice,
  linesBelow,
  MARK_PREFIX,
  type Mark,
  markText,
  type PassageNote,
} from '../../../core/index.ts';
import { type Splice, splicedText } from '../bytes/splices.ts';
import type { NoteInText } from '../read/notesInText.ts';
import { OWN_SIGN } from '../read/ownMarks.ts';
import { readScore } from '../read/readScore.ts';
import type { HornPart, Score } from '../read/score.ts';
import { indentBefore, lineEndOf } from '../read/whitespace.ts';

/** Something a part lacks and gets from us: the sign under a stopped word, the word that ends a stopped passage. */
export type Completion =
  | { readonly kind: 'stopped-sign'; readonly noteIndex: number }
  /** A word over the staff, directly before the note. */
  | { readonly kind: 'word'; readonly noteIndex: number; readonly text: string };

/** What to write into one part. */
export interface PartMarks {
  readonly partId: string;
  readonly marks: readonly Mark[];
  readonly completions?: readonly Completion[];
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
  return splicedText(score.text, markSplices(score, parts, options));
}

/**
 * The same as changes of the score's text, for those who turn it into bytes at once and need not have it whole.
 * @returns in the order of the text, none reaching into another
 * @throws {RangeError} when a part or note is not in the score
 */
export function markSplices(
  score: Score,
  parts: readonly PartMarks[],
  options: WriteOptions = {},
): readonly Splice[] {
  const writer = new MarkWriter(score, options);
  for (const part of parts) writer.addPart(part);
  return writer.splices();
}

/**
 * A MusicXML text without any mark of ours; every other character stays.
 * @throws {ScoreError} when the text is not a well-formed MusicXML score
 */
export function clearMarks(text: string): string {
  return writeMarks(readScore(text), []);
}

interface Edit extends Splice {
  /** The order edits were made in. */
  readonly order: number;
}

/** Small, upright, plain: read well over the staff in a trial. */
const MARK_FONT = ' font-size="8" font-style="normal" font-weight="normal"';

class MarkWriter {
  private readonly score: Score;
  private readonly options: WriteOptions;
  private readonly edits: Edit[] = [];
  private readonly lineEnd: string;
  /** `staff/voice` of the part being written. */
  private lowerVoices: ReadonlySet<string> = new Set();
  /** Of the part being written, by all that they are made of: a part has many marks, and few different ones. */
  private readonly directions = new Map<string, string>();

  constructor(score: Score, options: WriteOptions) {
    this.score = score;
    this.options = options;
    this.lineEnd = lineEndOf(score.text);
    for (const { start, end } of score.ownSpans)
      this.edits.push({ start, end, text: '', order: this.edits.length });
  }

  addPart({ partId, marks, completions = [] }: PartMarks): void {
    const horn = this.score.horns.filter(({ id }) => id === partId)[0];
    if (!horn) throw new RangeError(`"partId" must be a part of the score that was read, got "${partId}"`);
    this.lowerVoices = lowerVoicesOf(horn.passage.notes);
    this.directions.clear();
    for (const completion of completions) this.add(horn, completion);
    for (const mark of inPrintingOrder(marks, horn.passage.notes)) this.mark(horn, mark);
  }

  splices(): readonly Splice[] {
    // At one offset what is put in comes before what is taken out, and in the order it was added.
    this.edits.sort((a, b) => a.start - b.start || a.end - b.end || a.order - b.order);
    let done = 0;
    return this.edits.map(({ start, end, text }) => {
      const from = Math.max(start, done);
      done = Math.max(end, done);
      return { start: from, end: done, text };
    });
  }

  private mark(horn: HornPart, { noteIndex, lines, valves, colour }: Mark): void {
    const place = horn.notesInText.at(noteIndex);
    const rank = horn.passage.notes[noteIndex]!.chordRank;
    const colours = colour !== null && !place.hasColour;
    if (lines.length > 0 || colours) {
      const printed = this.isBelow(horn, noteIndex) ? linesBelow(lines) : lines;
      this.insertDirection(horn, noteIndex, markText(printed, colours ? rank : null), MARK_FONT);
    }
    if (colours) this.insert(place.start + `<${this.score.prefix}note`.length, ` color="${colour}"`);
    if (this.options.fingerings && valves !== null) {
      const { prefix } = this.score;
      this.insertNotations(
        place,
        '',
        `<${prefix}fingering>${escapedText(MARK_PREFIX + valves)}</${prefix}fingering>`,
      );
    }
  }

  private add(horn: HornPart, completion: Completion): void {
    const place = horn.notesInText.at(completion.noteIndex);
    if (completion.kind === 'word') {
      this.insertDirection(horn, completion.noteIndex, markText([completion.text], null), '');
    } else {
      const placement = this.isBelow(horn, completion.noteIndex) ? ' placement="below"' : '';
      this.insertNotations(place, OWN_SIGN, `<${this.score.prefix}stopped${placement}/>`);
    }
  }

  private isBelow({ passage }: HornPart, noteIndex: number): boolean {
    const { staff, voice } = passage.notes[noteIndex]!;
    return this.lowerVoices.has(`${staff}/${voice}`);
  }

  private insertDirection(horn: HornPart, noteIndex: number, words: string, font: string): void {
    const { text } = this.score;
    const { staff, voice } = horn.passage.notes[noteIndex]!;
    const { chordStart, statesVoice, statesStaff } = horn.notesInText.at(noteIndex);
    const indent = indentBefore(text, chordStart);
    const key = `${staff}/${voice}/${statesVoice}/${statesStaff}/${font}${words}${indent}`;
    let direction = this.directions.get(key);
    if (direction === undefined) {
      const placement = this.isBelow(horn, noteIndex) ? 'below' : 'above';
      const told = { voice: statesVoice ? voice : null, staff: statesStaff ? staff : null };
      direction = this.direction(words, font, placement, told) + indent;
      this.directions.set(key, direction);
    }
    this.insert(chordStart, direction);
  }

  private direction(
    words: string,
    font: string,
    placement: 'above' | 'below',
    told: { readonly voice: string | null; readonly staff: number | null },
  ): string {
    const { prefix: p } = this.score;
    const content = escapedText(words).replace(/\n/g, this.lineEnd);
    const voice = told.voice === null ? '' : `<${p}voice>${escapedText(told.voice)}</${p}voice>`;
    const staff = told.staff === null ? '' : `<${p}staff>${told.staff}</${p}staff>`;
    const type = `<${p}direction-type><${p}words${font}>${content}</${p}words></${p}direction-type>`;
    return `<${p}direction placement="${placement}">${type}${voice}${staff}</${p}direction>`;
  }

  private insertNotations(place: NoteInText, before: string, technical: string): void {
    const { prefix: p, text } = this.score;
    const indent = indentBefore(text, text.indexOf('<', place.start + 1));
    const content = `${before}<${p}technical>${technical}</${p}technical>`;
    this.insert(place.notationsAt, `${indent}<${p}notations>${content}</${p}notations>`);
  }

  private insert(at: number, text: string): void {
    this.edits.push({ start: at, end: at, text, order: this.edits.length });
  }
}

/** The lower players' voices, where a staff has several. */
function lowerVoicesOf(notes: readonly PassageNote[]): ReadonlySet<string> {
  const voices = new Map<number, Set<string>>();
  for (const { staff, voice } of notes) {
    const onStaff = voices.get(staff) ?? new Set();
    voices.set(staff, onStaff.add(voice));
  }
  const lower = new Set<string>();
  voices.forEach((onStaff, staff) => {
    if (onStaff.size < 2) return;
    for (const voice of Array.from(onStaff)) if (isLowerVoice(Number(voice))) lower.add(`${staff}/${voice}`);
  });
  return lower;
}

/** Hosts put a later text further from the staff: the top note of a chord comes last, to have its text on top. */
function inPrintingOrder(marks: readonly Mark[], notes: readonly PassageNote[]): readonly Mark[] {
  const headOf = ({ noteIndex }: Mark) => notes[noteIndex]?.chordHead ?? noteIndex;
  const rankOf = ({ noteIndex }: Mark) => notes[noteIndex]?.chordRank ?? 0;
  return marks.slice().sort((a, b) => headOf(a) - headOf(b) || rankOf(b) - rankOf(a));
}
