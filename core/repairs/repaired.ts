/** A part as it reads once a repair is made. */
import type { Passage, PassageNote, PassageWord } from '../part/passage.ts';
import type { OwnFingering } from '../plan/examinedNote.ts';
import { SAME_ONSET } from '../plan/ownFingerings.ts';
import type { RepairStep } from './repair.ts';

/**
 * Makes changes to a passage; the passage that was given stays as it is.
 * @param steps of one repair, or of several that do not touch the same things
 * @throws {RangeError} when a step stands at a note that the passage does not have
 * @example
 * const passage = passageOf('F2+');
 * const [finding] = examine(passage).findings;
 * const [higher] = repairsFor(examine(passage), finding);
 * finding.severity // => 'impossible'
 * examine(repaired(passage, higher.steps)).findings[0].severity // => 'risky'
 */
export function repaired(passage: Passage, steps: readonly RepairStep[]): Passage {
  if (steps.length === 0) return passage;
  const notes = passage.notes.slice();
  let kept = passage.words;
  const added: PassageWord[] = [];
  for (const step of steps) {
    const note = notes[step.noteIndex];
    if (!note)
      throw new RangeError(
        `"noteIndex" must be below ${notes.length}, as many notes as there are, got ${step.noteIndex}`,
      );
    if (step.change === 'fingering') kept = withoutWord(kept, note, step.before);
    if (step.change === 'word') added.push(wordAt(note, step.text));
    else notes[step.noteIndex] = changed(note, step);
  }
  // Behind the words that stand at the same place already: the last one rules.
  const words = added.length > 0 ? inOrder(kept.concat(added)) : kept;
  return { ...passage, notes, words };
}

function changed(note: PassageNote, step: Exclude<RepairStep, { readonly change: 'word' }>): PassageNote {
  switch (step.change) {
    case 'note':
      return { ...note, written: step.written };
    case 'sign':
      return { ...note, sign: step.sign };
    case 'fingering':
      return { ...note, fingering: step.fingering?.printed ?? null };
    case 'join':
      return {
        ...note,
        joins: note.joins.filter(({ kind, to }) => kind !== step.kind || to !== step.toIndex),
      };
  }
}

/** Without the word over a note that its fingering stood in. */
function withoutWord(
  words: readonly PassageWord[],
  { onsetQuarters, staff }: PassageNote,
  before: OwnFingering | null,
): readonly PassageWord[] {
  if (!before?.isWord) return words;
  return words.filter(
    (word) =>
      word.text !== before.text ||
      word.staff !== staff ||
      Math.abs(word.onsetQuarters - onsetQuarters) > SAME_ONSET,
  );
}

function wordAt(
  { measureIndex, measure, beat, onsetQuarters, staff }: PassageNote,
  text: string,
): PassageWord {
  return { text, measureIndex, measure, beat, onsetQuarters, staff, voice: null };
}

/** Words that stand at one place keep their order, whatever the engine's own sorting does. */
function inOrder(words: readonly PassageWord[]): readonly PassageWord[] {
  return words
    .map((word, at) => ({ word, at }))
    .sort((a, b) => a.word.onsetQuarters - b.word.onsetQuarters || a.at - b.at)
    .map(({ word }) => word);
}
