/** Marks for tests of the door: what the core finds, or made by hand where every note must get one. */
import type { Mark } from '../../core/marks/annotation.ts';
import { marksFor } from '../../core/marks/marks.ts';
import { examine } from '../../core/rules/examine.ts';
import type { Completion, PartMarks, ReadOptions, Score, WriteOptions } from '../../plugin/musicxml/index.ts';
import { readScore, writeMarks } from '../../plugin/musicxml/index.ts';

/** The marks that the core makes of a score. */
export function coreMarks(score: Score): PartMarks[] {
  return score.horns.map(({ id, passage }) => ({ partId: id, marks: marksFor(examine(passage)) }));
}

/** Marks of every kind on the notes of a score, whatever they are, and completions on some. */
export function madeUpMarks(score: Score): PartMarks[] {
  return score.horns.map(({ id, passage }) => ({
    partId: id,
    marks: passage.notes.filter(({ index }) => index % 3 !== 1).map(({ index }) => madeUpMark(index)),
    completions: passage.notes
      .filter(({ index }) => index % 5 === 2)
      .map(({ index }) => madeUpCompletion(index)),
  }));
}

function madeUpMark(noteIndex: number): Mark {
  const colours = [null, '#D55E00', '#0072B2'];
  const lines = noteIndex % 7 === 0 ? [] : noteIndex % 2 === 0 ? ['(C♯)', 'B 2'] : ['× <no> & "so"'];
  return { noteIndex, lines, valves: noteIndex % 4 === 0 ? 'T12' : null, colour: colours[noteIndex % 3]! };
}

function madeUpCompletion(noteIndex: number): Completion {
  return noteIndex % 2 === 0
    ? { kind: 'stopped-sign', noteIndex }
    : { kind: 'word', noteIndex, text: 'offen & frei' };
}

/** Reads all parts of a score, horns or not. */
export function readAllParts(text: string): Score {
  const parts = readScore(text).parts.map(({ id }) => id);
  return readScore(text, { parts });
}

/** Reads a text, marks it and gives the marked text. */
export function annotated(
  text: string,
  marksOf: (score: Score) => PartMarks[],
  read: (text: string) => Score = (plain) => readScore(plain, {} as ReadOptions),
  options: WriteOptions = {},
): string {
  const score = read(text);
  return writeMarks(score, marksOf(score), options);
}
