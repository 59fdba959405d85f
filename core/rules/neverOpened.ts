/**
 * Finds stopped, half-stopped and echo words that are never cancelled before the player comes in afresh.
 * Why: by the rule of the trade a word holds until another cancels it, so everything after it is read stopped; an
 * engraver who forgot "open" gets a stopped movement. @source commonPractice
 */
import { forgottenWordsIn } from '../plan/forgottenWords.ts';
import type { Finding, Rule } from './rule.ts';

export const neverOpened: Rule = {
  id: 'never-opened',
  check({ lines, notes, handNotes, passage }) {
    const found: Finding[] = [];
    if (!handNotes.some(({ reading }) => reading.word)) return found;
    for (const line of lines) {
      for (const { word, affected, isLapsed } of forgottenWordsIn(line, notes)) {
        const since = passage.words[word.wordIndex]!.measure;
        found.push({
          id: this.id,
          severity: 'advice',
          noteIndex: affected[0]!,
          brief: 'still closed',
          message: isLapsed
            ? `"${word.text}" (bar ${since}) was never cancelled, but its signs end before this note: ${affected.length === 1 ? 'it is' : `the ${affected.length} unmarked notes from here on are`} read open.`
            : `"${word.text}" (bar ${since}) was never cancelled, so ${affected.length === 1 ? 'this note is' : `the ${affected.length} notes from this entry on are`} read ${word.state} as well.`,
          remedy: isLapsed
            ? 'Write the cancelling word here, or the sign over every note that it still closes.'
            : 'Write the cancelling word where open playing begins, or repeat the word here if it still holds.',
        });
      }
    }
    return found;
  },
};
