/**
 * Finds glissandos, slides and bends by the hand that go the right way, but join notes no one fingering holds.
 * Why: the hand moves one harmonic of one tube, from its open to its stopped pitch and no further; another valve is
 * another tone. @source smalley; commonPractice
 */
import type { Pitch } from '../pitch/pitch.ts';
import { closesTo, type HandJoin, handJoinsOf, nearestReach, opensTo, type Reach } from './handJoin.ts';
import type { Rule } from './rule.ts';

/** Two notes in the right direction, and what the hand does instead of joining them. */
export interface NoCommonTube {
  readonly from: Pitch;
  readonly to: Pitch;
  /** From open towards stopped. */
  readonly closes: boolean;
  /** Where the hand takes the first note; empty when nowhere that has a name. */
  readonly reached: readonly Reach[];
  /** The nearest of those to the note that is wanted. */
  readonly nearest: Reach | null;
  /** First notes from which the hand does reach the second, open when it closes and closed when it opens. */
  readonly starts: readonly Reach[];
}

export const noCommonTube: Rule<'no-common-tube', NoCommonTube> = {
  id: 'no-common-tube',
  check(context) {
    return handJoinsOf(context)
      .filter((join) => goesRightWay(join) && join.way === null && hasFingerings(join))
      .map(({ from, to, closes }) => {
        const reached = closes ? closesTo(from, to) : opensTo(from);
        return {
          id: this.id,
          severity: 'impossible',
          noteIndex: to.note.index,
          otherIndex: from.note.index,
          cause: {
            from: from.note.written,
            to: to.note.written,
            closes,
            reached,
            nearest: nearestReach(reached, to.note.written),
            starts: closes ? opensTo(to) : closesTo(to, from),
          },
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
