/**
 * Finds stopped, half-stopped and echo words that are never cancelled before the player comes in afresh.
 * Why: by the rule of the trade a word holds until another cancels it, so everything after it is read stopped; an
 * engraver who forgot "open" gets a stopped movement. @source commonPractice
 */
import { forgottenWordsIn } from '../plan/forgottenWords.ts';
import type { HandState } from '../stopping/fingering.ts';
import type { FoundBy, Rule } from './rule.ts';

/** A word that goes on holding, and how far. */
export interface NeverOpened {
  /** As printed. */
  readonly word: string;
  readonly state: HandState;
  /** The measure it stands in, as printed. */
  readonly sinceMeasure: string;
  /** Notes from this one on that hang on the word alone. */
  readonly affectedCount: number;
  /** True when the word's signs have ended, so that the notes are read open; else they are read as the word says. */
  readonly isLapsed: boolean;
}

export const neverOpened: Rule<'never-opened', NeverOpened> = {
  id: 'never-opened',
  check({ lines, notes, handNotes, passage }) {
    const found: FoundBy<'never-opened', NeverOpened>[] = [];
    if (!handNotes.some(({ reading }) => reading.word)) return found;
    for (const line of lines) {
      for (const { word, affected, isLapsed } of forgottenWordsIn(line, notes)) {
        found.push({
          id: this.id,
          severity: 'advice',
          noteIndex: affected[0]!,
          otherIndex: null,
          cause: {
            word: word.text,
            state: word.state,
            sinceMeasure: passage.words[word.wordIndex]!.measure,
            affectedCount: affected.length,
            isLapsed,
          },
        });
      }
    }
    return found;
  },
};
