/** The plain harmony under an étude: which chord rules each bar, where phrases pause, how they close, and in what key. */
import { degreeOfTonic, type Key, neighbourKeys } from './key.ts';
import { pick, type Random } from './random.ts';

/** Scale degrees of the chords, the tonic being degree 0. */
export const CHORDS = {
  I: [0, 2, 4],
  ii: [1, 3, 5],
  IV: [3, 5, 0],
  V: [4, 6, 1],
  vi: [5, 0, 2],
} as const;

export type Chord = readonly number[];

const { I, ii, IV, V, vi } = CHORDS;

/** Four bars that pause on the dominant, and four that come home. */
const PAUSES: readonly (readonly Chord[])[] = [
  [I, IV, I, V],
  [I, vi, ii, V],
  [I, V, vi, V],
  [I, ii, IV, V],
];
const CLOSES: readonly (readonly Chord[])[] = [
  [I, IV, V, I],
  [vi, ii, V, I],
  [IV, I, V, I],
  [I, ii, V, I],
];

/** Where phrases rest: on the fifth or second degree when they pause, on the tonic when they close. */
export const PAUSE_DEGREES: Chord = [4, 1];
export const CLOSE_DEGREES: Chord = [0];

/** A chord of another key, by the degrees of the home key. */
export function chordIn(chord: Chord, home: Key, other: Key): Chord {
  const tonic = degreeOfTonic(home, other);
  return chord.map((degree) => (degree + tonic) % 7);
}

/** Where a phrase rests that has gone to another key: on the tonic there, or on the fifth above it. */
export function restsIn(home: Key, other: Key): Chord {
  return chordIn([0, 4], home, other);
}

/** How high each bar of a phrase lies, from 0 to 1: the usual arch. */
const ARCH = [0.4, 0.55, 0.6, 0.45] as const;

/** The harmony of one four-bar phrase. */
export interface PhrasePlan {
  /** One chord a bar. */
  readonly chords: readonly Chord[];
  /** Degrees on which it ends. */
  readonly ends: Chord;
  /** True when it comes home at its end. */
  readonly closes: boolean;
  /** One height a bar, from 0 to 1. */
  readonly heights: readonly number[];
  /** The key of each bar. */
  readonly keys: readonly Key[];
}

/**
 * Phrases in pairs, the first of a pair pausing, the second closing; the last always closes, and the one before it lies
 * highest, so that an étude has a shape.
 * @param wanders true to go to a neighbouring key and come home
 */
export function planPhrases(
  random: Random,
  count: number,
  home: Key,
  wanders: boolean,
): readonly PhrasePlan[] {
  const plans: PhrasePlan[] = [];
  const neighbours = wanders && count > 1 ? neighbourKeys(home) : [];
  let last: readonly Chord[] = [];
  for (let i = 0; i < count; i++) {
    const closes = i % 2 === 1 || i === count - 1;
    const lift = count > 2 && i === count - 2 ? 0.2 : 0;
    const choice = closes ? CLOSES : PAUSES;
    const chords = pick(
      random,
      choice.filter((each) => each !== last),
    );
    last = chords;
    // The first phrase goes over in its second half; what lies between it and the last may stay away.
    const away = i < count - 1 && neighbours.length > 0 ? neighbours[i % neighbours.length]! : home;
    const keys = chords.map((_, bar) => (bar < 2 && i === 0 ? home : away));
    plans.push({
      chords: chords.map((chord, bar) => chordIn(chord, home, keys[bar]!)),
      ends: away !== home ? restsIn(home, away) : closes ? CLOSE_DEGREES : PAUSE_DEGREES,
      closes,
      heights: ARCH.map((height) => height + lift),
      keys,
    });
  }
  return plans;
}
