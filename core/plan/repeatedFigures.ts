/** Finds the figures of a line that are repeated at once, so that every repeat can be fingered the same. */
import type { PlannedNote } from './pathCost.ts';

/** Notes planned together. */
export interface Figure {
  readonly from: number;
  /** The first note after it. */
  readonly to: number;
  /** For a figure that is repeated at once, how pressed for time its first note is when it begins again; else null. */
  readonly repeatHurry: number | null;
}

/** Figures of up to this many notes are heard as repeats. A choice: three beats of sixteenths. */
const LONGEST_FIGURE = 12;

/** Cuts a line where a note has no fingering, and around every figure that is repeated at once. */
export function figuresOf(line: readonly PlannedNote[]): Figure[] {
  const figures: Figure[] = [];
  let start = 0;
  for (let i = 0; i <= line.length; i++) {
    if (i < line.length && line[i]!.options.length > 0) continue;
    if (i > start) cutRepeats(line, start, i, figures);
    start = i + 1;
  }
  return figures;
}

function cutRepeats(line: readonly PlannedNote[], from: number, to: number, figures: Figure[]): void {
  let start = from;
  let i = from;
  while (i < to) {
    const repeated = repeatAt(line, i, to);
    if (!repeated) {
      i += 1;
      continue;
    }
    if (i > start) figures.push({ from: start, to: i, repeatHurry: null });
    const repeatHurry = line[i + repeated.length]!.hurry;
    for (let repeat = 0; repeat < repeated.times; repeat++, i += repeated.length)
      figures.push({ from: i, to: i + repeated.length, repeatHurry });
    start = i;
  }
  if (to > start) figures.push({ from: start, to, repeatHurry: null });
}

/** The shortest figure that begins at a note and is repeated at once, or null. One note repeated is no figure. */
function repeatAt(
  line: readonly PlannedNote[],
  start: number,
  end: number,
): { length: number; times: number } | null {
  if (line[start]!.joined) return null;
  for (let length = 2; length <= LONGEST_FIGURE && start + 2 * length <= end; length++) {
    if (isOneNote(line, start, length)) continue;
    let same = 0;
    while (start + same + length < end && isRepeat(line, start + same, length, same === 0)) same += 1;
    let times = Math.floor(same / length) + 1;
    // What hangs on the last repeat is planned with it.
    if (start + times * length < end && line[start + times * length]!.joined) times -= 1;
    if (times > 1) return { length, times };
  }
  return null;
}

/** True when the note `length` later is the same demand, and hangs the same on the note before it. */
function isRepeat(line: readonly PlannedNote[], i: number, length: number, isFirst: boolean): boolean {
  const a = line[i]!;
  const b = line[i + length]!;
  if (a.options !== b.options || a.state !== b.state) return false;
  return isFirst ? b.joined === null : a.hurry === b.hurry && a.joined === b.joined;
}

function isOneNote(line: readonly PlannedNote[], start: number, length: number): boolean {
  for (let i = start + 1; i < start + length; i++)
    if (line[i]!.options !== line[start]!.options) return false;
  return true;
}
