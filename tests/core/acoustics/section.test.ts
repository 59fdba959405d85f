import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { RHO_C, SOUND_SPEED } from '../../../core/acoustics/air.ts';
import { bellRadius, hornSections } from '../../../core/acoustics/hornShape.ts';
import { radiate } from '../../../core/acoustics/radiation.ts';
import { carryBack, type Field, type Section } from '../../../core/acoustics/section.ts';
import { USUAL_BORE } from '../../../core/acoustics/usualBore.ts';

/** Net power through a cross-section towards the bell, in watts: half the real part of p·u*. */
function power(field: Field): number {
  return (field.pressureRe * field.flowRe + field.pressureIm * field.flowIm) / 2;
}

function carried(sections: readonly Section[], frequencyHz: number, lossy: boolean, far: Field): Field {
  const field = { ...far };
  for (const section of sections.slice().reverse()) carryBack(section, frequencyHz, lossy, field);
  return field;
}

const sections = fc.record({
  lengthMetres: fc.double({ min: 0.005, max: 2, noNaN: true }),
  nearRadiusMetres: fc.double({ min: 0.002, max: 0.16, noNaN: true }),
  farRadiusMetres: fc.double({ min: 0.002, max: 0.16, noNaN: true }),
});
const frequencies = fc.double({ min: 30, max: 1000, noNaN: true });

describe('energy', () => {
  test('a section without losses takes nothing: power in is power out', () => {
    fc.assert(
      fc.property(sections, frequencies, (section, frequency) => {
        // Sound leaving into a resistance like the far end's own, so that there is power to keep.
        const flow = 1;
        const pressure = RHO_C / (Math.PI * section.farRadiusMetres ** 2);
        const far = { pressureRe: pressure, pressureIm: 0.3 * pressure, flowRe: flow, flowIm: -0.2 };
        const near = carried([section], frequency, false, far);
        const size = Math.hypot(near.pressureRe, near.pressureIm) * Math.hypot(near.flowRe, near.flowIm);
        expect(Math.abs(power(near) - power(far))).toBeLessThan(1e-11 * (size + power(far)));
      }),
    );
  });

  test('with losses the walls take some of it', () => {
    fc.assert(
      fc.property(sections, frequencies, (section, frequency) => {
        const far = {
          pressureRe: RHO_C / (Math.PI * section.farRadiusMetres ** 2),
          pressureIm: 0,
          flowRe: 1,
          flowIm: 0,
        };
        expect(power(carried([section], frequency, true, far))).toBeGreaterThan(power(far));
      }),
    );
  });

  test('a section is reciprocal, with losses or without: AD − BC = 1', () => {
    fc.assert(
      fc.property(sections, frequencies, fc.boolean(), (section, frequency, lossy) => {
        const p = carried([section], frequency, lossy, {
          pressureRe: 1,
          pressureIm: 0,
          flowRe: 0,
          flowIm: 0,
        });
        const u = carried([section], frequency, lossy, {
          pressureRe: 0,
          pressureIm: 0,
          flowRe: 1,
          flowIm: 0,
        });
        const [a, c, b, d] = [
          [p.pressureRe, p.pressureIm],
          [p.flowRe, p.flowIm],
          [u.pressureRe, u.pressureIm],
          [u.flowRe, u.flowIm],
        ] as const;
        const re = a[0]! * d[0]! - a[1]! * d[1]! - b[0]! * c[0]! + b[1]! * c[1]!;
        const im = a[0]! * d[1]! + a[1]! * d[0]! - b[0]! * c[1]! - b[1]! * c[0]!;
        const size = Math.hypot(...a) * Math.hypot(...d) + 1;
        expect(Math.abs(re - 1)).toBeLessThan(1e-11 * size);
        expect(Math.abs(im)).toBeLessThan(1e-11 * size);
      }),
    );
  });

  test.each([60, 175, 349, 700])(
    'a whole horn at %d Hz: without losses the bell sends out all that the lips put in',
    (hz) => {
      const horn = hornSections(USUAL_BORE, 2.4, 0);
      const rim: Field = { pressureRe: 0, pressureIm: 0, flowRe: 0, flowIm: 0 };
      radiate(USUAL_BORE.bell.rimRadiusMetres, hz, rim);
      expect(power(rim)).toBeGreaterThan(0);
      expect(power(carried(horn, hz, false, rim)) / power(rim)).toBeCloseTo(1, 8);
      expect(power(carried(horn, hz, true, rim)) / power(rim)).toBeGreaterThan(1.01);
    },
  );
});

describe('shape', () => {
  test('a cone cut into ten is the same cone', () => {
    const at = (i: number) => 0.004 + (0.05 * i) / 10;
    const whole: Section = { lengthMetres: 1.2, nearRadiusMetres: at(0), farRadiusMetres: at(10) };
    const pieces = Array.from({ length: 10 }, (_, i) => ({
      lengthMetres: 0.12,
      nearRadiusMetres: at(i),
      farRadiusMetres: at(i + 1),
    }));
    const far = { pressureRe: 100, pressureIm: 20, flowRe: 0.01, flowIm: 0.03 };
    const one = carried([whole], 233, false, far);
    const ten = carried(pieces, 233, false, far);
    for (const key of ['pressureRe', 'pressureIm', 'flowRe', 'flowIm'] as const)
      expect(ten[key] / one[key]).toBeCloseTo(1, 9);
  });

  /** A. G. Webster (1919), solved by Runge–Kutta in 20 000 steps along the true flare: the brute-force oracle. */
  test.each([90, 350, 640])('the flaring bell at %d Hz agrees with Webster’s equation', (hz) => {
    const bore = { ...USUAL_BORE, hand: { ...USUAL_BORE.hand, restingRadiusMetres: 1 } };
    const { lengthMetres } = bore.bell;
    const rim = { pressureRe: 0, pressureIm: 0, flowRe: 0, flowIm: 0 };
    radiate(bore.bell.rimRadiusMetres, hz, rim);
    const exact = websterBack((inside) => bellRadius(bore, inside), lengthMetres, hz, rim);
    const bell = hornSections(bore, 1, 0).filter((_, i) => i >= bore.mouthpiece.length + 2);
    const ours = carried(bell, hz, false, rim);
    const impedance = (f: Field) => Math.hypot(f.pressureRe, f.pressureIm) / Math.hypot(f.flowRe, f.flowIm);
    expect(impedance(ours) / impedance(exact)).toBeCloseTo(1, 2);
  });
});

/** Carries sound from the rim to the bell's narrow end: dp/dx = jωρ/S·u, du/dx = jωS/(ρc²)·p, x counted inwards. */
function websterBack(radiusAt: (inside: number) => number, length: number, hz: number, rim: Field): Field {
  const omegaOverC = (2 * Math.PI * hz) / SOUND_SPEED;
  const steps = 20_000;
  const h = length / steps;
  const slope = (inside: number, [pRe, pIm, uRe, uIm]: readonly number[]): number[] => {
    const area = Math.PI * radiusAt(inside) ** 2;
    const z = (omegaOverC * RHO_C) / area;
    const y = (omegaOverC * area) / RHO_C;
    return [-z * uIm!, z * uRe!, -y * pIm!, y * pRe!];
  };
  const moved = (s: readonly number[], k: readonly number[], by: number) => s.map((v, i) => v + by * k[i]!);
  let state: number[] = [rim.pressureRe, rim.pressureIm, rim.flowRe, rim.flowIm];
  for (let i = 0; i < steps; i++) {
    const x = i * h;
    const k1 = slope(x, state);
    const k2 = slope(x + h / 2, moved(state, k1, h / 2));
    const k3 = slope(x + h / 2, moved(state, k2, h / 2));
    const k4 = slope(x + h, moved(state, k3, h));
    state = state.map((v, n) => v + (h / 6) * (k1[n]! + 2 * k2[n]! + 2 * k3[n]! + k4[n]!));
  }
  return { pressureRe: state[0]!, pressureIm: state[1]!, flowRe: state[2]!, flowIm: state[3]! };
}
