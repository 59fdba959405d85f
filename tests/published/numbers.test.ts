/** The numbers under the model against published tables of cents, frequencies and lengths. */
import { describe, expect, test } from 'vitest';
import { ASCENDING_VALVES, COMPROMISE_VALVES } from '../../core/data/valves.ts';
import { harmonicDeviationCents } from '../../core/horn/harmonics.ts';
import { exactCombinationSharpCents, tubesOf } from '../../core/horn/horn.ts';
import { HORNS } from '../../core/horn/horns.ts';
import { frequencyHz, parsePitch, pitchCents } from '../../core/pitch/pitch.ts';
import { stop } from '../../core/stopping/stopping.ts';

test('A4 is 440 Hz (ISO 16:1975)', () => {
  expect(frequencyHz(pitchCents(parsePitch('A4')))).toBe(440);
});

// the3rdhalf.com; Ellis in Helmholtz, On the Sensations of Tone, agrees (from memory). Printed to 0.1 cent.
const HARMONIC_DEVIATIONS: [harmonic: number, cents: number][] = [
  [3, 2.0],
  [5, -13.7],
  [6, 2.0],
  [7, -31.2],
  [9, 3.9],
  [10, -13.7],
  [11, -48.7],
  [12, 2.0],
  [13, 40.5],
  [14, -31.2],
  [15, -11.7],
  [17, 5.0],
  [18, 3.9],
  [19, -2.5],
  [20, -13.7],
];

describe('harmonics in cents from equal temperament (15 rows)', () => {
  test('the table is whole', () => expect(HARMONIC_DEVIATIONS).toHaveLength(15));
  // Half of the last printed digit.
  test.each(HARMONIC_DEVIATIONS)('harmonic %i: %f', (harmonic, cents) => {
    expect(Math.abs(harmonicDeviationCents(harmonic) - cents)).toBeLessThanOrEqual(0.051);
  });
});

describe('exactly tuned valves are sharp together', () => {
  // Computed from slide lengths; the JMU brass pedagogy page agrees within 1 cent.
  test.each([
    ['12', [200, 100], 10.6],
    ['23', [100, 300], 15.5],
    ['13', [200, 300], 30.3],
    ['123', [200, 100, 300], 53.6],
  ])('%s', (_valves, lowerings, cents) => {
    expect(Math.abs(exactCombinationSharpCents(lowerings) - cents)).toBeLessThanOrEqual(0.051);
  });
});

// Reckoned again from slide lengths, each slide tuned alone: the third valve takes a tone of length away.
describe('an ascending third valve leaves the other slides too long', () => {
  test.each([
    ['12', [200, 100]],
    ['23', [100, -200]],
    ['13', [200, -200]],
    ['123', [200, 100, -200]],
  ])('%s', (valves, lowerings) => {
    const listed = ASCENDING_VALVES.find((combination) => combination.valves === valves)!;
    expect(listed.semitones).toBe(lowerings.reduce((sum, cents) => sum + cents / 100, 0));
    // Half of the last printed digit.
    expect(Math.abs(exactCombinationSharpCents(lowerings) - listed.sharpCents)).toBeLessThanOrEqual(0.051);
  });
});

describe('the usual compromise, third slide set long (the3rdhalf.com, given for the trumpet)', () => {
  test.each([
    ['12', 8.2],
    ['23', -0.1],
    ['13', 14.7],
    ['123', 37.9],
  ])('%s: %f cents', (valves, cents) => {
    expect(COMPROMISE_VALVES.find((combination) => combination.valves === valves)!.sharpCents).toBe(cents);
  });
});

// Computed from the law by hand, rounded to the cent.
const DROPS: { F: [number, number][]; Bb: [number, number][] } = {
  F: [
    [3, 602],
    [4, 398],
    [5, 286],
    [6, 216],
    [7, 167],
    [8, 131],
    [9, 104],
    [10, 82],
    [11, 65],
    [12, 51],
    [15, 19],
    [16, 12],
    [17, 5],
  ],
  Bb: [
    [3, 552],
    [4, 348],
    [5, 236],
    [6, 166],
    [7, 117],
    [8, 81],
    [9, 54],
    [10, 32],
    [11, 15],
    [12, 1],
  ],
};

describe('drop in cents by the law', () => {
  for (const [sideIndex, side] of (['F', 'Bb'] as const).entries()) {
    test.each(DROPS[side])(`${side} side, harmonic %i: %i`, (harmonic, cents) => {
      const tube = tubesOf(HORNS[0]!.sides[sideIndex]!)[0]!;
      expect(Math.round(stop(tube, harmonic, 0).dropCents)).toBe(cents);
    });
  }
});

// Young Horn Player's Guide: semitones by valves; 3 for 12 is the rarer choice.
test.each([
  ['2', 1],
  ['1', 2],
  ['12', 3],
  ['3', 3],
  ['23', 4],
  ['13', 5],
  ['123', 6],
])('valves %s lower by %i semitones', (valves, semitones) => {
  expect(COMPROMISE_VALVES.find((combination) => combination.valves === valves)!.semitones).toBe(semitones);
});
