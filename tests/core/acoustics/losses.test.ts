import { describe, expect, test } from 'vitest';
import { SOUND_SPEED, type Wave, waveIn } from '../../../core/acoustics/air.ts';
import { HIGHEST_KA, openEnd } from '../../../core/acoustics/radiation.ts';
import { levineSchwinger, zwikkerKosten } from './exactTheory.ts';

function waveOf(radiusMetres: number, frequencyHz: number, lossy = true): Wave {
  const wave: Wave = { gammaRe: 0, gammaIm: 0, impedanceRe: 1, impedanceIm: 0 };
  waveIn(radiusMetres, frequencyHz, lossy, wave);
  return wave;
}

describe('losses at the walls', () => {
  /**
   * N. H. Fletcher and T. D. Rossing, The Physics of Musical Instruments, 2nd ed. (1998), § 8.2 (from memory):
   * v = c·(1 − 1.65e−3/(a√f)), α = 3e−5·√f/a, printed to 2–3 figures; for wide tubes, so 2 % of α and 0.01 % of v.
   */
  test.each([
    [0.0059, 350],
    [0.0059, 700],
    [0.01, 200],
    [0.05, 100],
  ])('radius %d m at %d Hz as the textbook has it', (radius, frequency) => {
    const wave = waveOf(radius, frequency);
    const speed = (2 * Math.PI * frequency) / wave.gammaIm;
    const slower = 1.65e-3 / (radius * Math.sqrt(frequency));
    expect(Math.abs(speed / (SOUND_SPEED * (1 - slower)) - 1)).toBeLessThan(slower ** 2 + 1e-4);
    expect(wave.gammaRe / ((3e-5 * Math.sqrt(frequency)) / radius)).toBeCloseTo(1, 1);
  });

  /** Exact theory with the air of Keefe (1984): γ = 1.4017, ν = 0.8410. The narrowest tube here is the leak, 2 mm. */
  test.each([
    [0.002, 40],
    [0.002, 700],
    [0.00225, 90],
    [0.0059, 45],
    [0.0059, 1000],
    [0.155, 400],
  ])(
    'radius %d m at %d Hz: within 1.5 %% of the exact damping and 0.3 %% of the exact phase',
    (radius, frequency) => {
      const wave = waveOf(radius, frequency);
      const exact = zwikkerKosten(632.8 * radius * Math.sqrt(frequency), {
        gamma: 1.4017,
        rootPrandtl: 0.841,
      });
      const toRatio = SOUND_SPEED / (2 * Math.PI * frequency);
      expect(Math.abs((wave.gammaRe * toRatio) / exact.propagation.re - 1)).toBeLessThan(0.015);
      expect(Math.abs((wave.gammaIm * toRatio) / exact.propagation.im - 1)).toBeLessThan(0.003);
      expect(Math.abs(wave.impedanceRe - exact.impedance.re)).toBeLessThan(0.006);
      expect(Math.abs(wave.impedanceIm - exact.impedance.im)).toBeLessThan(0.006);
    },
  );

  test('none without losses', () => {
    expect(waveOf(0.0059, 100, false)).toEqual({
      gammaRe: 0,
      gammaIm: (2 * Math.PI * 100) / SOUND_SPEED,
      impedanceRe: 1,
      impedanceIm: -0,
    });
  });
});

describe('the open end', () => {
  /** H. Levine and J. Schwinger, Phys. Rev. 73 (1948): at low frequency the end correction is 0.6133 a, |R| = 1 − (ka)²/2. */
  test('low frequencies: 0.6133 of the radius, nearly all comes back', () => {
    const { magnitude, correction } = openEnd(0.02);
    expect(correction).toBeCloseTo(0.6133, 3);
    expect(magnitude).toBeCloseTo(1 - 0.02 ** 2 / 2, 5);
  });

  test.each([0.2, 0.5, 1, 1.5, 2, 2.5, HIGHEST_KA])('ka %d: near the exact theory', (ka) => {
    const fit = openEnd(ka);
    const exact = levineSchwinger(ka);
    expect(Math.abs(fit.magnitude / exact.magnitude - 1)).toBeLessThan(0.025);
    expect(Math.abs(fit.correction / exact.correction - 1)).toBeLessThan(0.05);
  });
});
