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

/** The last step of a phrase at most, in cents: a third, or it falls into its end; a fourth where no third is at hand. */
const WIDEST_CADENCE = { usual: 300, gapped: 500 } as const;
/** From the lowest to the highest note of a melody at least, in cents. */
const LEAST_COMPASS = 500;
/** Leaps wider than a third, as a share of the notes, at most: with more a line is a broken chord. */
const MOST_LEAPS = 0.25;

/** A melody as its measures look at it: its notes in cents. */
interface Heard {
  readonly melody: Melody;
  readonly cents: readonly number[];
}

/** Everything that can be wrong with a melody, by the trade's measures. @source commonPractice */
const MEASURES: readonly { readonly fault: Fault; readonly isIn: (heard: Heard) => boolean }[] = [
  { fault: 'no-high-point', isIn: lacksHighPoint },
  { fault: 'no-cadence', isIn: lacksCadence },
  { fault: 'stands-still', isIn: standsStill },
  { fault: 'jumps-about', isIn: jumpsAbout },
  { fault: 'leaps-on', isIn: leapsOn },
  { fault: 'says-a-bar-again', isIn: saysBarAgain },
];

/** Everything that is wrong with a melody. @param most so many are looked for; all where absent */
export function melodyFaults(melody: Melody, most: number = MEASURES.length): readonly Fault[] {
  const heard = { melody, cents: melody.notes.map(({ written }) => pitchCents(written)) };
  const faults: Fault[] = [];
  for (let i = 0; i < MEASURES.length && faults.length < most; i++)
    if (MEASURES[i]!.isIn(heard)) faults.push(MEASURES[i]!.fault);
  return faults;
}

function lacksHighPoint({ melody: { isGapped, barLengths }, cents }: Heard): boolean {
  // Where the tonic is the highest note at hand a line may end on it.
  const count = isGapped ? cents.length - 1 : cents.length;
  let [at, tops] = [0, 0];
  for (let i = 0; i < count; i++) {
    if (cents[i]! > cents[at]!) [at, tops] = [i, 1];
    else if (cents[i] === cents[at]) tops += 1;
  }
  const place = at / Math.max(1, cents.length - 1);
  return tops > 1 || place < 0.2 || place > 0.9 || isInLastBar(at, cents.length, barLengths);
}

/** A phrase of one bar or two has its high point where it can. */
function isInLastBar(index: number, notes: number, barLengths: readonly number[]): boolean {
  return barLengths.length > 2 && index >= notes - barLengths[barLengths.length - 1]!;
}

function lacksCadence({ melody: { notes, ends, isGapped }, cents }: Heard): boolean {
  const widest = WIDEST_CADENCE[isGapped ? 'gapped' : 'usual'];
  const last = cents.length - 1;
  const step = Math.abs(cents[last]! - cents[last - 1]!);
  return ends.indexOf(notes[last]!.degree) < 0 || step > widest || step === 0;
}

function standsStill({ melody: { isGapped }, cents }: Heard): boolean {
  // There and back and there again is a trill.
  const turns = cents.some((each, i) => i > 2 && each === cents[i - 2] && cents[i - 1] === cents[i - 3]);
  return (
    turns || repeatsIn(cents) > (isGapped ? 1 : 0) || Math.max(...cents) - Math.min(...cents) < LEAST_COMPASS
  );
}

function jumpsAbout({ melody: { isGapped }, cents }: Heard): boolean {
  const wide = isGapped ? 500 : 400;
  let leaps = 0;
  for (let i = 1; i < cents.length; i++) if (Math.abs(cents[i]! - cents[i - 1]!) > wide) leaps += 1;
  return leaps > MOST_LEAPS * cents.length;
}

/** After a leap wider than a fourth the line turns back, or rests on the chord. */
function leapsOn({ cents }: Heard): boolean {
  return cents.some((each, i) => {
    const leap = i > 0 ? each - cents[i - 1]! : 0;
    const next = i + 1 < cents.length ? cents[i + 1]! - each : 0;
    return Math.abs(leap) > 700 || (Math.abs(leap) > 500 && leap * next > 0 && Math.abs(next) > 200);
  });
}

function saysBarAgain({ melody: { barLengths }, cents }: Heard): boolean {
  const bars: string[] = [];
  let next = 0;
  for (const length of barLengths) {
    bars.push(cents.slice(next, next + length).join(' '));
    next += length;
  }
  return new Set(bars).size < bars.length;
}

/** How often a note is said again at once. */
export function repeatsIn(cents: readonly number[]): number {
  let repeats = 0;
  for (let i = 1; i < cents.length; i++) if (cents[i] === cents[i - 1]) repeats += 1;
  return repeats;
}
