/**
 * Finds signs that say one thing while a word that still holds says another; the first of each word and player.
 * Why: the sign rules its own note only, so the unmarked notes after it fall back under the word, which is seldom meant.
 * @source commonPractice
 */
import { isHandState } from '../part/handStates.ts';
import { lineNameOf } from '../part/passage.ts';
import type { Pitch } from '../pitch/pitch.ts';
import type { HandState } from '../stopping/fingering.ts';
import type { FoundBy, Rule } from './rule.ts';

/** The note with the sign, and the word that says otherwise. */
export interface SignAgainstWord {
  readonly written: Pitch;
  /** What the sign says. */
  readonly state: HandState;
  /** As printed. */
  readonly word: string;
  /** What the word says. */
  readonly wordState: HandState;
  /** The measure the word stands in, as printed. */
  readonly sinceMeasure: string;
}

export const signAgainstWord: Rule<'sign-against-word', SignAgainstWord> = {
  id: 'sign-against-word',
  check({ handNotes, passage }) {
    const found: FoundBy<'sign-against-word', SignAgainstWord>[] = [];
    const reported = new Set<string>();
    for (const { note, reading } of handNotes) {
      const { word, from, state } = reading;
      if (from !== 'sign' || !word || !isHandState(word.state) || word.state === state) continue;
      const key = `${word.wordIndex} ${lineNameOf(note)}`;
      if (reported.has(key)) continue;
      reported.add(key);
      found.push({
        id: this.id,
        severity: 'advice',
        noteIndex: note.index,
        otherIndex: null,
        cause: {
          written: note.written,
          state,
          word: word.text,
          wordState: word.state,
          sinceMeasure: passage.words[word.wordIndex]!.measure,
        },
      });
    }
    return found;
  },
};
