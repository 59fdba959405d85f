/** Words for the hand that are never cancelled, and where open writing most likely begins again. */
import type { ExaminedNote } from './examinedNote.ts';
import { isHandState, type WordInForce } from './handStates.ts';
import type { Line } from './lines.ts';

/** A word that goes on holding where it was hardly meant to. */
export interface ForgottenWord {
  readonly word: WordInForce;
  /** The note at which the player comes in afresh, still under the word. */
  readonly entryIndex: number;
  /** How many of the player's notes from there on are read under the word and nothing else. */
  readonly affectedNotes: number;
}

/** A rest this long ends what a word was written for, in quarter notes. A choice: a bar of common time. */
const FRESH_ENTRY_QUARTERS = 4;

/**
 * Words that hold to the end of a player's line, or until they are printed again, although the player has come in
 * afresh after a long rest. A word that holds to the end without such a rest is taken as meant.
 */
export function forgottenWordsIn(line: Line, notes: readonly ExaminedNote[]): readonly ForgottenWord[] {
  const found: ForgottenWord[] = [];
  for (let at = 0; at < line.length; ) {
    const { word } = notes[line[at]!]!.reading;
    let end = at + 1;
    while (end < line.length && notes[line[end]!]!.reading.word?.wordIndex === word?.wordIndex) end += 1;
    if (word && isHandState(word.state) && !isCancelled(word, line, end, notes)) {
      const entry = freshEntry(line, at, end, notes);
      const affected = line.slice(entry, end).filter((index) => notes[index]!.reading.from === 'word');
      if (affected.length > 0) found.push({ word, entryIndex: affected[0]!, affectedNotes: affected.length });
    }
    at = end;
  }
  return found;
}

function isCancelled(word: WordInForce, line: Line, end: number, notes: readonly ExaminedNote[]): boolean {
  const next = end < line.length ? notes[line[end]!]!.reading : null;
  return next !== null && next.word?.state !== word.state;
}

/** The place of the first note after a long rest within a stretch; its end without one. */
function freshEntry(line: Line, from: number, end: number, notes: readonly ExaminedNote[]): number {
  for (let at = from + 1; at < end; at++) {
    const before = notes[line[at - 1]!]!.note;
    const rested = notes[line[at]!]!.note.onsetQuarters - before.onsetQuarters - before.durationQuarters;
    if (rested >= FRESH_ENTRY_QUARTERS) return at;
  }
  return end;
}
