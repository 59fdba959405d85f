/**
 * The model against an independent brute-force oracle: plain frequencies in hertz, products and roots of two, nothing
 * shared with the core but the notes asked for and what each horn is made of, its own sides and valves.
 */
import { describe, expect, test } from 'vitest';
import type { Horn } from '../../core/horn/horn.ts';
import { HORNS } from '../../core/horn/horns.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { fingerings, HAND_STATES } from '../../core/stopping/fingering.ts';

const SEMITONE = 2 ** (1 / 12);
const CENT = 2 ** (1 / 1200);
const A4_HZ = 440;
const HIGHEST = 24;

const VALVE_HORNS = HORNS.filter(({ natural }) => !natural);

/** What a horn is made of, in hertz and ratios. */
interface OracleSide {
  name: string;
  hz: number;
  closedRatio: number;
  valveRatio: number;
  /** Valves to frequency ratio of the tube. */
  valves: [string, number][];
}

/** A horn's own sides and valves that are stopped on. */
function sidesOf({ sides }: Horn): OracleSide[] {
  return sides
    .filter(({ stoppable }) => stoppable)
    .map(({ name, fundamentalCents, closureCents, stoppingValveCents, valves }) => ({
      name,
      hz: A4_HZ * SEMITONE ** (fundamentalCents / 100 - 69),
      closedRatio: CENT ** closureCents,
      valveRatio: CENT ** -stoppingValveCents,
      valves: valves.map(({ valves, semitones, sharpCents }) => [
        valves,
        SEMITONE ** -semitones * CENT ** sharpCents,
      ]),
    }));
}

test('the sides are the horns of the trade: F1 and B♭1, 40 and 35 semitones below A4 (common practice, no source)', () => {
  const known: Record<string, number> = { F: A4_HZ / SEMITONE ** 40, Bb: A4_HZ / SEMITONE ** 35 };
  const sides = VALVE_HORNS.flatMap(sidesOf);
  expect(sides.length).toBeGreaterThanOrEqual(8);
  for (const { name, hz } of sides) expect(hz / known[name]!).toBeCloseTo(1, 12);
});

/** Every (side, valves, harmonic) whose stopped frequency is within 40 cents, with its error and its fall. */
function oracle(horn: Horn, hz: number): Map<string, { errorCents: number; fallCents: number }> {
  const found = new Map<string, { errorCents: number; fallCents: number }>();
  for (const side of sidesOf(horn)) {
    for (const [valves, ratio] of side.valves) {
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

describe.each(VALVE_HORNS)('$id: every written note from F2 to F6', (horn) => {
  test('the same fingerings, deviations and drops', () => {
    let compared = 0;
    for (let midi = LOWEST_MIDI; midi <= HIGHEST_MIDI; midi++) {
      const expected = oracle(horn, A4_HZ * SEMITONE ** (midi - 69));
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

/** Whose F side has the usual valves, the third lowering by three semitones. */
const WITH_USUAL_F_SIDE = VALVE_HORNS.filter(({ sides }) =>
  sides.some(({ name, valves }) => name === 'F' && valves.some((c) => c.valves === '3' && c.semitones === 3)),
);

describe.each(WITH_USUAL_F_SIDE)('$id: first choices', (horn) => {
  test('on an F side the first choice is the shortest tube above a harmonic that stands well', () => {
    const order = ['0', '2', '1', '12', '23', '13', '123'];
    const avoided = [7, 11, 13, 14, 15];
    for (let midi = LOWEST_MIDI; midi <= HIGHEST_MIDI; midi++) {
      const expected = [...oracle(horn, A4_HZ * SEMITONE ** (midi - 69))]
        .map(([name, { fallCents }]) => [...name.split(' '), fallCents] as [string, string, string, number])
        .filter(
          ([side, valves, n, fall]) =>
            side === 'F' && valves !== '3' && Number(n) > 2 && fall >= 15 && !avoided.includes(Number(n) - 1),
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
});

describe.each(VALVE_HORNS)('$id', (horn) => {
  test('plays the same in whatever order its sides and valves are listed', () => {
    const turned: Horn = {
      ...horn,
      sides: horn.sides.map((side) => ({ ...side, valves: side.valves.slice().reverse() })).reverse(),
    };
    for (const state of HAND_STATES)
      for (let midi = LOWEST_MIDI; midi <= HIGHEST_MIDI; midi++) {
        const [listed, other] = [horn, turned].map((each) =>
          fingerings(100 * midi, state, { ...DEFAULT_SETTINGS, horn: each }).map(
            ({ printed, harmonic }) => `${printed} ${harmonic}`,
          ),
        );
        expect([state, midi, other]).toEqual([state, midi, listed]);
      }
  });
});
