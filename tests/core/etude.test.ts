/** Études: what each kind owes, and what is refused. The laws that all of them keep are in `core/etude/laws.ts`. */
import { describe, expect, test } from 'vitest';
import type { Bar, EtudeNote } from '../../core/etude/bar.ts';
import { composeEtude } from '../../core/etude/compose.ts';
import type { Etude, EtudeRequest } from '../../core/etude/etude.ts';
import { etudeMarks } from '../../core/etude/etudeMarks.ts';
import { etudePassage } from '../../core/etude/etudePassage.ts';
import { parseKey, printKey, scaleBetween } from '../../core/etude/key.ts';
import { BEND_TUBES } from '../../core/etude/kinds/bend.ts';
import { ETUDE_KINDS, type EtudeKind } from '../../core/etude/kinds.ts';
import type { Level } from '../../core/etude/levels.ts';
import { drawLine } from '../../core/etude/line.ts';
import { pick, pickWeighted, seededRandom } from '../../core/etude/random.ts';
import { HORNS } from '../../core/horn/horns.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { parsePitch, pitchCents, printPitch } from '../../core/pitch/pitch.ts';
import { examine } from '../../core/rules/examine.ts';

const KINDS: readonly EtudeKind[] = ETUDE_KINDS.map(({ kind }) => kind);

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

const eventsOf = (bars: readonly Bar[]) => bars.flatMap(({ notes }) => notes);
const soundingNotes = ({ bars }: Etude): EtudeNote[] =>
  eventsOf(bars).filter(({ written }) => written !== null);
const examined = ({ bars, transposition, tempo, player }: Etude) =>
  examine(etudePassage(bars, transposition, tempo), player);
const seeds = (count: number) => Array.from({ length: count }, (_, i) => i);

describe('every étude', () => {
  test('stays within the range asked for', () => {
    const [low, high] = [parsePitch('D4'), parsePitch('E5')];
    for (const kind of KINDS)
      for (const seed of seeds(12))
        for (const { written } of soundingNotes(compose({ kind, seed, low, high, level: 3 }))) {
          expect(pitchCents(written!)).toBeGreaterThanOrEqual(pitchCents(low));
          expect(pitchCents(written!)).toBeLessThanOrEqual(pitchCents(high));
        }
  });

  test('stays within the range of its level, unless the key has no tonic there', () => {
    // The levels as they are described: G4–D5, E4–F5, G3–A5.
    const ends: { readonly [level in Level]: readonly [string, string] } = {
      1: ['G4', 'D5'],
      2: ['E4', 'F5'],
      3: ['G3', 'A5'],
    };
    for (const kind of KINDS)
      for (const level of [1, 2, 3] as const)
        for (const seed of seeds(20)) {
          const cents = soundingNotes(compose({ kind, level, seed })).map(({ written }) =>
            pitchCents(written!),
          );
          expect(Math.min(...cents)).toBeGreaterThanOrEqual(pitchCents(parsePitch(ends[level][0])));
          expect(Math.max(...cents)).toBeLessThanOrEqual(pitchCents(parsePitch(ends[level][1])));
        }
  });

  test('is the same for the same seed and another for another', () => {
    for (const kind of KINDS) {
      const made = seeds(20).map((seed) => JSON.stringify(compose({ kind, seed, level: 2 }).bars));
      expect(JSON.stringify(compose({ kind, seed: 7, level: 2 }).bars)).toBe(made[7]);
      expect(new Set(made).size).toBeGreaterThanOrEqual(15);
    }
  });

  test('has as many bars as asked for', () => {
    for (const kind of KINDS)
      for (const bars of [4, 8, 12, 16, 20, 32, 64])
        for (const level of [1, 3] as const) expect(compose({ kind, bars, level }).bars).toHaveLength(bars);
  });

  test('carries the fingering of every note at its first coming in a bar, and of a risky one each time', () => {
    for (const kind of KINDS)
      for (const seed of seeds(10)) {
        const examination = examined(
          compose({ kind, seed, level: 3, low: parsePitch('G3'), high: parsePitch('G4') }),
        );
        const marks = etudeMarks(examination);
        // An empty text prints nothing, and yet takes room on the page.
        for (const { lines } of marks) expect(lines.filter((line) => line.trim() === '')).toEqual([]);
        const marked = new Map(marks.map((mark) => [mark.noteIndex, mark]));
        const shown = new Set<string>();
        for (const { note, reading, fingering, verdict } of examination.notes) {
          const key = `${note.measureIndex} ${printPitch(note.written)} ${reading.state} ${fingering?.printed}`;
          if (!shown.has(key) && fingering) expect(marked.has(note.index)).toBe(true);
          shown.add(key);
          if (verdict === 'risky') {
            expect(marked.get(note.index)!.lines[0]).toMatch(/^≈/);
            expect(marked.get(note.index)!.colour).not.toBeNull();
          }
        }
      }
  });

  test('has the valves alone over runs of eighths with the hand closed, and whole fingerings over quarters', () => {
    let [inRuns, quarters] = [0, 0];
    for (const seed of seeds(20)) {
      const examination = examined(compose({ kind: 'scale', level: 2, seed }));
      const { notes } = examination;
      for (const { noteIndex, lines } of etudeMarks(examination)) {
        const length = (i: number) => notes[i]?.note.durationQuarters ?? 4;
        if (length(noteIndex) === 0.5 && length(noteIndex + 1) === 0.5) {
          inRuns += 1;
          expect(lines).toEqual([expect.stringMatching(/^[0-3T]+$/)]);
        } else if (length(noteIndex) >= 1) {
          quarters += 1;
          expect(lines.join(' ')).toMatch(/[A-G]/);
        }
      }
    }
    expect(Math.min(inRuns, quarters)).toBeGreaterThan(50);
  });

  test('is marked like music', () => {
    const used = new Set<string>();
    for (const kind of KINDS)
      for (const seed of seeds(20)) {
        const { bars, tempoWords } = compose({ kind, seed, level: ((seed % 3) + 1) as Level });
        expect(tempoWords).toMatch(/^(Lento|Adagio|Andante|Moderato|Allegretto) [a-z ]+$/);
        let isInHairpin = false;
        for (const each of eventsOf(bars)) {
          for (const [name, value] of Object.entries(each)) {
            if (['attack', 'dynamic', 'hairpin'].includes(name) && value) used.add(String(value));
            if (['breath', 'fermata', 'slides'].includes(name) && value) used.add(name);
          }
          if (each.slur) used.add('slur');
          // Hairpins follow each other and end.
          if (each.hairpin) {
            expect(isInHairpin).toBe(false);
            isInHairpin = true;
          }
          if (each.hairpinEnds) {
            expect(isInHairpin).toBe(true);
            isInHairpin = false;
          }
        }
        expect(isInHairpin).toBe(false);
        if (bars.some(({ times }) => times > 0)) used.add('repeat');
      }
    for (const mark of [
      'accent',
      'tenuto',
      'p',
      'mf',
      'f',
      'fp',
      'sfz',
      'crescendo',
      'diminuendo',
      'breath',
      'fermata',
      'slur',
      'repeat',
    ])
      expect(used).toContain(mark);
  });
});

describe('the kinds', () => {
  test('match: every stopped note stands beside the same note open', () => {
    for (const seed of seeds(30)) {
      const notes = soundingNotes(compose({ kind: 'match', seed, level: 3 }));
      notes.forEach(({ hand, written }, i) => {
        if (hand !== 'stopped') return;
        // Quick repeats of a stopped note count as one.
        let from = i;
        let to = i;
        while (
          notes[from - 1]?.hand === 'stopped' &&
          printPitch(notes[from - 1]!.written!) === printPitch(written!)
        )
          from -= 1;
        while (
          notes[to + 1]?.hand === 'stopped' &&
          printPitch(notes[to + 1]!.written!) === printPitch(written!)
        )
          to += 1;
        const beside = [notes[from - 1], notes[to + 1]].filter((each) => each && each.hand === 'open');
        expect(beside.map((each) => printPitch(each!.written!))).toContain(printPitch(written!));
      });
    }
  });

  test('bend: closing always goes down, on one tube and one harmonic', () => {
    for (const seed of seeds(30))
      for (const level of [1, 2, 3] as const) {
        const { notes } = examined(compose({ kind: 'bend', seed, level, key: parseKey('F') }));
        let slides = 0;
        for (const { note, reading, fingering } of notes)
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
        expect(slides).toBeGreaterThan(10);
      }
  });

  test('bend: starts with the smallest, and uses six tubes in eight bars', () => {
    for (const seed of seeds(30))
      for (const level of [1, 2, 3] as const) {
        const { notes } = examined(compose({ kind: 'bend', seed, level, bars: 8 }));
        const drops = notes
          .filter(({ reading, note }) => reading.state === 'stopped' && note.measureIndex < 8)
          .map(({ fingering }) => fingering!.dropCents);
        // By harmonic: valve slides leave a few cents within one.
        drops.slice(1).forEach((drop, i) => {
          expect(drop).toBeGreaterThan(drops[i]! - 10);
        });
        expect(new Set(notes.map(({ fingering }) => fingering!.printed)).size).toBeGreaterThanOrEqual(
          BEND_TUBES,
        );
      }
  });

  /** C. Smalley, "Starting Stopping" (CC0 method sheet): hand positions on one fingering, open to stopped, F side; 6 of its rows that a full stop makes. */
  const POSITIONS = ['G4>F4', 'F#4>E4', 'F4>Eb4', 'E4>C#4', 'Eb4>C4', 'C5>B4'];
  test('bend: uses the hand positions of the published sheet', () => {
    const used = new Set<string>();
    for (const seed of seeds(60))
      for (const level of [1, 2, 3] as const) {
        const notes = soundingNotes(compose({ kind: 'bend', seed, level, bars: 32 }));
        notes.forEach(({ slides, hand, written }, i) => {
          if (slides && hand !== 'stopped')
            used.add(`${pitchCents(written!)}>${pitchCents(notes[i + 1]!.written!)}`);
        });
      }
    const published = POSITIONS.map((row) =>
      row
        .split('>')
        .map((name) => pitchCents(parsePitch(name)))
        .join('>'),
    );
    expect(published.filter((row) => !used.has(row))).toEqual([]);
  });

  test('scale: stopped throughout from level 2 on, and in its key; minor rises by its raised sixth', () => {
    for (const seed of seeds(20)) {
      const etude = compose({ kind: 'scale', seed, level: 2, key: parseKey('Eb') });
      for (const { written, hand } of soundingNotes(etude)) {
        expect(hand).toBe('stopped');
        expect(scaleBetween(etude.key, written!, written!)).toHaveLength(1);
      }
      const minor = soundingNotes(compose({ kind: 'scale', seed, level: 2, key: parseKey('Em') }));
      minor.slice(1).forEach(({ written }, i) => {
        const names = [printPitch(minor[i]!.written!), printPitch(written!)].map((name) => name.slice(0, -1));
        expect(names).not.toEqual(['C', 'D♯']);
        expect(names).not.toEqual(['D♯', 'C']);
      });
    }
  });

  test('scale: on a natural horn the hand closes only where the harmonics leave a gap', () => {
    const horn = HORNS.find(({ id }) => id === 'natural-eb')!;
    const etude = compose({ kind: 'scale', level: 3, player: { ...DEFAULT_SETTINGS, horn } });
    const states = new Map(soundingNotes(etude).map(({ written, hand }) => [printPitch(written!), hand]));
    expect(etude.transposition.chromatic).toBe(-9);
    // C.-M. Widor, Initiation musicale (1923), p. 34: C4, E4, G4 and C5 open; F4 and A4 by the hand.
    for (const [name, state] of states) {
      if (['C4', 'E4', 'G4', 'C5'].includes(name)) expect([name, state]).toEqual([name, 'open']);
      if (['F4', 'A4'].includes(name)) expect(state).not.toBe('open');
    }
    expect(states.size).toBeGreaterThan(4);
  });

  test('phrase: the echo is the phrase again, stopped and soft; phrases are of three bars or more', () => {
    for (const seed of seeds(40))
      for (const level of [1, 2, 3] as const) {
        const { bars } = compose({ kind: 'phrase', seed, level, key: parseKey('D') });
        const tune = ({ notes }: Bar) => notes.map(({ written, quarters }) => [written, quarters]);
        const isStopped = ({ notes }: Bar) => notes.some(({ hand }) => hand === 'stopped');
        for (let i = 0; i < bars.length; ) {
          let count = 0;
          while (i + count < bars.length && !isStopped(bars[i + count]!)) count += 1;
          expect(count).toBeGreaterThanOrEqual(3);
          for (let k = 0; k < count; k++) {
            expect(isStopped(bars[i + count + k]!)).toBe(true);
            expect(tune(bars[i + count + k]!)).toEqual(tune(bars[i + k]!));
          }
          expect(['p', 'pp']).toContain(bars[i + count]!.notes[0]!.dynamic);
          i += 2 * count;
        }
      }
  });

  test('phrase, scale and change go to another key at level 3 and come home', () => {
    for (const kind of ['phrase', 'scale', 'change'] as const) {
      const key = parseKey('D');
      const wandering = seeds(30).filter((seed) => {
        const notes = soundingNotes(compose({ kind, seed, level: 3, key }));
        return notes.some(({ written }) => scaleBetween(key, written!, written!).length === 0);
      });
      expect(wandering.length).toBeGreaterThan(10);
    }
  });

  test('change: the notes get shorter, as far as level and tempo let them; a quick hand gets sixteenths', () => {
    for (const [level, tempo, shortest] of [
      [1, 60, 0.5],
      [2, 60, 0.5],
      [3, 90, 0.5],
      [3, 72, 1 / 3],
      [3, 60, 0.25],
    ] as const) {
      const { bars } = compose({ kind: 'change', level, tempo, bars: 24, seed: 5 });
      const phrases = [0, 1, 2, 3, 4, 5].map((i) =>
        Math.min(...eventsOf(bars.slice(4 * i, 4 * i + 3)).map(({ quarters }) => quarters)),
      );
      expect(phrases).toEqual(phrases.slice().sort((a, b) => b - a));
      expect(phrases[5]).toBeCloseTo(shortest, 9);
    }
  });

  test('line: leads the leading note on by steps, wherever it stands', () => {
    // Once it went anywhere at all, however far.
    const scale = scaleBetween(parseKey('Em'), parsePitch('C4'), parsePitch('G5'));
    const leading = scale.filter(({ degree }) => degree === 6)[0]!;
    const anywhere = { chord: [0, 1, 2, 3, 4, 5, 6], firm: false, height: 0.5 };
    for (const seed of seeds(2000)) {
      const [next] = drawLine(seededRandom(seed), scale, [anywhere], leading);
      expect(Math.abs(pitchCents(next!.written) - pitchCents(leading.written))).toBeLessThanOrEqual(700);
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
      /notes? of the key that the hand makes surely/,
    ],
    [{ kind: 'match', player: { ...DEFAULT_SETTINGS, handSeconds: 5 } }, /no time within a half note/],
    [{ kind: 'bend', player: hornNamed('single-bflat-stop-valve') }, /no tones the hand can take down/],
  ] as const)('%o is declined with a reason', (changes, reason) => {
    const result = composeEtude(request(changes));
    expect(result).toEqual({ ok: false, reason: expect.stringMatching(reason) });
  });
});

function hornNamed(id: string) {
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
