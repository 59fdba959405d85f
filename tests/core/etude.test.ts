/** Études: what every one owes, and what is refused. What each kind owes stands in `etudeKinds.test.ts`, the laws in `core/etude/laws.ts`. */
import { describe, expect, test } from 'vitest';
import { composeEtude } from '../../core/etude/compose.ts';
import { etudeMarks } from '../../core/etude/etudeMarks.ts';
import { ETUDE_KINDS, type EtudeKind } from '../../core/etude/kinds.ts';
import type { Level } from '../../core/etude/levels.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { parsePitch, pitchCents, printPitch } from '../../core/pitch/pitch.ts';
import { compose, eventsOf, examined, playerOf, request, seeds, soundingNotes } from './etude/composed.ts';

const KINDS: readonly EtudeKind[] = ETUDE_KINDS.map(({ kind }) => kind);

describe('every étude', () => {
  test('stays within the range asked for', () => {
    const [low, high] = [parsePitch('D4'), parsePitch('E5')];
    for (const kind of KINDS)
      for (const seed of seeds(12))
        for (const { written } of soundingNotes(compose({ kind, seed, low, high, level: 3, bars: 8 }))) {
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
        for (const seed of seeds(12)) {
          const cents = soundingNotes(compose({ kind, level, seed, bars: 8 })).map(({ written }) =>
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
        // What is held on has its mark where it begins.
        const tied = new Set(
          examination.passage.notes.flatMap(({ joins }) =>
            joins.filter(({ kind }) => kind === 'tie').map(({ to }) => to),
          ),
        );
        for (const { note, reading, fingering, verdict } of examination.notes) {
          const key = `${note.measureIndex} ${printPitch(note.written)} ${reading.state} ${fingering?.printed}`;
          if (tied.has(note.index)) continue;
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
    [{ kind: 'bend', player: playerOf('single-bflat-stop-valve') }, /no tones the hand can take down/],
  ] as const)('%o is declined with a reason', (changes, reason) => {
    const result = composeEtude(request(changes));
    expect(result).toEqual({ ok: false, reason: expect.stringMatching(reason) });
  });
});
