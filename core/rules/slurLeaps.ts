/**
 * Finds slurs and ties across a change of the hand that must jump, because no one tube holds both notes.
 * Why: while the hand moves the tone bends, and a change of valves on top of it breaks the line; what is meant to be
 * joined is heard as a leap. @source commonPractice
 */
import type { Pitch } from '../pitch/pitch.ts';
import { fitsOneTube } from './handJoin.ts';
import type { FoundBy, Rule } from './rule.ts';

/** Two notes that are meant to be joined, and by what. */
export interface SlurLeaps {
  readonly from: Pitch;
  readonly to: Pitch;
  readonly joined: 'slur' | 'tie';
}

export const slurLeaps: Rule<'slur-leaps', SlurLeaps> = {
  id: 'slur-leaps',
  check({ notes, handSteps }) {
    const found: FoundBy<'slur-leaps', SlurLeaps>[] = [];
    for (const { from: fromIndex, to: toIndex, joined, isSlurred } of handSteps) {
      // A glissando or bend under the slur has rules of its own.
      if (!isSlurred || joined === 'glissando') continue;
      const from = notes[fromIndex]!;
      const to = notes[toIndex]!;
      if (from.candidates.length === 0 || to.candidates.length === 0 || fitsOneTube(from, to)) continue;
      found.push({
        id: this.id,
        severity: 'risky',
        noteIndex: toIndex,
        otherIndex: fromIndex,
        cause: {
          from: from.note.written,
          to: to.note.written,
          joined: joined === 'tie' ? 'tie' : 'slur',
        },
      });
    }
    return found;
  },
};
