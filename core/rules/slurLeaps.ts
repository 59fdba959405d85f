/**
 * Finds slurs and ties across a change of the hand that must jump, because no one tube holds both notes.
 * Why: while the hand moves the tone bends, and a change of valves on top of it breaks the line; what is meant to be
 * joined is heard as a leap. @source commonPractice
 */
import { printPitch } from '../pitch/pitch.ts';
import { fitsOneTube } from './handJoin.ts';
import type { Finding, Rule } from './rule.ts';

export const slurLeaps: Rule = {
  id: 'slur-leaps',
  check({ notes, handSteps }) {
    const found: Finding[] = [];
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
        brief: 'slur breaks',
        message: `${printPitch(from.note.written)} and ${printPitch(to.note.written)} are ${joined === 'tie' ? 'tied' : 'slurred'} across a change of the hand, and no one fingering holds both: the tone jumps.`,
        remedy: `Tongue the second note, break the ${joined === 'tie' ? 'tie' : 'slur'} there, or keep both notes on one side of the change.`,
      });
    }
    return found;
  },
};
