/**
 * The rows that marks stand on, level through a part. The editor is told the least height of a mark and moves up whatever
 * needs more room than that, so nothing collides; a row that is clear of most notes, stems and signs keeps most marks level.
 */
import { heightIn, isLowerVoice, linesIn, markSetting } from '../../core/index.ts';
import { type Host, type HostText, isAtLeast } from './hostApi.ts';
import { needsIn } from './markNeeds.ts';
import { markLeft, markWidth } from './markWidth.ts';
import type { MarkedPlace } from './ownMarks.ts';
import { VOICES, voiceOf } from './place.ts';
import type { ScoreChord } from './scoreBar.ts';
import type { PartWalk } from './scoreWalk.ts';

/** Where the first line of a mark begins: in staff spaces from its note, and down from the staff's edge that it stands at. */
export interface MarkOffset {
  readonly x: number;
  readonly y: number;
}

/** From the staff to the foot of a mark's line nearest to it, in half staff spaces; the same for a whole side of a staff. */
export type RowOf = (track: number) => number;

/** In half spaces: clear of slurs, and not so far off that a mark leaves its sign for one high note. */
const NEAREST = 8;
const FURTHEST_ABOVE = 14;
/** A mark can say no further row; a lower voice mostly has its signs above the staff, so that its marks leave none. */
const FURTHEST_BELOW = 15;
/** So many of the notes pass below the row. */
const SHARE_BELOW = 0.8;

/** From one line of a mark to the next, as both versions set them. In staff spaces, as is what follows. */
const LINE = 1.9;
/** From a grace note to its main note, from one grace note to the next, and at least between the marks of two. */
const GRACE = 1.5;
const NEXT_GRACE = 1.2;
const CLEAR = 0.4;

/** The rows for marks over these notes of a part. */
export function rowsFor(host: Host, walk: PartWalk, chords: readonly ScoreChord[]): RowOf {
  const needOf = needsIn(host, walk);
  const needs = new Map<number, number[]>();
  for (const chord of chords) {
    const side = sideOf(chord.track);
    const known = needs.get(side);
    if (known) known.push(needOf(chord));
    else needs.set(side, [needOf(chord)]);
  }
  const rows = new Map<number, number>();
  needs.forEach((all, side) => {
    all.sort((a, b) => a - b);
    const enough = Math.ceil(2 * all[Math.ceil(SHARE_BELOW * all.length) - 1]!);
    const furthest = side % 2 === 0 ? FURTHEST_ABOVE : FURTHEST_BELOW;
    rows.set(side, Math.min(furthest, Math.max(NEAREST, enough)));
  });
  return (track) => rows.get(sideOf(track)) ?? NEAREST;
}

/**
 * True for a text that hangs below its staff, as all that a lower voice prints. What prints nothing never does: version 3
 * pushes all further staves off the page where a text without height hangs below one.
 */
export function hangs(text: string, track: number): boolean {
  return isLowerVoice(voiceOf(track)) && linesIn(text).length > 0;
}

/** Where the marks of a place stand. @param texts with the chords that they belong to, the nearest to the staff first */
export function offsetsFor(
  place: MarkedPlace,
  texts: readonly { readonly text: string; readonly chord: ScoreChord }[],
): readonly MarkOffset[] {
  const columns = columnsOf(place, texts);
  const below = new Map<ScoreChord, number>();
  return texts.map(({ text, chord }) => {
    const lines = Math.max(1, heightIn(text));
    const passed = below.get(chord) ?? 0;
    below.set(chord, passed + lines);
    const row = markSetting(text).row / 2;
    return {
      x: columns[place.chords.indexOf(chord)]! + markLeft(linesIn(text)),
      y: hangs(text, place.track) ? row + LINE * passed : -row - LINE * (passed + lines - 1),
    };
  });
}

/**
 * True for a mark that stands where the editor puts a text that nobody has placed: files in MusicXML hold no place that the
 * editor would read, so that a mark that went through one has lost its own. No row lies there. True as well for one that
 * prints nothing and hangs below its staff.
 */
export function isUnplaced(host: Host, { offsetX, offsetY, placement, text }: HostText): boolean {
  const places = isAtLeast(host, 4, 0) ? UNPLACED_4 : UNPLACED_3;
  return (
    (isNear(offsetX, 0) && places.some((place) => isNear(offsetY, place))) ||
    (placement === host.root.Placement.BELOW && linesIn(text).length === 0)
  );
}

/** Above the staff and below it, by the editor's own style. */
const UNPLACED_3: readonly number[] = [-2, 3.5];
const UNPLACED_4: readonly number[] = [-1, 2.5];

function isNear(one: number, other: number): boolean {
  return Math.abs(one - other) < 0.01;
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

/** The staff's upper side, an even number, or its lower one, where the marks of a lower voice stand. */
function sideOf(track: number): number {
  return 2 * Math.floor(track / VOICES) + (isLowerVoice(voiceOf(track)) ? 1 : 0);
}
