/**
 * Finds glissandos, slides and bends that go up from an open note to a stopped one.
 * Why: closing the hand brings a tone down. Only in the low register does it let one slide up, by a semitone.
 * @source smalley; commonPractice
 */
import { printPitch } from '../pitch/pitch.ts';
import { closesTo, handJoinsOf, opensTo, reachText } from './handJoin.ts';
import type { Rule } from './rule.ts';

export const closesUpward: Rule = {
  id: 'closes-upward',
  check(context) {
    return handJoinsOf(context)
      .filter(({ closes, riseCents, isPlayable }) => closes && riseCents > 0 && !isPlayable)
      .map(({ from, to }) => {
        const start = printPitch(from.note.written);
        const end = printPitch(to.note.written);
        const falls = reachText(closesTo(from, to));
        const starts = reachText(opensTo(to));
        return {
          id: this.id,
          severity: 'impossible',
          noteIndex: to.note.index,
          brief: 'closes upward',
          message: `From ${start} open to ${end} closed the music goes up, but closing the hand brings a tone down${falls ? `: ${start} falls to ${falls}` : ''}.`,
          remedy: starts
            ? `Start from ${starts}, which the hand brings down to ${end}, or leave the line out and let the player change.`
            : 'Turn the line round, or leave it out and let the player change.',
        };
      });
  },
};
