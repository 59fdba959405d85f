/** Laws that hold for every passage on every horn, over generated parts. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { marksFor, SHOW_ALL } from '../../core/marks/marks.ts';
import { resultOf } from '../../core/marks/result.ts';
import { isHandState } from '../../core/part/handStates.ts';
import type { PassageNote } from '../../core/part/passage.ts';
import { type Examination, examine } from '../../core/rules/examine.ts';
import { RULES } from '../../core/rules/rules.ts';
import { anyPassage, anySettings } from './anyPassage.ts';

function law(holds: (examination: Examination) => void): void {
  fc.assert(
    fc.property(anyPassage, anySettings, (passage, settings) => holds(examine(passage, settings))),
    { numRuns: 400 },
  );
}

describe('for every passage', () => {
  test('every note is examined, in its place', () => {
    law(({ passage, notes }) => {
      expect(notes.map(({ note }) => note)).toEqual(passage.notes);
    });
  });

  test('a chosen fingering is one of the candidates, and plays the note within the tolerance', () => {
    law(({ notes, settings }) => {
      for (const { fingering, candidates, soundingCents } of notes) {
        expect(fingering === null).toBe(candidates.length === 0);
        if (!fingering) continue;
        expect(candidates).toContain(fingering);
        const room = settings.horn.natural ? Math.max(50, settings.toleranceCents) : settings.toleranceCents;
        expect(Math.abs(fingering.deviationCents)).toBeLessThanOrEqual(room + 1e-6);
        const played = fingering.naturalCents - fingering.dropCents;
        expect(played - soundingCents!).toBeCloseTo(fingering.deviationCents, 6);
      }
    });
  });

  test('a note is as doubtful as the worst finding or its own fingering, and never less', () => {
    const weight = { sure: 0, advice: 0, risky: 1, impossible: 2 };
    law(({ notes, findings }) => {
      for (const { noteIndex, severity } of findings)
        expect(weight[notes[noteIndex]!.verdict]).toBeGreaterThanOrEqual(weight[severity]);
      for (const { note, verdict, reading, fingering } of notes) {
        const own = fingering ? fingering.verdict : 'impossible';
        const worst = Math.max(
          0,
          ...findings
            .filter(({ noteIndex }) => noteIndex === note.index)
            .map(({ severity }) => weight[severity]),
        );
        if (!isHandState(reading.state) && !fingering) expect(weight[verdict]).toBe(worst);
        else if (fingering) expect(weight[verdict]).toBe(Math.max(weight[own], worst));
      }
    });
  });

  test('findings stand in the order of the music and come from the list of rules', () => {
    const ids = RULES.map(({ id }) => id);
    law(({ findings }) => {
      const places = findings.map(({ noteIndex }) => noteIndex);
      expect(places).toEqual([...places].sort((a, b) => a - b));
      for (const { id } of findings) expect(ids).toContain(id);
    });
  });

  test('every impossible note says why: some rule has found it', () => {
    law(({ notes, findings }) => {
      const found = new Set(
        findings.filter(({ severity }) => severity === 'impossible').map(({ noteIndex }) => noteIndex),
      );
      for (const { note, verdict, soundingCents } of notes)
        if (verdict === 'impossible' && soundingCents !== null) expect(found).toContain(note.index);
    });
  });

  test('a user colour is never replaced, and results are plain data', () => {
    law((examination) => {
      for (const { noteIndex, colour } of marksFor(examination))
        if (examination.passage.notes[noteIndex]!.userColour) expect(colour).toBeNull();
      const result = resultOf([examination]);
      expect(JSON.parse(JSON.stringify(result))).toEqual(result);
      expect(JSON.stringify(result)).not.toMatch(/NaN|Infinity/);
    });
  });

  test('leaving repeats out never adds or changes a mark', () => {
    law((examination) => {
      const all = new Map(marksFor(examination, SHOW_ALL).map((mark) => [mark.noteIndex, mark]));
      for (const mark of marksFor(examination, { ...SHOW_ALL, repeat: 'changes' })) {
        const full = all.get(mark.noteIndex)!;
        expect(mark).toEqual({ ...full, lines: mark.lines.length > 0 ? full.lines : [] });
      }
    });
  });

  test('twice is the same', () => {
    fc.assert(
      fc.property(anyPassage, anySettings, (passage, settings) => {
        expect(resultOf([examine(passage, { ...settings })])).toEqual(
          resultOf([examine({ ...passage }, settings)]),
        );
      }),
    );
  });

  test('what a note sounds decides its fingering, whatever the part calls it', () => {
    fc.assert(
      fc.property(anyPassage, anySettings, (any, settings) => {
        fc.pre(!settings.horn.crookFollowsPart);
        // A word that names the fingered note calls it as the part does.
        const passage = { ...any, words: any.words.filter(({ text }) => !/^[A-G] /.test(text)) };
        const inC = (note: PassageNote): PassageNote => {
          const { chromatic = 0 } = note.transposition ?? {};
          return {
            ...note,
            written: { ...note.written, alter: note.written.alter + chromatic },
            transposition: note.transposition ? { chromatic: 0, diatonic: 0, octaveChange: 0 } : null,
          };
        };
        const moved = examine({ ...passage, notes: passage.notes.map(inC) }, settings);
        expect(moved.notes.map(({ fingering }) => fingering?.printed)).toEqual(
          examine(passage, settings).notes.map(({ fingering }) => fingering?.printed),
        );
      }),
    );
  });
});
