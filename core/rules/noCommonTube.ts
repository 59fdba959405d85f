/**
 * Finds glissandos, slides and bends by the hand that go the right way, but join notes no one fingering holds.
 * Why: the hand moves one harmonic of one tube, from its open to its stopped pitch and no further; another valve is
 * another tone. @source smalley; commonPractice
 */
import { printPitch } from '../pitch/pitch.ts';
import { closesTo, type HandJoin, handJoinsOf, nearestReach, opensTo, reachText } from './handJoin.ts';
import type { Rule } from './rule.ts';

export const noCommonTube: Rule = {
  id: 'no-common-tube',
  check(context) {
    return handJoinsOf(context)
      .filter((join) => goesRightWay(join) && !join.isPlayable && hasFingerings(join))
      .map(({ from, to, closes }) => {
        const start = printPitch(from.note.written);
        const end = printPitch(to.note.written);
        const reached = closes ? closesTo(from, to) : opensTo(from);
        const nearest = nearestReach(reached, to.note.written);
        const starts = reachText(closes ? opensTo(to) : closesTo(to, from));
        return {
          id: this.id,
          severity: 'impossible',
          noteIndex: to.note.index,
          brief: 'no one tube',
          message:
            `No one fingering holds both ${start} and ${end}, and the hand moves only one` +
            (reached.length > 0
              ? `: ${closes ? 'closing' : 'opening'} takes ${start} to ${reachText(reached)}.`
              : `; on none of the fingerings of ${start} does it reach a note of the scale.`),
          remedy: [
            nearest ? `End on ${reachText([nearest])}, the nearest it reaches` : '',
            starts ? `start from ${starts}${closes ? '' : ' closed'}` : '',
          ]
            .filter((way) => way !== '')
            .join(', or ')
            .replace(/^./, (letter) => letter.toUpperCase())
            .concat('.')
            .replace(/^\.$/, 'Leave the line out and let the player change.'),
        };
      });
  },
};

function goesRightWay({ closes, riseCents }: HandJoin): boolean {
  return closes ? riseCents <= 0 : riseCents >= 0;
}

/** A note that has no fingering at all is found by other rules. */
function hasFingerings({ from, to }: HandJoin): boolean {
  return from.candidates.length > 0 && to.candidates.length > 0;
}
