/** Words for the hand that are never cancelled, and where open writing most likely begins again. */

import { isHandState, type WordInForce } from '../part/handStates.ts';
import type { Line } from '../part/lines.ts';
import type { ExaminedNote } from './examinedNote.ts';

/** A word that goes on holding where it was hardly meant to. */
export interface ForgottenWord {
  readonly word: WordInForce;
  /** The player's notes that hang on the word alone: from a fresh entry on, or from where its signs have ended. At least one. */
  readonly affected: readonly number[];
  /** True when its signs have ended, so that the notes are read open. */
  readonly isLapsed: boolean;
}

/** A rest this long ends what a word was written for, in quarter notes. A choice: a bar of common time. */
const FRESH_ENTRY_QUARTERS = 4;

/** The word of a note by the letter, lapsed or not. */
function wordAt({ reading }: ExaminedNote): WordInForce | null {
  return reading.word ?? reading.lapsed;
}

/**
 * Words that hold to the end of a player's line, or until they are printed again, although the player has come in
 * afresh after a long rest; and words that lapsed with their signs. A word that holds to the end without such a rest is
 * taken as meant.
 */
export function forgottenWordsIn(line: Line, notes: readonly ExaminedNote[]): readonly ForgottenWord[] {
  const found: ForgottenWord[] = [];
  for (let at = 0; at < line.length; ) {
    const word = wordAt(notes[line[at]!]!);
    let end = at + 1;
    while (end < line.length && wordAt(notes[line[end]!]!)?.wordIndex === word?.wordIndex) end += 1;
    if (word && isHandState(word.state)) {
      const stretch = line.slice(at, end);
      const lapsed = stretch.filter(
        (index) => notes[index]!.reading.lapsed && notes[index]!.reading.from !== 'sign',
      );
      const forgotten = isCancelled(word, line, end, notes) ? [] : underWordAfterRest(stretch, notes);
      const affected = lapsed.length > 0 ? lapsed : forgotten;
      if (affected.length > 0) found.push({ word, affected, isLapsed: lapsed.length > 0 });
    }
    at = end;
  }
  return found;
}

function isCancelled(word: WordInForce, line: Line, end: number, notes: readonly ExaminedNote[]): boolean {
  const next = end < line.length ? wordAt(notes[line[end]!]!) : undefined;
  return next !== undefined && next?.state !== word.state;
}

/** The notes after the first long rest of a stretch that only the word closes. */
function underWordAfterRest(stretch: Line, notes: readonly ExaminedNote[]): readonly number[] {
  for (let at = 1; at < stretch.length; at++) {
    const before = notes[stretch[at - 1]!]!.note;
    const rested = notes[stretch[at]!]!.note.onsetQuarters - before.onsetQuarters - before.durationQuarters;
    if (rested >= FRESH_ENTRY_QUARTERS)
      return stretch.slice(at).filter((index) => notes[index]!.reading.from === 'word');
  }
  return [];
}
