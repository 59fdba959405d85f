/** Repairs that are printed as part of a mark, for doors that have no sign or word of their own for them. */
import { SIGN_TEXTS } from '../data/signs.ts';
import type { Repair } from '../repairs/repair.ts';
import type { Mark } from './annotation.ts';

/**
 * Adds completions to the marks of a part, so that one text carries both: a sign nearest the note, below the rest; a
 * word on top. What they add goes when the marks are cleared.
 * @param repairs of signs and words; anything else is no text
 */
export function withRepairs(marks: readonly Mark[], repairs: readonly Repair[]): readonly Mark[] {
  const byNote = new Map(marks.map((mark) => [mark.noteIndex, mark]));
  for (const { steps } of repairs) {
    // A chord's sign is printed once.
    const step = steps[0]!;
    const { noteIndex } = step;
    const mark = byNote.get(noteIndex) ?? { noteIndex, lines: [], valves: null, colour: null };
    if (step.change === 'sign' && step.sign)
      byNote.set(noteIndex, { ...mark, lines: [...mark.lines, SIGN_TEXTS[step.sign]] });
    else if (step.change === 'word') byNote.set(noteIndex, { ...mark, lines: [step.text, ...mark.lines] });
  }
  return Array.from(byNote.values()).sort((a, b) => a.noteIndex - b.noteIndex);
}
