/** The sound of the closing hand: its physics against exact theory, its pitch against an estimator that knows no horn. */
import { PitchDetector } from 'pitchy';
import { describe, expect, test } from 'vitest';
import { AIR_DENSITY, SOUND_SPEED } from '../../../core/acoustics/air.ts';
import { closingCurve } from '../../../core/acoustics/closingCurve.ts';
import { hornSections } from '../../../core/acoustics/hornShape.ts';
import {
  CLOSING_HAND,
  OPENING_HAND,
  PEAK_DECIBELS,
  playedTone,
  SAMPLE_RATE,
} from '../../../core/acoustics/playedTone.ts';
import { sines, steepen } from '../../../core/acoustics/steepening.ts';
import { brightnessHz, toneCurve } from '../../../core/acoustics/tone.ts';
import { passesBell } from '../../../core/acoustics/transmission.ts';
import { USUAL_BORE } from '../../../core/acoustics/usualBore.ts';

/** Bessel function of the first kind by its integral, for whole orders. */
function besselJ(order: number, x: number): number {
  const pieces = 2000;
  let sum = 0;
  for (let i = 0; i < pieces; i++) {
    const angle = (Math.PI * (i + 0.5)) / pieces;
    sum += Math.cos(order * angle - x * Math.sin(angle));
  }
  return sum / pieces;
}

describe('a loud wave grows steep', () => {
  // Fubini's solution for a sine before its shock, B(n) = 2 J(n, nσ) / (nσ). Source: Hamilton and Blackstock (eds.),
  // Nonlinear Acoustics (1998), ch. 4, from memory. Without losses; σ is the distance over that of the shock.
  test.each([0.2, 0.5, 0.8])('as Fubini has it at %f of the way to the shock', (sigma) => {
    const [pascals, hz] = [3000, 350];
    const shock = (AIR_DENSITY * SOUND_SPEED ** 3) / (1.2 * 2 * Math.PI * hz * pascals);
    const source = [pascals, ...Array.from({ length: 39 }, () => 0)];
    const { re, im } = steepen(sines(source), hz, sigma * shock, 0.006, false);
    for (let n = 1; n <= 8; n++)
      expect(Math.hypot(re[n - 1]!, im[n - 1]!) / pascals).toBeCloseTo(
        (2 * besselJ(n, n * sigma)) / (n * sigma),
        3,
      );
  });

  test('a quiet one only loses what the wall takes', () => {
    const source = [1e-3, 1e-3, 1e-3];
    const { re, im } = steepen(sines(source), 300, 2, 0.006);
    const left = source.map((_, i) => Math.hypot(re[i]!, im[i]!) / 1e-3);
    expect(left[0]).toBeLessThan(1);
    expect(left[2]).toBeLessThan(left[0]!);
    expect(left[2]).toBeGreaterThan(0.6);
  });

  test('twice as many pieces change nothing that is heard', () => {
    const source = Array.from({ length: 30 }, (_, i) => 3300 * 10 ** ((-i * 7) / 20));
    const coarse = steepen(sines(source), 330, 2.6, 0.0059);
    const fine = steepen(sines(source), 330, 2.6, 0.0059, true, 320);
    const sizes = (wave: typeof coarse) => wave.re.map((re, i) => Math.hypot(re, wave.im[i]!));
    const [a, b] = [sizes(coarse), sizes(fine)];
    a.forEach((size, i) => {
      if (b[i]! > 1e-3 * b[0]!) expect(Math.abs(size / b[i]! - 1)).toBeLessThan(0.01);
    });
  });
});

describe('the bell', () => {
  const bell = (closing: number) =>
    hornSections(USUAL_BORE, 2, closing).slice(USUAL_BORE.mouthpiece.length + 2);

  test('never gives out more than comes in', () => {
    for (const closing of [0, 0.3, 0.7, 1])
      for (let hz = 50; hz < 10_000; hz += 37) {
        const share = passesBell(bell(closing), hz);
        expect(share).toBeGreaterThan(0);
        expect(share).toBeLessThanOrEqual(1);
      }
  });

  test('holds low sound back and lets high sound out; a sealed one holds back nearly all', () => {
    expect(passesBell(bell(0), 100)).toBeLessThan(0.3);
    expect(passesBell(bell(0), 1500)).toBeGreaterThan(0.6);
    expect(passesBell(bell(1), 400)).toBeLessThan(0.05);
  });
});

/** Tubes in cents above MIDI note 0, and harmonics: open F, F with 1+2, open B♭, an E♭ crook. */
const TONES = [
  [2900, 5],
  [2900, 6],
  [2900, 8],
  [2900, 12],
  [2600, 8],
  [3400, 8],
  [3400, 12],
  [2700, 8],
] as const;

describe.each(TONES)('the tone of the tube at %i cents, harmonic %i', (fundamentalCents, harmonic) => {
  const curve = toneCurve({ fundamentalCents }, harmonic);
  const [open, sealed] = [curve.tones[0]!, curve.tones[curve.tones.length - 1]!];

  test('is brighter sealed than open, and weaker', () => {
    expect(brightnessHz(sealed)).toBeGreaterThan(1.2 * brightnessHz(open));
    expect(Math.hypot(...sealed.partials)).toBeLessThan(Math.hypot(...open.partials));
  });

  test('lies within 5 cents of the closing curve, as an independent estimator hears it', () => {
    // Slowly, so that what the estimator hears at once is nearly one pitch.
    const samples = playedTone(curve, [
      { seconds: 0, closing: 0 },
      { seconds: 1, closing: 0 },
      { seconds: 7, closing: 1 },
      { seconds: 8, closing: 1 },
    ]);
    const detector = PitchDetector.forFloat32Array(8192);
    const hear = (seconds: number) => {
      const middle = Math.round(seconds * SAMPLE_RATE);
      return detector.findPitch(samples.subarray(middle - 4096, middle + 4096), SAMPLE_RATE)[0];
    };
    const wanted = closingCurve({ fundamentalCents }, { harmonics: [harmonic], steps: 20 }).harmonics[0]!
      .frequenciesHz;
    const cents = (a: number, b: number) => 1200 * Math.log2(a / b);
    expect(Math.abs(cents(hear(0.5), wanted[0]!))).toBeLessThan(5);
    expect(Math.abs(cents(hear(7.5), wanted[20]!))).toBeLessThan(5);
    // On its way: halfway through the move the hand is half closed.
    expect(Math.abs(cents(hear(4), wanted[10]!))).toBeLessThan(5);
  });
});

describe('samples', () => {
  const curve = toneCurve({ fundamentalCents: 2900 }, 8);

  test.each([CLOSING_HAND, OPENING_HAND])('start and end in silence and stay under the peak', (...hand) => {
    const samples = playedTone(curve, hand);
    expect(samples.length).toBe(3.5 * SAMPLE_RATE);
    expect([samples[0], samples[samples.length - 1]].map(Math.abs as (value?: number) => number)).toEqual([
      0, 0,
    ]);
    const loudest = samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
    expect(20 * Math.log10(loudest)).toBeCloseTo(PEAK_DECIBELS, 2);
    const jump = samples.reduce(
      (most, sample, i) => Math.max(most, Math.abs(sample - (samples[i - 1] ?? 0))),
      0,
    );
    expect(jump).toBeLessThan(0.2);
  });

  test.each([
    ['one moment', [{ seconds: 0, closing: 0 }], 'at least two moments'],
    [
      'a late start',
      [
        { seconds: 1, closing: 0 },
        { seconds: 2, closing: 1 },
      ],
      'the first at 0 seconds',
    ],
    [
      'time that runs back',
      [
        { seconds: 0, closing: 0 },
        { seconds: 0, closing: 1 },
      ],
      'follow one another',
    ],
    [
      'a hand beyond the seal',
      [
        { seconds: 0, closing: 0 },
        { seconds: 1, closing: 1.1 },
      ],
      'from 0 to 1',
    ],
  ])('refuse %s', (_, hand, why) => {
    expect(() => playedTone(curve, hand)).toThrow(why);
  });

  test('refuse a harmonic that no bell holds', () => {
    expect(() => toneCurve({ fundamentalCents: 2900 }, 17)).toThrow(RangeError);
  });
});
