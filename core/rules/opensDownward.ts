/**
 * Finds glissandos, slides and bends that go down from a stopped note to an open one.
 * Why: opening the hand lets a tone rise back to its natural pitch. Only in the low register does it fall, by a semitone.
 * @source smalley; commonPractice
 */
import { printPitch } from '../pitch/pitch.ts';
import { closesTo, handJoinsOf, opensTo, reachText } from './handJoin.ts';
import type { Rule } from './rule.ts';

export const opensDownward: Rule = {
  id: 'opens-downward',
  check(context) {
    return handJoinsOf(context)
      .filter(({ closes, riseCents, isPlayable }) => !closes && riseCents < 0 && !isPlayable)
      .map(({ from, to }) => {
        const start = printPitch(from.note.written);
        const end = printPitch(to.note.written);
        const rises = reachText(opensTo(from));
        const starts = reachText(closesTo(to, from));
        return {
          id: this.id,
          severity: 'impossible',
          noteIndex: to.note.index,
          brief: 'opens downward',
          message: `From ${start} closed to ${end} open the music goes down, but opening the hand lets a tone rise${rises ? `: ${start} rises to ${rises}` : ''}.`,
          remedy: starts
            ? `Start from ${starts} closed, which opens up to ${end}, or leave the line out and let the player change.`
            : 'Turn the line round, or leave it out and let the player change.',
        };
      });
  },
};
