/**
 * Hand glissandos against an oracle of its own: frequencies in hertz, every tube and harmonic of a double horn tried.
 * A closing hand joins an open note to a stopped one if one harmonic of one tube is the first when open and the second
 * when stopped, each within 40 cents; or, low down, if it slips up by the side's closing distance. Horn in F.
 */
import { describe, expect, test } from 'vitest';
import { passageOf } from '../../core/part/passageOf.ts';
import { examine } from '../../core/rules/examine.ts';

const CENT = 2 ** (1 / 1200);
const NAMES = ['C', 'C#', 'D', 'Eb', 'E', 'F', 'F#', 'G', 'Ab', 'A', 'Bb', 'B'];
/** Written C3 to C6, with the frequency each sounds on a horn in F. */
const NOTES = Array.from({ length: 37 }, (_, i) => {
  const midi = 48 + i;
  return { name: `${NAMES[midi % 12]}${Math.floor(midi / 12) - 1}`, hz: 440 * 2 ** ((midi - 7 - 69) / 12) };
});
const VALVE_CENTS = [0, -100, -200, -300 + 8.2, -300 - 16, -400 - 0.1, -500 + 14.7, -600 + 37.9];
const F1_HZ = 440 * 2 ** (-40 / 12);
const BFLAT1_HZ = 440 * 2 ** (-35 / 12);
/** The fundamental, the closing distance, the harmonics that slip up, the lowest harmonic a hand holds closed. */
const SIDES = [
  { hz: F1_HZ, closed: CENT ** 100, slips: [2, 3, 4], lowest: 3 },
  { hz: BFLAT1_HZ, closed: CENT ** 150, slips: [2], lowest: 3 },
];

const near = (a: number, b: number): boolean => Math.abs(1200 * Math.log2(a / b)) <= 40.000001;

function isJoinable(openHz: number, stoppedHz: number): boolean {
  return SIDES.some(({ hz, closed, slips, lowest }) =>
    VALVE_CENTS.some((cents) => {
      const tube = hz * CENT ** cents;
      for (let n = 2; n <= 24; n++) {
        if (!near(tube * n, openHz)) continue;
        const falls = n >= lowest && near(Math.min(tube * n, tube * (n - 1) * closed), stoppedHz);
        const slipsUp =
          slips.includes(n) &&
          n + 1 >= lowest &&
          near(Math.min(tube * (n + 1), tube * n * closed), stoppedHz);
        if (falls || slipsUp) return true;
      }
      return false;
    }),
  );
}

const JOIN_RULES = ['closes-upward', 'opens-downward', 'no-common-tube'];

function joinFindings(text: string): string[] {
  return examine(passageOf(text))
    .findings.map(({ id }) => id)
    .filter((id) => JOIN_RULES.includes(id));
}

const hasFingerings = (text: string): boolean =>
  examine(passageOf(text)).notes.every(({ candidates }) => candidates.length > 0);

describe.each(NOTES)('from $name open', (open) => {
  test('the hand closes to just the notes that the oracle allows', () => {
    for (const stopped of NOTES) {
      const text = `${open.name}~/4 ${stopped.name}+/4`;
      if (!hasFingerings(text)) continue;
      const expected = isJoinable(open.hz, stopped.hz)
        ? []
        : [stopped.hz > open.hz ? 'closes-upward' : 'no-common-tube'];
      expect(joinFindings(text), text).toEqual(expected);
    }
  });

  test('and opens back from them', () => {
    for (const stopped of NOTES) {
      const text = `${stopped.name}+~/4 ${open.name}/4`;
      if (!hasFingerings(text)) continue;
      const expected = isJoinable(open.hz, stopped.hz)
        ? []
        : [stopped.hz > open.hz ? 'opens-downward' : 'no-common-tube'];
      expect(joinFindings(text), text).toEqual(expected);
    }
  });
});

test('playable glissandos are fingered on one tube and one harmonic, or a harmonic apart where they slip up', () => {
  let pairs = 0;
  for (const open of NOTES) {
    for (const stopped of NOTES) {
      if (!isJoinable(open.hz, stopped.hz)) continue;
      const [from, to] = examine(passageOf(`${open.name}~/4 ${stopped.name}+/4`)).notes;
      expect(from!.fingering!.tube).toBe(to!.fingering!.tube);
      expect([0, 1]).toContain(to!.fingering!.harmonic - from!.fingering!.harmonic);
      pairs += 1;
    }
  }
  expect(pairs).toBeGreaterThan(40);
});
