/** The plain harmony under an étude: which chord rules each bar, where phrases pause and how they close. */
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
  [I, I, IV, V],
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

/** How high each bar of a phrase lies, from 0 to 1: the usual arch. */
const ARCH = [0.4, 0.55, 0.6, 0.45] as const;

/** The harmony of one four-bar phrase. */
export interface PhrasePlan {
  /** One chord a bar. */
  readonly chords: readonly Chord[];
  /** True when it comes home at its end. */
  readonly closes: boolean;
  /** One height a bar, from 0 to 1. */
  readonly heights: readonly number[];
}

/**
 * Phrases in pairs, the first of a pair pausing, the second closing; the last always closes, and the one before it lies
 * highest, so that an étude has a shape.
 */
export function planPhrases(random: Random, count: number): readonly PhrasePlan[] {
  const plans: PhrasePlan[] = [];
  for (let i = 0; i < count; i++) {
    const closes = i % 2 === 1 || i === count - 1;
    const lift = count > 2 && i === count - 2 ? 0.2 : 0;
    plans.push({
      chords: pick(random, closes ? CLOSES : PAUSES),
      closes,
      heights: ARCH.map((height) => height + lift),
    });
  }
  return plans;
}
