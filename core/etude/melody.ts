/** What makes a line of notes a melody: one high point, leaps that turn back, a cadence by step. */
import { type Pitch, pitchCents } from '../pitch/pitch.ts';

/** One phrase by its notes. */
export interface Melody {
  readonly notes: readonly { readonly written: Pitch; readonly degree: number }[];
  /** Notes in each bar. */
  readonly barLengths: readonly number[];
  /** Degrees on one of which it must end. */
  readonly ends: readonly number[];
  /** True where the notes at hand lie apart: a fourth is then the way to the neighbour, and a note may be said twice once. */
  readonly isGapped: boolean;
}

/** What a melody is found to lack; a melody that sings has none. */
export type Fault =
  | 'no-high-point'
  | 'no-cadence'
  | 'stands-still'
  | 'jumps-about'
  | 'leaps-on'
  | 'says-a-bar-again';

/** The last step of a phrase at most, in cents: a third, or it falls into its end. */
const WIDEST_CADENCE = 300;
/** Leaps wider than a third, as a share of the notes, at most: with more a line is a broken chord. */
const MOST_LEAPS = 0.25;

/** A phrase of one bar or two has its high point where it can. */
function isInLastBar(index: number, barLengths: readonly number[]): boolean {
  const all = barLengths.reduce((sum, length) => sum + length, 0);
  return barLengths.length > 2 && index >= all - barLengths[barLengths.length - 1]!;
}

/** Everything that is wrong with a melody, by the trade's measures. @source commonPractice */
export function melodyFaults({ notes, barLengths, ends, isGapped }: Melody): readonly Fault[] {
  const cents = notes.map(({ written }) => pitchCents(written));
  const faults: Fault[] = [];
  const top = Math.max(...cents);
  // Where the tonic is the highest note at hand a line may end on it.
  const way = isGapped ? cents.slice(0, -1) : cents;
  const high = Math.max(...way);
  const tops = way.filter((each) => each === high).length;
  const at = way.indexOf(high) / Math.max(1, cents.length - 1);
  if (tops > 1 || at < 0.2 || at > 0.9 || isInLastBar(way.indexOf(high), barLengths))
    faults.push('no-high-point');
  const last = cents.length - 1;
  const step = Math.abs(cents[last]! - cents[last - 1]!);
  if (ends.indexOf(notes[last]!.degree) < 0 || step > WIDEST_CADENCE || step === 0) faults.push('no-cadence');
  const repeats = repeatsIn(cents);
  // There and back and there again is a trill.
  const turns = cents.some((each, i) => i > 2 && each === cents[i - 2] && cents[i - 1] === cents[i - 3]);
  if (repeats > (isGapped ? 1 : 0) || turns || top - Math.min(...cents) < 500) faults.push('stands-still');
  const leaps = cents.filter(
    (each, i) => i > 0 && Math.abs(each - cents[i - 1]!) > (isGapped ? 500 : 400),
  ).length;
  if (leaps > MOST_LEAPS * cents.length) faults.push('jumps-about');
  // After a leap wider than a fourth the line turns back, or rests on the chord.
  const leapsOn = cents.some((each, i) => {
    const leap = i > 0 ? each - cents[i - 1]! : 0;
    const next = i < last ? cents[i + 1]! - each : 0;
    return Math.abs(leap) > 700 || (Math.abs(leap) > 500 && leap * next > 0 && Math.abs(next) > 200);
  });
  if (leapsOn) faults.push('leaps-on');
  const bars: string[] = [];
  let next = 0;
  for (const length of barLengths) {
    bars.push(cents.slice(next, next + length).join(' '));
    next += length;
  }
  if (new Set(bars).size < bars.length) faults.push('says-a-bar-again');
  return faults;
}

/** How often a note is said again at once. */
export function repeatsIn(cents: readonly number[]): number {
  return cents.filter((each, i) => i > 0 && each === cents[i - 1]).length;
}
