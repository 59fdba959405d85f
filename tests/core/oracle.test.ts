/**
 * The model against an independent brute-force oracle: plain frequencies in hertz, products and roots of two, tables
 * of its own, nothing shared with the core but the notes asked for.
 */
import { describe, expect, test } from 'vitest';
import { HORNS } from '../../core/horn/horns.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { fingerings } from '../../core/stopping/fingering.ts';

const SEMITONE = 2 ** (1 / 12);
const CENT = 2 ** (1 / 1200);
const A4_HZ = 440;
// F1 and B♭1, counted down from A4 in semitones: 40 and 35.
const F1_HZ = A4_HZ / SEMITONE ** 40;
const BFLAT1_HZ = A4_HZ / SEMITONE ** 35;
const HIGHEST = 24;

/** Valves to frequency ratio of the lengthened tube. */
const VALVE_RATIOS: Record<string, number> = {
  '0': 1,
  '2': SEMITONE ** -1,
  '1': SEMITONE ** -2,
  '12': SEMITONE ** -3 * CENT ** 8.2,
  '3': SEMITONE ** -3 * CENT ** -16,
  '23': SEMITONE ** -4 * CENT ** -0.1,
  '13': SEMITONE ** -5 * CENT ** 14.7,
  '123': SEMITONE ** -6 * CENT ** 37.9,
};

interface OracleSide {
  name: string;
  hz: number;
  closedRatio: number;
  valveRatio: number;
}
const F: OracleSide = { name: 'F', hz: F1_HZ, closedRatio: CENT ** 100, valveRatio: 1 };
const BFLAT: OracleSide = { name: 'Bb', hz: BFLAT1_HZ, closedRatio: CENT ** 150, valveRatio: 1 };
const BFLAT_STOP_VALVE: OracleSide = { ...BFLAT, valveRatio: CENT ** -150 };
const SIDES: Record<string, OracleSide[]> = {
  double: [F, BFLAT],
  'single-f': [F],
  'single-bflat': [BFLAT],
  'single-bflat-stop-valve': [BFLAT_STOP_VALVE],
  'double-stop-valve': [BFLAT_STOP_VALVE, F],
  'triple-high-f': [F, BFLAT],
};

/** Every (side, valves, harmonic) whose stopped frequency is within 40 cents, with its error and its fall. */
function oracle(hornId: string, hz: number): Map<string, { errorCents: number; fallCents: number }> {
  const found = new Map<string, { errorCents: number; fallCents: number }>();
  for (const side of SIDES[hornId]!) {
    for (const [valves, ratio] of Object.entries(VALVE_RATIOS)) {
      for (let n = 2; n <= HIGHEST; n++) {
        const natural = side.hz * ratio * n * side.valveRatio;
        const rest = side.hz * ratio * (n - 1) * side.closedRatio * side.valveRatio;
        const heard = Math.min(rest, natural);
        const errorCents = (1200 * Math.log(heard / hz)) / Math.LN2;
        if (errorCents > 40.000001 || errorCents < -40.000001) continue;
        found.set(`${side.name} ${valves} ${n}`, {
          errorCents,
          fallCents: (1200 * Math.log(natural / heard)) / Math.LN2,
        });
      }
    }
  }
  return found;
}

/** Written F2 to F6 on a horn in F: a fifth lower in sound, MIDI 34 to 82. */
const LOWEST_MIDI = 41 - 7;
const HIGHEST_MIDI = 89 - 7;

describe.each(Object.keys(SIDES))('%s: every written note from F2 to F6', (hornId) => {
  const horn = HORNS.find(({ id }) => id === hornId)!;

  test('the same fingerings, deviations and drops', () => {
    let compared = 0;
    for (let midi = LOWEST_MIDI; midi <= HIGHEST_MIDI; midi++) {
      const expected = oracle(hornId, A4_HZ * SEMITONE ** (midi - 69));
      const actual = fingerings(100 * midi, 'stopped', { ...DEFAULT_SETTINGS, horn });
      const names = actual.map(
        ({ tube, harmonic }) => `${tube.side.name} ${tube.combination.valves} ${harmonic}`,
      );
      expect([midi, ...names.slice().sort()]).toEqual([midi, ...[...expected.keys()].sort()]);
      for (const [i, name] of names.entries()) {
        // A thousandth of a cent: rounding in two different ways of reckoning.
        expect(Math.abs(actual[i]!.deviationCents - expected.get(name)!.errorCents)).toBeLessThan(0.001);
        expect(Math.abs(actual[i]!.dropCents - expected.get(name)!.fallCents)).toBeLessThan(0.001);
        compared += 1;
      }
    }
    // More fingerings than notes asked for: the loop above has really compared.
    expect(compared).toBeGreaterThan(HIGHEST_MIDI - LOWEST_MIDI + 1);
  });
});

describe.each(Object.keys(SIDES).filter((hornId) => SIDES[hornId]!.includes(F)))(
  '%s: first choices',
  (hornId) => {
    const horn = HORNS.find(({ id }) => id === hornId)!;

    test('on an F side the first choice is the shortest tube above a harmonic that stands well', () => {
      const order = ['0', '2', '1', '12', '23', '13', '123'];
      const avoided = [7, 11, 13, 14, 15];
      for (let midi = LOWEST_MIDI; midi <= HIGHEST_MIDI; midi++) {
        const expected = [...oracle(hornId, A4_HZ * SEMITONE ** (midi - 69))]
          .map(([name, { fallCents }]) => [...name.split(' '), fallCents] as [string, string, string, number])
          .filter(
            ([side, valves, n, fall]) =>
              side === 'F' &&
              valves !== '3' &&
              Number(n) > 2 &&
              fall >= 15 &&
              !avoided.includes(Number(n) - 1),
          )
          .sort((a, b) => order.indexOf(a[1]) - order.indexOf(b[1]))[0];
        if (!expected) continue;
        const first = fingerings(100 * midi, 'stopped', { ...DEFAULT_SETTINGS, horn }).find(
          ({ tube }) => tube.side.name === 'F',
        )!;
        expect([midi, first.tube.combination.valves, first.harmonic]).toEqual([
          midi,
          expected[1],
          Number(expected[2]),
        ]);
      }
    });
  },
);
