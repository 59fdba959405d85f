/**
 * Finds signs that say one thing while a word that still holds says another; the first of each word and player.
 * Why: the sign rules its own note only, so the unmarked notes after it fall back under the word, which is seldom meant.
 * @source commonPractice
 */

import { isHandState } from '../part/handStates.ts';
import { playerOf } from '../part/passage.ts';
import { printPitch } from '../pitch/pitch.ts';
import type { Finding, Rule } from './rule.ts';

export const signAgainstWord: Rule = {
  id: 'sign-against-word',
  check({ handNotes, passage }) {
    const found: Finding[] = [];
    const reported = new Set<string>();
    for (const { note, reading } of handNotes) {
      const { word, from, state } = reading;
      if (from !== 'sign' || !word || !isHandState(word.state) || word.state === state) continue;
      const key = `${word.wordIndex} ${playerOf(note)}`;
      if (reported.has(key)) continue;
      reported.add(key);
      found.push({
        id: this.id,
        severity: 'advice',
        noteIndex: note.index,
        brief: 'sign or word',
        message: `The sign at ${printPitch(note.written)} says ${state}, but "${word.text}" (bar ${passage.words[word.wordIndex]!.measure}) still holds: unmarked notes after it are ${word.state} again.`,
        remedy:
          state === 'open'
            ? 'Write a cancelling word here if the notes from here on are open, or mark each of them.'
            : 'Cancel the word, or take the sign away.',
      });
    }
    return found;
  },
};
