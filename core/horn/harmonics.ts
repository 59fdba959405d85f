/** The harmonic series of a tube: how far above its fundamental each harmonic lies, and what players call it. */

import { checkInteger } from '../guards/allowed.ts';

/** The highest harmonic the model knows; a player's range ends well before it on every tube but the longest. */
export const HIGHEST_HARMONIC = 24;

/**
 * Cents of a harmonic above the fundamental of its tube: 1200·log2 n.
 * @throws {RangeError} when `harmonicNumber` is not an integer from 1 to HIGHEST_HARMONIC
 * @example
 * Math.round(harmonicCents(3)) // => 1902
 */
export function harmonicCents(harmonicNumber: number): number {
  const cents = harmonicNumber > 0 ? HARMONIC_CENTS[harmonicNumber] : undefined;
  if (cents === undefined) checkInteger('harmonicNumber', harmonicNumber, 1, HIGHEST_HARMONIC);
  return cents!;
}

/** 1200·log2 n by n, worked out once: the model asks for them millions of times. */
const HARMONIC_CENTS: readonly number[] = Array.from(
  { length: HIGHEST_HARMONIC + 1 },
  (_, n) => 1200 * Math.log2(n),
);

/**
 * How far a harmonic lies from the nearest equal-tempered note, in cents; flat is negative.
 * @source ellis (checked against its table in the tests)
 */
export function harmonicDeviationCents(harmonicNumber: number): number {
  const cents = harmonicCents(harmonicNumber);
  return cents - 100 * Math.round(cents / 100);
}

/**
 * Harmonics that stand so far from any note of the scale that players do not use them as the note they finger:
 * 7, 11, 13, 14, and 15, which is too close to its neighbours to be sure of.
 * @source commonPractice
 */
export const AVOIDED_HARMONICS: readonly number[] = [7, 11, 13, 14, 15];

/**
 * The interval a harmonic makes with its fundamental as musicians spell it, in staff steps and semitones:
 * the 7th is a minor seventh, the 11th a raised fourth, the 13th a minor sixth.
 * @returns `[steps, semitones]` above the fundamental
 */
export function harmonicInterval(harmonicNumber: number): readonly [steps: number, semitones: number] {
  const semitones = Math.round(harmonicCents(harmonicNumber) / 100);
  const octaves = Math.floor(semitones / 12);
  return [7 * octaves + STEPS_OF_SEMITONES[semitones - 12 * octaves]!, semitones];
}

/** Staff steps by semitones within the octave: minor second, second, minor third, third, fourth, raised fourth, fifth, … */
const STEPS_OF_SEMITONES = [0, 1, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6] as const;
