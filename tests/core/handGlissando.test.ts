/**
 * Hand glissandos against an oracle of its own: frequencies in hertz, every tube and harmonic of a double horn tried.
 * A closing hand joins an open note to a stopped one if one harmonic of one tube is the first when open and the second
 * when stopped, each within 40 cents; or, low down, if it slips up by the side's closing distance: surely from the 3rd
 * harmonic and below, perhaps from the 4th (common practice, no source). Horn in F.
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

/** Whether the hand takes the one note to the other surely, perhaps, or not at all. */
function joinable(openHz: number, stoppedHz: number): 'surely' | 'perhaps' | null {
  if (isJoinable(openHz, stoppedHz, 3)) return 'surely';
  return isJoinable(openHz, stoppedHz, 4) ? 'perhaps' : null;
}

/** @param highestSlip the highest harmonic from which a tone slips up */
function isJoinable(openHz: number, stoppedHz: number, highestSlip = 4): boolean {
  return SIDES.some(({ hz, closed, slips, lowest }) =>
    VALVE_CENTS.some((cents) => {
      const tube = hz * CENT ** cents;
      for (let n = 2; n <= 24; n++) {
        if (!near(tube * n, openHz)) continue;
        const falls = n >= lowest && near(Math.min(tube * n, tube * (n - 1) * closed), stoppedHz);
        const slipsUp =
          slips.includes(n) &&
          n <= highestSlip &&
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
    .findings.filter(({ id }) => JOIN_RULES.includes(id))
    .map(({ id, severity }) => `${id} ${severity}`);
}

/** What must be found of a join that goes up where the rule forbids it, or down on no one tube. */
function expectedFindings(rule: string, openHz: number, stoppedHz: number): string[] {
  const can = joinable(openHz, stoppedHz);
  if (can === 'surely') return [];
  const id = stoppedHz > openHz ? rule : 'no-common-tube';
  return [`${id} ${can === 'perhaps' ? 'risky' : 'impossible'}`];
}

const hasFingerings = (text: string): boolean =>
  examine(passageOf(text)).notes.every(({ candidates }) => candidates.length > 0);

describe.each(NOTES)('from $name open', (open) => {
  test('the hand closes to just the notes that the oracle allows', () => {
    for (const stopped of NOTES) {
      const text = `${open.name}~/4 ${stopped.name}+/4`;
      if (!hasFingerings(text)) continue;
      const expected = expectedFindings('closes-upward', open.hz, stopped.hz);
      expect(joinFindings(text), text).toEqual(expected);
    }
  });

  test('and opens back from them', () => {
    for (const stopped of NOTES) {
      const text = `${stopped.name}+~/4 ${open.name}/4`;
      if (!hasFingerings(text)) continue;
      const expected = expectedFindings('opens-downward', open.hz, stopped.hz);
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

test('from the 4th harmonic a tone only may slip up: A♭3 to C4 open, each on a tube of its own', () => {
  const risky = NOTES.flatMap((open) =>
    NOTES.filter((stopped) => joinable(open.hz, stopped.hz) === 'perhaps').map(
      (stopped) => `${open.name} ${stopped.name}`,
    ),
  );
  expect(risky).toEqual(['Ab3 A3', 'A3 Bb3', 'Bb3 B3', 'B3 C4', 'C4 C#4']);
  for (const pair of risky) {
    const [open, stopped] = pair.split(' ');
    const { notes } = examine(passageOf(`${open}~/4 ${stopped}+/4`));
    expect(notes.map(({ verdict }) => verdict)).toEqual(['sure', 'risky']);
    expect(notes.map(({ fingering }) => fingering!.harmonic)).toEqual([4, 5]);
  }
});

test('where both ways are open, planning takes the sure one: G3 to A♭3 on the 3rd harmonic', () => {
  const { notes } = examine(passageOf('G3~/4 Ab3+/4'));
  expect(notes.map(({ fingering }) => fingering!.harmonic)).toEqual([3, 4]);
});
