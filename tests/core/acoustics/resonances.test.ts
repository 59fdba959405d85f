import { describe, expect, test } from 'vitest';
import { SOUND_SPEED } from '../../../core/acoustics/air.ts';
import { closingCurve } from '../../../core/acoustics/closingCurve.ts';
import { hornSections } from '../../../core/acoustics/hornShape.ts';
import { inputImpedance } from '../../../core/acoustics/impedance.ts';
import { resonances } from '../../../core/acoustics/resonances.ts';
import { carryBack, type Field, type Section } from '../../../core/acoustics/section.ts';
import { tuneHorn } from '../../../core/acoustics/tuning.ts';
import { USUAL_BORE } from '../../../core/acoustics/usualBore.ts';
import { frequencyHz } from '../../../core/pitch/pitch.ts';

/**
 * Textbook: N. H. Fletcher and T. D. Rossing, The Physics of Musical Instruments, 2nd ed. (1998), ch. 8 (from memory).
 * A cylinder stopped at one end and open at the other sounds at odd quarter waves; a cone whose narrow end is
 * stopped, where tan kL = −k·x, x being that end's distance from the apex; a whole cone, at all half waves.
 */
describe('textbook tubes', () => {
  /** Flow at the stopped end when the far end lets no pressure build up: it is 0 at a resonance. No losses. */
  function stoppedFlow(section: Section, hz: number): number {
    const field: Field = { pressureRe: 0, pressureIm: 0, flowRe: 1, flowIm: 0 };
    carryBack(section, hz, false, field);
    return field.flowRe;
  }

  function zerosOf(f: (hz: number) => number, count: number): number[] {
    const zeros: number[] = [];
    for (let hz = 1; zeros.length < count; hz++) {
      if (f(hz) * f(hz + 1) > 0) continue;
      let [low, high] = [hz, hz + 1];
      for (let i = 0; i < 50; i++) {
        const middle = (low + high) / 2;
        if (f(low) * f(middle) <= 0) high = middle;
        else low = middle;
      }
      zeros.push(low);
    }
    return zeros;
  }

  test('a cylinder without losses: odd quarter waves', () => {
    const tube = { lengthMetres: 2, nearRadiusMetres: 0.01, farRadiusMetres: 0.01 };
    zerosOf((hz) => stoppedFlow(tube, hz), 6).forEach((hz, i) => {
      expect(hz).toBeCloseTo(((2 * i + 1) * SOUND_SPEED) / (4 * 2), 8);
    });
  });

  test('a stopped cone without losses: tan kL = −k·x', () => {
    const cone = { lengthMetres: 1.5, nearRadiusMetres: 0.006, farRadiusMetres: 0.06 };
    const toApex = (1.5 * 0.006) / (0.06 - 0.006);
    const textbook = zerosOf((hz) => {
      const k = (2 * Math.PI * hz) / SOUND_SPEED;
      return Math.sin(k * 1.5) + k * toApex * Math.cos(k * 1.5);
    }, 6);
    zerosOf((hz) => stoppedFlow(cone, hz), 6).forEach((hz, i) => {
      expect(hz).toBeCloseTo(textbook[i]!, 8);
    });
  });

  test('a cone down to its apex without losses: every half wave', () => {
    const cone = { lengthMetres: 2, nearRadiusMetres: 1e-6, farRadiusMetres: 0.05 };
    const toApex = (2 * 1e-6) / (0.05 - 1e-6);
    zerosOf((hz) => stoppedFlow(cone, hz), 6).forEach((hz, i) => {
      expect(hz / (((i + 1) * SOUND_SPEED) / (2 * (2 + toApex)))).toBeCloseTo(1, 8);
    });
  });

  /** Speed by § 8.2, end correction 0.61 a by § 8.3, printed to two figures: a cent and a half is what that leaves. */
  test('a real cylinder, peak by peak: slowed by its walls, longer by its open end', () => {
    const radius = 0.01;
    const found = resonances([{ lengthMetres: 2, nearRadiusMetres: radius, farRadiusMetres: radius }], 86, 8);
    expect(found).toHaveLength(8);
    found.forEach((hz, i) => {
      const speed = SOUND_SPEED * (1 - 1.65e-3 / (radius * Math.sqrt(hz)));
      const textbook = ((2 * i + 1) * speed) / (4 * (2 + 0.61 * radius));
      expect(Math.abs(1200 * Math.log2(hz / textbook))).toBeLessThan(1.5);
    });
  });
});

/** Brute force: every local maximum on a grid of 0.1 Hz. */
function everyPeak(sections: readonly Section[], toHz: number): number[] {
  const grid = Array.from({ length: Math.round(10 * toHz) }, (_, i) => (i + 10) / 10);
  const sizes = grid.map((hz) => inputImpedance(sections, hz));
  return grid.filter(
    (_, i) => sizes[i]! > (sizes[i - 1] ?? Infinity) && sizes[i]! >= (sizes[i + 1] ?? Infinity),
  );
}

describe('no peak is missed and none taken for another', () => {
  test.each([
    ['F', 2900],
    ['B♭', 3400],
    ['F with every valve', 2338],
    ['high F', 4100],
  ])(
    '%s: as the hand closes, the n-th peak followed stays the n-th of all there are',
    (_, fundamentalCents) => {
      const curve = closingCurve({ fundamentalCents }, { steps: 10 });
      const { bore, cylinderMetres } = tuneHorn(USUAL_BORE, frequencyHz(fundamentalCents));
      for (const step of [0, 3, 6, 8, 10]) {
        const sections = hornSections(bore, cylinderMetres, curve.closings[step]!);
        const followed = curve.harmonics.map(({ frequenciesHz }) => frequenciesHz[step]!);
        const all = everyPeak(sections, followed[followed.length - 1]! + 2);
        expect(all).toHaveLength(followed.length);
        followed.forEach((hz, i) => {
          expect(Math.abs(hz - all[i]!)).toBeLessThan(0.11);
        });
      }
    },
  );
});
