/**
 * The open chart of the double horn, written F♯2 to C6, horn in F. No published chart of the whole double horn was at
 * hand; each row says where it comes from:
 *
 * - R: read in C. Smalley, "Starting Stopping" (method sheet, CC0), hand positions, open note and its fingering
 * - S: read there too, as a stopped row on the 12th harmonic of the B♭ side, which closing does not change, so that the
 *   open note has the same fingering
 * - C: computed: that sheet's stopped chart of the F side fingers a semitone below the written note, so its rows, a
 *   semitone lower, are the open chart
 * - M: from memory, not verified: the usual chart of the double horn. What can be reckoned of these rows is: each is the
 *   shortest tube of its side that holds the note well, by the cents of the harmonics and the semitones of the valves.
 *   That players take them first, and change sides at A♭4, is from memory alone
 */
import { describe, expect, test } from 'vitest';
import { composeEtude } from '../../core/etude/compose.ts';
import { etudePassage } from '../../core/etude/etudePassage.ts';
import { parseKey } from '../../core/etude/key.ts';
import { HORNS } from '../../core/horn/horns.ts';
import { passageOf } from '../../core/part/passageOf.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { HORN_IN_F, parsePitch, pitchCents, soundingCents } from '../../core/pitch/pitch.ts';
import { examine } from '../../core/rules/examine.ts';
import { fingerings } from '../../core/stopping/fingering.ts';

type Source = 'R' | 'S' | 'C' | 'M';

/** Rows like `G4 0, F4 1`. */
function rows(source: Source, text: string): [written: string, valves: string, source: Source][] {
  return text.split(', ').map((row) => {
    const [written, valves] = row.split(' ') as [string, string];
    return [written, valves, source];
  });
}

const CHART = [
  ...rows('M', 'F#2 123, G2 13, Ab2 23, A2 12, Bb2 1, B2 2'),
  ...rows('M', 'C3 0, C#3 123, D3 13, Eb3 23, E3 12, F3 1, F#3 2, G3 0, Ab3 23, A3 12, Bb3 1'),
  ...rows('C', 'B3 2, C4 0, C#4 12, D4 1'),
  ...rows('R', 'Eb4 2, E4 0, F4 1, F#4 2, G4 0'),
  ...rows('M', 'Ab4 T23, A4 T12, Bb4 T1, B4 T2, C5 T0'),
  ...rows('R', 'Db5 T23, D5 T12, Eb5 T1, E5 T2, F5 T0'),
  ...rows('M', 'F#5 T2, G5 T0'),
  ...rows('S', 'Ab5 T23, A5 T12, Bb5 T1, B5 T2, C6 T0'),
];

/** The chart by sounding pitch, which knows no spelling. */
const BY_SOUND = new Map(
  CHART.map(([written, valves]) => [soundingCents(parsePitch(written), HORN_IN_F), valves]),
);

describe('the open chart of the double horn (43 rows: 10 read, 5 read by way of the 12th harmonic, 4 computed, 24 from memory and reckoned)', () => {
  test('is whole: every semitone from F♯2 to C6, once', () => {
    const from = soundingCents(parsePitch('F#2'), HORN_IN_F);
    expect([...BY_SOUND.keys()]).toEqual(Array.from({ length: 43 }, (_, i) => from + 100 * i));
  });

  test.each(CHART)('%s is fingered %s first (%s)', (written, valves) => {
    const cents = soundingCents(parsePitch(written), HORN_IN_F);
    expect(fingerings(cents, 'open', DEFAULT_SETTINGS)[0]!.printed).toBe(valves);
    expect(fingerings(cents, 'straight-mute', DEFAULT_SETTINGS)[0]!.printed).toBe(valves);
  });

  // Fingered alike: the one by its first choices when open, the other because its high side is kept for who asks.
  test.each(['double-stop-valve', 'triple-high-f'])('%s is fingered by it too', (id) => {
    const horn = HORNS.find((known) => known.id === id)!;
    for (const [cents, valves] of BY_SOUND)
      expect([cents, fingerings(cents, 'open', { ...DEFAULT_SETTINGS, horn })[0]!.printed]).toEqual([
        cents,
        valves,
      ]);
  });

  test('a part with time between its notes is fingered by it', () => {
    const { notes } = examine(passageOf(`@60 ${CHART.map(([written]) => written).join(' ')}`));
    expect(notes.map(({ fingering }) => fingering!.printed)).toEqual(CHART.map(([, valves]) => valves));
  });

  /**
   * The rows from memory, reckoned without the model: harmonics in semitones above the open side, from A. J. Ellis's cents,
   * less what the valves take off ("Young Horn Player's Guide": 2 a semitone, 1 two, 1 and 2 three, 2 and 3 four, 1 and 3
   * five, all six). Harmonics 5 and 10 (14 cents flat), 7, 11, 13 and 14 hold no note well.
   */
  test.each(CHART.filter(([, , source]) => source === 'M'))(
    '%s on %s is the shortest that holds it',
    (written, valves) => {
      const LOWERING = { '0': 0, '2': 1, '1': 2, '12': 3, '23': 4, '13': 5, '123': 6 };
      const HARMONICS = {
        2: 1200,
        3: 1902,
        4: 2400,
        6: 3102,
        8: 3600,
        9: 3804,
        10: 3986,
        12: 4302,
        16: 4800,
      };
      // Written, the open F side begins at C2 and the B♭ side at F2.
      const open = valves[0] === 'T' ? 4100 : 3600;
      const holding = Object.entries(LOWERING).filter(([, semitones]) =>
        Object.values(HARMONICS).some(
          (cents) => Math.round((open + cents) / 100) - semitones === pitchCents(parsePitch(written)) / 100,
        ),
      );
      const shortest = holding.sort(([, a], [, b]) => a - b)[0]!;
      expect(shortest[0]).toBe(valves.replace('T', ''));
    },
  );

  test('études too, but where a note says why not', () => {
    let open = 0;
    for (let seed = 1; seed <= 10; seed++) {
      const key = parseKey('F');
      const made = composeEtude({
        ...({ kind: 'match', level: 2, bars: 8, tempo: null, low: null, high: null } as const),
        ...{ key, seed, player: DEFAULT_SETTINGS },
      });
      if (!made.ok) throw new Error(made.reason);
      const { bars, transposition, tempo } = made.etude;
      for (const { reading, soundingCents: cents, fingering, chosenBecause } of examine(
        etudePassage(bars, transposition, tempo),
      ).notes) {
        if (reading.state !== 'open' || chosenBecause !== null) continue;
        expect(fingering!.printed).toBe(BY_SOUND.get(cents!));
        open += 1;
      }
    }
    expect(open).toBeGreaterThan(50);
  });

  test('the F side keeps its 5th harmonic, E4 on 0 (the sheet’s hand positions)', () => {
    const horn = HORNS.find(({ id }) => id === 'single-f')!;
    const e4 = soundingCents(parsePitch('E4'), HORN_IN_F);
    expect(fingerings(e4, 'open', { ...DEFAULT_SETTINGS, horn })[0]!.printed).toBe('0');
  });

  // The rule's reason, in the model's own cents: 14 flat on 2 and 0, in tune on 23 and 12.
  test.each([
    ['Ab4', 'T23', 'T2'],
    ['A4', 'T12', 'T0'],
  ])('%s stands nearer on %s than on %s', (written, chosen, flat) => {
    const found = fingerings(soundingCents(parsePitch(written), HORN_IN_F), 'open', DEFAULT_SETTINGS);
    const deviation = (printed: string) =>
      Math.abs(found.find((each) => each.printed === printed)!.deviationCents);
    expect(deviation(chosen)).toBeLessThan(deviation(flat));
  });
});
