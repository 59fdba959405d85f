/**
 * Études: playable by the model's own verdict, and music by the trade's measures. What a player can do is common
 * practice, no source, unless a line says otherwise.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { EtudeNote } from '../../core/etude/bar.ts';
import { composeEtude } from '../../core/etude/compose.ts';
import type { Etude, EtudeRequest } from '../../core/etude/etude.ts';
import { etudeMarks } from '../../core/etude/etudeMarks.ts';
import { etudePassage } from '../../core/etude/etudePassage.ts';
import { parseKey, printKey, scaleBetween } from '../../core/etude/key.ts';
import { ETUDE_KINDS, type EtudeKind } from '../../core/etude/kinds.ts';
import type { Level } from '../../core/etude/level.ts';
import { drawLine } from '../../core/etude/line.ts';
import { pick, pickWeighted, seededRandom } from '../../core/etude/random.ts';
import { HORNS } from '../../core/horn/horns.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { parsePitch, pitchCents, printPitch, spellCents } from '../../core/pitch/pitch.ts';
import { examine } from '../../core/rules/examine.ts';

const KINDS: readonly EtudeKind[] = ETUDE_KINDS.map(({ kind }) => kind);
const KEYS = [
  'C',
  'G',
  'D',
  'A',
  'E',
  'B',
  'F#',
  'F',
  'Bb',
  'Eb',
  'Ab',
  'Db',
  'Am',
  'Em',
  'F#m',
  'Dm',
  'Gm',
  'Cm',
];
/** Horns that stop the whole scale surely, so that nothing in their études may be doubtful. */
const SURE_HORNS = ['double', 'single-f', 'triple-high-f'];

function request(changes: Partial<EtudeRequest> = {}): EtudeRequest {
  return {
    kind: 'match',
    key: parseKey('C'),
    level: 1,
    bars: 16,
    tempo: null,
    low: null,
    high: null,
    seed: 1,
    player: DEFAULT_SETTINGS,
    ...changes,
  };
}

function compose(changes: Partial<EtudeRequest> = {}): Etude {
  const result = composeEtude(request(changes));
  if (!result.ok) throw new Error(result.reason);
  return result.etude;
}

const anyRequest = fc
  .record({
    kind: fc.constantFrom(...KINDS),
    key: fc.constantFrom(...KEYS),
    level: fc.constantFrom<Level>(1, 2, 3),
    phrases: fc.integer({ min: 1, max: 16 }),
    tempo: fc.option(fc.integer({ min: 40, max: 132 })),
    seed: fc.integer({ min: 0, max: 4294967295 }),
    horn: fc.constantFrom(...HORNS),
  })
  .map(({ key, phrases, horn, ...rest }) =>
    request({ ...rest, key: parseKey(key), bars: 4 * phrases, player: { ...DEFAULT_SETTINGS, horn } }),
  );

/** Runs a law over every kind, key, level, length, tempo, horn and seed; counts those that made an étude. */
function forEveryEtude(law: (etude: Etude, request: EtudeRequest) => void): void {
  let composed = 0;
  fc.assert(
    fc.property(anyRequest, (asked) => {
      const result = composeEtude(asked);
      if (!result.ok) {
        expect(result.reason).toMatch(/: choose /);
        return;
      }
      composed += 1;
      law(result.etude, asked);
    }),
    { numRuns: 400 },
  );
  expect(composed).toBeGreaterThan(100);
}

function secondsOf(etude: Etude, quarters: number): number {
  return (quarters * 60) / (etude.tempo * etude.meter.beatQuarters);
}

function soundingNotes(etude: Etude): EtudeNote[] {
  return etude.bars.flat().filter(({ written }) => written !== null);
}

describe('every étude', () => {
  test('has nothing impossible, and nothing too quick for the hand', () => {
    forEveryEtude(({ bars, transposition, meter, tempo }, { player }) => {
      const { findings } = examine(etudePassage(bars, transposition, meter, tempo), player);
      expect(
        findings.filter(({ severity, id }) => severity === 'impossible' || id === 'hand-too-quick'),
      ).toEqual([]);
      if (SURE_HORNS.includes(player.horn.id)) expect(findings).toEqual([]);
    });
  });

  test('has nothing impossible in any range, for any hand and any ear', () => {
    const semitones = (cents: number) => spellCents(cents, 'flat');
    let composed = 0;
    fc.assert(
      fc.property(
        anyRequest,
        fc.integer({ min: 43, max: 80 }),
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: -40, max: 40 }),
        fc.integer({ min: 5, max: 80 }),
        (asked, lowest, span, handOffsetCents, toleranceCents) => {
          const [low, high] = [semitones(100 * lowest), semitones(100 * (lowest + span))];
          const player = { ...asked.player, handOffsetCents, toleranceCents };
          const result = composeEtude({ ...asked, low, high, player });
          if (!result.ok) return;
          composed += 1;
          const { bars, transposition, meter, tempo } = result.etude;
          const { findings } = examine(etudePassage(bars, transposition, meter, tempo), player);
          expect(findings.filter(({ severity }) => severity === 'impossible')).toEqual([]);
        },
      ),
      { numRuns: 600 },
    );
    expect(composed).toBeGreaterThan(100);
  });

  test('is made of whole bars, as many as asked for', () => {
    forEveryEtude(({ bars, meter }, asked) => {
      expect(bars).toHaveLength(asked.bars);
      for (const bar of bars) {
        const quarters = bar.reduce((sum, note) => sum + note.quarters, 0);
        expect(quarters).toBeCloseTo((4 * meter.beats) / meter.beatType, 9);
      }
    });
  });

  test('lets the player breathe, and rest at the end of every phrase', () => {
    forEveryEtude((etude) => {
      let seconds = 0;
      for (const { written, quarters, breath } of etude.bars.flat()) {
        seconds = written ? seconds + secondsOf(etude, quarters) : 0;
        // From memory: a breath at medium loudness lasts about a dozen seconds on the horn, less with the hand in.
        expect(seconds).toBeLessThanOrEqual(12.001);
        if (breath) seconds = 0;
      }
      etude.bars.forEach((bar, i) => {
        if (i % 4 === 3) expect(bar[bar.length - 1]!.written).toBeNull();
      });
    });
  });

  test('gives the hand the time its level needs, and no note longer than a breath allows', () => {
    // From memory, as the levels are described: more than half a second between changes for a beginner.
    const shortest: { readonly [level in Level]: number } = { 1: 0.6, 2: 0.42, 3: 0.3 };
    forEveryEtude((etude, { level, kind, player }) => {
      const needed = player.horn.natural ? 0.25 : kind === 'phrase' ? 0.4 : shortest[level];
      let sinceChange = Number.POSITIVE_INFINITY;
      let isStopped: boolean | null = null;
      for (const { written, quarters, sign } of etude.bars.flat()) {
        const seconds = secondsOf(etude, quarters);
        expect(seconds).toBeLessThanOrEqual(6.001);
        if (written && isStopped !== (sign === 'stopped')) {
          if (isStopped !== null) expect(sinceChange).toBeGreaterThanOrEqual(needed - 1e-9);
          isStopped = sign === 'stopped';
          sinceChange = 0;
        }
        sinceChange += seconds;
      }
    });
  });

  test('moves as a singer would: no leap of more than an octave without a rest', () => {
    forEveryEtude((etude, { player }) => {
      // A natural horn, and a B♭ horn without a stopping valve, must leap where they have nothing of the key between.
      if (player.horn.natural || player.horn.id === 'single-bflat') return;
      const events = etude.bars.flat();
      events.slice(1).forEach(({ written }, i) => {
        const before = events[i]!.written;
        if (!written || !before) return;
        expect(Math.abs(pitchCents(written) - pitchCents(before))).toBeLessThanOrEqual(1200);
      });
    });
  });

  test('leads the leading note on by steps, wherever it stands', () => {
    // Once it went anywhere at all, however far.
    const scale = scaleBetween(parseKey('Em'), parsePitch('C4'), parsePitch('G5'));
    const leading = scale.filter(({ degree }) => degree === 6)[0]!;
    const anywhere = { chord: [0, 1, 2, 3, 4, 5, 6], firm: false, height: 0.5 };
    for (let seed = 0; seed < 2000; seed++) {
      const [next] = drawLine(seededRandom(seed), scale, [anywhere], leading);
      expect(Math.abs(pitchCents(next!.written) - pitchCents(leading.written))).toBeLessThanOrEqual(700);
    }
  });

  test('signs every change of the hand', () => {
    forEveryEtude((etude) => {
      for (const { written, sign, slides } of etude.bars.flat()) {
        if (!written) expect(sign).toBeNull();
        if (slides) expect(written).not.toBeNull();
      }
      const signs = soundingNotes(etude).map(({ sign }) => sign);
      expect(signs[0]).not.toBeNull();
      // An unsigned note is open, after an open one.
      signs.forEach((sign, i) => {
        if (sign === null) expect(signs[i - 1]).not.toBe('stopped');
      });
    });
  });

  test('stays within the range asked for', () => {
    fc.assert(
      fc.property(fc.constantFrom(...KINDS), fc.integer({ min: 0, max: 999 }), (kind, seed) => {
        const [low, high] = [parsePitch('D4'), parsePitch('E5')];
        for (const { written } of soundingNotes(compose({ kind, seed, low, high, level: 3 }))) {
          expect(pitchCents(written!)).toBeGreaterThanOrEqual(pitchCents(low));
          expect(pitchCents(written!)).toBeLessThanOrEqual(pitchCents(high));
        }
      }),
      { numRuns: 60 },
    );
  });

  test('tells what it is, what it trains, and when to rest and to stop', () => {
    forEveryEtude(({ title, subtitle, trains, advice, kind, seed, key }, asked) => {
      expect(title).not.toBe('');
      expect(kind).toBe(asked.kind);
      expect(subtitle).toContain(`level ${asked.level}, seed ${seed}`);
      expect(subtitle).toContain(printKey(key));
      expect(trains).toMatch(/^[A-Z][^.]+\.$/);
      expect(advice).toMatch(/rest.*played.*stop/i);
    });
  });

  test('is the same for the same seed and another for another', () => {
    for (const kind of KINDS) {
      const made = Array.from({ length: 20 }, (_, seed) =>
        JSON.stringify(compose({ kind, seed, level: 2 }).bars),
      );
      expect(JSON.stringify(compose({ kind, seed: 7, level: 2 }).bars)).toBe(made[7]);
      expect(new Set(made).size).toBeGreaterThanOrEqual(15);
    }
  });

  test('carries the fingering of every note at its first coming in a bar', () => {
    forEveryEtude(({ bars, transposition, meter, tempo }, { player }) => {
      const examination = examine(etudePassage(bars, transposition, meter, tempo), player);
      const marks = etudeMarks(examination);
      // An empty text prints nothing, and yet takes room on the page.
      for (const { lines } of marks) expect(lines.filter((line) => line.trim() === '')).toEqual([]);
      const marked = new Set(marks.map(({ noteIndex }) => noteIndex));
      const shown = new Set<string>();
      for (const { note, reading, fingering } of examination.notes) {
        const key = `${note.measureIndex} ${printPitch(note.written)} ${reading.state} ${fingering?.printed}`;
        if (!shown.has(key) && fingering && fingering.printed !== '') expect(marked).toContain(note.index);
        shown.add(key);
      }
    });
  });
});

describe('the kinds', () => {
  test.each(['match', 'phrase', 'change', 'scale'] as const)('%s comes home to its tonic', (kind) => {
    for (let seed = 0; seed < 30; seed++) {
      for (const key of ['C', 'F', 'D', 'Bb', 'Am']) {
        const etude = compose({ kind, seed, key: parseKey(key), level: seed % 2 === 0 ? 1 : 2 });
        const notes = soundingNotes(etude);
        const last = notes[notes.length - 1]!.written!;
        expect(scaleBetween(etude.key, last, last)[0]?.degree).toBe(0);
      }
    }
  });

  test('match: every stopped note stands beside the same note open', () => {
    for (let seed = 0; seed < 30; seed++) {
      const notes = soundingNotes(compose({ kind: 'match', seed, level: 3 }));
      notes.forEach(({ sign, written }, i) => {
        if (sign !== 'stopped') return;
        const beside = [notes[i - 1], notes[i + 1]].filter((each) => each && each.sign !== 'stopped');
        expect(beside.map((each) => printPitch(each!.written!))).toContain(printPitch(written!));
      });
    }
  });

  test('bend: closing always goes down, on one tube and one harmonic', () => {
    for (let seed = 0; seed < 30; seed++) {
      for (const level of [1, 2, 3] as const) {
        const { bars, transposition, meter, tempo } = compose({
          kind: 'bend',
          seed,
          level,
          key: parseKey('F'),
        });
        const { notes } = examine(etudePassage(bars, transposition, meter, tempo), DEFAULT_SETTINGS);
        let slides = 0;
        for (const { note, reading, fingering } of notes) {
          for (const { kind, to } of note.joins) {
            if (kind !== 'glissando') continue;
            slides += 1;
            const end = notes[to]!;
            const falls = pitchCents(end.note.written) < pitchCents(note.written);
            expect(falls).toBe(end.reading.state === 'stopped');
            expect(reading.state).not.toBe(end.reading.state);
            expect([end.fingering!.printed, end.fingering!.harmonic]).toEqual([
              fingering!.printed,
              fingering!.harmonic,
            ]);
          }
        }
        expect(slides).toBeGreaterThan(10);
      }
    }
  });

  /** C. Smalley, "Starting Stopping" (CC0 method sheet): hand positions on one fingering, open to stopped, F side; 7 of its rows. */
  const POSITIONS = ['G4>F4', 'F#4>E4', 'F4>Eb4', 'E4>D4', 'E4>C#4', 'Eb4>C4', 'C5>B4'];
  test('bend: uses the hand positions of the published sheet', () => {
    const used = new Set<string>();
    for (let seed = 0; seed < 60; seed++) {
      for (const key of ['C', 'F', 'Eb']) {
        const notes = soundingNotes(compose({ kind: 'bend', seed, level: 2, key: parseKey(key) }));
        notes.forEach(({ slides, sign, written }, i) => {
          if (slides && sign !== 'stopped')
            used.add(`${pitchCents(written!)}>${pitchCents(notes[i + 1]!.written!)}`);
        });
      }
    }
    const published = POSITIONS.map((row) =>
      row
        .split('>')
        .map((name) => pitchCents(parsePitch(name)))
        .join('>'),
    );
    expect(published.filter((row) => !used.has(row))).toEqual([]);
  });

  test('scale: stopped throughout from level 2 on, and in its key', () => {
    for (let seed = 0; seed < 20; seed++) {
      const etude = compose({ kind: 'scale', seed, level: 2, key: parseKey('Eb') });
      for (const { written, sign } of soundingNotes(etude)) {
        expect(sign).toBe('stopped');
        expect(scaleBetween(etude.key, written!, written!)).toHaveLength(1);
      }
    }
  });

  test('scale: on a natural horn the hand closes only where the harmonics leave a gap', () => {
    const horn = HORNS.find(({ id }) => id === 'natural-eb')!;
    const etude = compose({ kind: 'scale', level: 2, player: { ...DEFAULT_SETTINGS, horn } });
    const states = new Map(
      soundingNotes(etude).map(({ written, sign }) => [printPitch(written!), sign ?? 'open']),
    );
    expect(etude.transposition.chromatic).toBe(-9);
    // C.-M. Widor, Initiation musicale (1923), p. 34: C4, E4, G4 and C5 open; F4 and A4 by the hand.
    for (const [name, state] of states) {
      if (['C4', 'E4', 'G4', 'C5'].includes(name)) expect([name, state]).toEqual([name, 'open']);
      if (['F4', 'A4'].includes(name)) expect(state).not.toBe('open');
    }
    expect(states.size).toBeGreaterThan(4);
  });

  test('phrase: the echo is the phrase again, stopped and soft', () => {
    for (let seed = 0; seed < 40; seed++) {
      const { bars } = compose({ kind: 'phrase', seed, level: 3, key: parseKey('Bb') });
      const tune = (bar: readonly EtudeNote[]) => bar.map(({ written, quarters }) => [written, quarters]);
      const isStopped = (bar: readonly EtudeNote[]) => bar.some(({ sign }) => sign === 'stopped');
      const first = bars.findIndex(isStopped);
      expect([2, 4]).toContain(first);
      for (let i = 0; i < bars.length; i += 2 * first) {
        for (let k = 0; k < first; k++) {
          expect(isStopped(bars[i + k]!)).toBe(false);
          expect(tune(bars[i + first + k]!)).toEqual(tune(bars[i + k]!));
        }
        expect(bars[i + first]![0]!.dynamic).toBe('p');
      }
    }
  });

  test('change: the notes get shorter phrase by phrase', () => {
    for (const [level, tempo, shortest] of [
      [1, 60, 1],
      [2, 60, 0.5],
      [3, 60, 1 / 3],
      [3, 50, 0.25],
      [1, 132, 2],
    ] as const) {
      const { bars } = compose({ kind: 'change', level, tempo, bars: 24, seed: 5 });
      const phrases = [0, 1, 2, 3, 4, 5].map((i) =>
        Math.min(...bars.slice(4 * i, 4 * i + 3).flatMap((bar) => bar.map(({ quarters }) => quarters))),
      );
      expect(phrases).toEqual(phrases.slice().sort((a, b) => b - a));
      expect(phrases[0]).toBe(2);
      expect(phrases[5]).toBeCloseTo(shortest, 9);
    }
  });
});

describe('what cannot be', () => {
  test.each([
    [{ bars: 6 }, /"bars" must be a multiple of 4 from 4 to 64, got 6/],
    [{ bars: 68 }, /"bars" must be/],
    [{ tempo: 300 }, /"tempo" must be from 40 to 132, got 300/],
    [{ seed: -1 }, /"seed" must be an integer/],
    [{ seed: 0.5 }, /"seed" must be an integer/],
    [{ level: 4 as Level }, /"level" must be one of 1, 2, 3, got 4/],
    [{ low: parsePitch('C5'), high: parsePitch('C4') }, /must lie below/],
  ])('%o is refused', (changes, message) => {
    expect(() => composeEtude(request(changes))).toThrow(message);
  });

  test.each([
    [{ kind: 'bend', low: parsePitch('C6'), high: parsePitch('G6') }, /no tones the hand can take down/],
    [
      { kind: 'scale', low: parsePitch('C2'), high: parsePitch('G2') },
      /notes of the key that can be stopped/,
    ],
    [{ kind: 'match', player: natural('natural-f') }, /a natural horn has no second fingering/],
  ] as const)('%o is declined with a reason', (changes, reason) => {
    const result = composeEtude(request(changes));
    expect(result).toEqual({ ok: false, reason: expect.stringMatching(reason) });
  });
});

function natural(id: string) {
  return { ...DEFAULT_SETTINGS, horn: HORNS.find((horn) => horn.id === id)! };
}

describe('keys', () => {
  test.each([
    ['C', 'C major', 0],
    ['Bb', 'B♭ major', -2],
    ['F#', 'F♯ major', 6],
    ['Cb', 'C♭ major', -7],
    ['Dm', 'D minor', -1],
    ['C# minor', 'C♯ minor', 4],
    ['e♭ major', 'E♭ major', -3],
    ['a-minor', 'A minor', 0],
  ])('%s is %s with %i sharps', (text, name, fifths) => {
    expect(printKey(parseKey(text))).toBe(name);
    expect(parseKey(text).fifths).toBe(fifths);
  });

  test.each(['H', '', 'C major minor', 'G#', 'Dbm', 'X'])('%j is refused', (text) => {
    expect(() => parseKey(text)).toThrow(RangeError);
  });

  test('minor has its leading note', () => {
    const names = scaleBetween(parseKey('Dm'), parsePitch('D4'), parsePitch('D5')).map(({ written }) =>
      printPitch(written),
    );
    expect(names).toEqual(['D4', 'E4', 'F4', 'G4', 'A4', 'B♭4', 'C♯5', 'D5']);
  });
});

describe('chance', () => {
  test('fills the range evenly enough for music', () => {
    const random = seededRandom(5);
    const counts = new Array<number>(10).fill(0);
    for (let i = 0; i < 10000; i++) counts[Math.floor(10 * random())]! += 1;
    for (const count of counts) expect(Math.abs(count - 1000)).toBeLessThan(150);
  });

  test('picks by weight, and nothing where nothing weighs', () => {
    const random = seededRandom(9);
    const counts = [0, 0, 0];
    for (let i = 0; i < 3000; i++) counts[pickWeighted(random, [1, 0, 2])]! += 1;
    expect(counts[1]).toBe(0);
    expect(counts[2]! / counts[0]!).toBeGreaterThan(1.7);
    expect(counts[2]! / counts[0]!).toBeLessThan(2.3);
    expect(pickWeighted(random, [0, 0])).toBe(-1);
    expect(['a', 'b']).toContain(pick(random, ['a', 'b']));
  });
});
