/** What each kind of étude owes. */
import { describe, expect, test } from 'vitest';
import { type Bar, FOUR_FOUR, SIX_EIGHT } from '../../core/etude/bar.ts';
import { etudeMarks } from '../../core/etude/etudeMarks.ts';
import { parseKey, scaleBetween } from '../../core/etude/key.ts';
import { BEND_TUBES } from '../../core/etude/kinds/bend.ts';
import { HORNS } from '../../core/horn/horns.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { parsePitch, pitchCents, printPitch } from '../../core/pitch/pitch.ts';
import { compose, eventsOf, examined, seeds, soundingNotes } from './etude/composed.ts';

describe('the kinds', () => {
  test('seal: from the second level on tones are tied, and signed and marked where they begin', () => {
    for (const seed of seeds(20))
      for (const level of [2, 3] as const) {
        const examination = examined(compose({ kind: 'seal', seed, level }));
        const tied = new Set(
          examination.notes.flatMap(({ note }) =>
            note.joins.filter(({ kind }) => kind === 'tie').map(({ to }) => to),
          ),
        );
        expect(tied.size).toBeGreaterThan(3);
        expect(examination.findings).toEqual([]);
        const marked = new Set(etudeMarks(examination).map(({ noteIndex }) => noteIndex));
        for (const { note, reading, verdict } of examination.notes) {
          if (reading.state === 'open') continue;
          expect([verdict, marked.has(note.index), note.sign]).toEqual(
            tied.has(note.index) ? ['sure', false, null] : ['sure', true, 'stopped'],
          );
        }
      }
  });

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
    for (const [level, tempo, shortest, meter] of [
      [1, 60, 0.5, FOUR_FOUR],
      [2, 60, 0.5, FOUR_FOUR],
      [2, 42, 0.5, SIX_EIGHT],
      [3, 90, 0.5, FOUR_FOUR],
      [3, 72, 1 / 3, FOUR_FOUR],
      [3, 60, 0.25, FOUR_FOUR],
      [3, 40, 0.25, SIX_EIGHT],
    ] as const) {
      const { bars } = compose({ kind: 'change', level, tempo, meter, bars: 24, seed: 5 });
      const phrases = [0, 1, 2, 3, 4, 5].map((i) =>
        Math.min(...eventsOf(bars.slice(4 * i, 4 * i + 3)).map(({ quarters }) => quarters)),
      );
      expect(phrases).toEqual(phrases.slice().sort((a, b) => b - a));
      expect(phrases[5]).toBeCloseTo(shortest, 9);
    }
  });
});
