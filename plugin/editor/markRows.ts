/**
 * The rows that marks stand on, level through a part. The editor is told the least height of a mark and moves up whatever
 * needs more room than that, so nothing collides; a row that is clear of most notes, stems and signs keeps most marks level.
 */
import { isLowerVoice, linesIn, markSetting } from '../../core/index.ts';
import { markWidth } from './markWidth.ts';
import type { MarkedPlace } from './ownMarks.ts';
import { VOICES, voiceOf } from './place.ts';
import type { PartWalk, ScoreChord } from './scoreWalk.ts';

/** Where the first line of a mark begins: in staff spaces from its note, and down from the staff's edge that it stands at. */
export interface MarkOffset {
  readonly x: number;
  readonly y: number;
}

/** From the staff to the foot of a mark's last line, in half staff spaces; the same for a whole side of a staff. */
export type RowOf = (track: number) => number;

/** In half spaces: clear of slurs, and not so far off that a mark leaves its sign for one high note. */
const LOWEST_ROW = 8;
const HIGHEST_ROW = 14;
/** So many of the notes pass below the row. */
const SHARE_BELOW = 0.8;

/** In staff spaces. */
const STEM = 3.5;
const HEAD = 0.5;
/** A sign for the hand, and clear of it. */
const SIGN = 2.6;
/** From one line of a mark to the next, as both versions set them. */
const LINE = 1.9;
/** Down to the foot of a line from what is above it. */
const TEXT = 1.7;
/** From a grace note to its main note, from one grace note to the next, and at least between the marks of two. */
const GRACE = 1.5;
const NEXT_GRACE = 1.2;
const CLEAR = 0.4;

const BOTTOM_LINE = 8;
const MIDDLE_LINE = 4;

/** The rows for marks over these notes of a part. */
export function rowsFor(walk: PartWalk, chords: readonly ScoreChord[]): RowOf {
  const voices = new Set(walk.chords.concat(walk.rests as ScoreChord[]).map(voiceKey));
  const needs = new Map<string, number[]>();
  for (const chord of chords) {
    const key = sideKey(chord.track);
    const known = needs.get(key);
    if (known) known.push(needOf(chord, voices));
    else needs.set(key, [needOf(chord, voices)]);
  }
  const rows = new Map<string, number>();
  needs.forEach((all, key) => {
    all.sort((a, b) => a - b);
    const enough = Math.ceil(2 * all[Math.ceil(SHARE_BELOW * all.length) - 1]!);
    rows.set(key, Math.min(HIGHEST_ROW, Math.max(LOWEST_ROW, enough)));
  });
  return (track) => rows.get(sideKey(track)) ?? LOWEST_ROW;
}

/** Where the marks of a place stand. @param texts with the chords that they belong to, the nearest to the staff first */
export function offsetsFor(
  place: MarkedPlace,
  texts: readonly { readonly text: string; readonly chord: ScoreChord }[],
): readonly MarkOffset[] {
  const isBelow = isLowerVoice(voiceOf(place.track));
  const columns = columnsOf(place, texts);
  const below = new Map<ScoreChord, number>();
  return texts.map(({ text, chord }) => {
    const lines = Math.max(1, linesIn(text).length);
    const passed = below.get(chord) ?? 0;
    below.set(chord, passed + lines);
    const row = markSetting(text).row / 2;
    return {
      x: columns[place.chords.indexOf(chord)]!,
      y: isBelow ? row + LINE * (passed + 1 - lines) : -row - LINE * (passed + lines - 1),
    };
  });
}

/** How far from the main note each chord of a place has its marks: those of graces stand beside it, as their notes do. */
function columnsOf(
  { chords }: MarkedPlace,
  texts: readonly { readonly text: string; readonly chord: ScoreChord }[],
): readonly number[] {
  if (chords.length === 1) return [0];
  const widths = chords.map((of) =>
    Math.max(0, ...texts.filter(({ chord }) => chord === of).map(({ text }) => markWidth(linesIn(text)))),
  );
  const main = chords.findIndex(({ graceIndex }) => graceIndex === null);
  const columns = chords.map(() => 0);
  const step = (least: number, width: number) => Math.max(least, width > 0 ? width + CLEAR : 0);
  for (let i = main - 1; i >= 0; i--)
    columns[i] = columns[i + 1]! - step(i === main - 1 ? GRACE : NEXT_GRACE, widths[i]!);
  for (let i = main + 1; i < chords.length; i++)
    columns[i] = columns[i - 1]! + step(i === main + 1 ? GRACE : NEXT_GRACE, widths[i - 1]!);
  return columns;
}

const NO_BREAK_SPACE = '\u00a0';

/** For editors in which a mark cannot be moved: what a grace's mark that ends at the main note ends with, to stand over its own. */
export function spaceToMain({ chords }: MarkedPlace, chord: ScoreChord): string {
  const main = chords.findIndex(({ graceIndex }) => graceIndex === null);
  const steps = Math.max(0, main - chords.indexOf(chord));
  return NO_BREAK_SPACE.repeat(steps === 0 ? 0 : 3 * steps - 1);
}

function needOf({ notes, element, track, measureIndex }: ScoreChord, voices: ReadonlySet<string>): number {
  const lines = notes.map(({ line }) => line);
  const [top, bottom] = [Math.min(...lines), Math.max(...lines)];
  const isBelow = isLowerVoice(voiceOf(track));
  const others = [0, 1, 2, 3].filter((voice) =>
    voices.has(`${measureIndex}/${track - (track % VOICES) + voice}`),
  );
  const isStemUp = others.length > 1 ? !isBelow : top + bottom > 2 * MIDDLE_LINE;
  const stem = element.stem !== null && isStemUp !== isBelow ? STEM : HEAD;
  const beyond = isBelow ? (bottom - BOTTOM_LINE) / 2 + stem : stem - top / 2;
  return Math.max(0, beyond) + (isBelow ? TEXT + LINE : SIGN);
}

function sideKey(track: number): string {
  return `${Math.floor(track / VOICES)}${isLowerVoice(voiceOf(track)) ? 'below' : ''}`;
}

function voiceKey({ measureIndex, track }: ScoreChord): string {
  return `${measureIndex}/${track}`;
}
