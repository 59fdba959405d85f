/**
 * Finds glissandos, slides and bends by the hand that go the right way, but join notes no one fingering holds.
 * Why: the hand moves one harmonic of one tube, from its open to its stopped pitch and no further; another valve is
 * another tone. @source smalley; commonPractice
 */
import { endsOf, type HandJoin, type JoinEnds, joinRule, nearestReach, type Reach } from './handJoin.ts';

/** Two notes in the right direction, and what the hand does instead of joining them. */
export interface NoCommonTube extends JoinEnds {
  /** From open towards stopped. */
  readonly closes: boolean;
  /** The nearest of the notes reached to the one that is wanted. */
  readonly nearest: Reach | null;
}

export const noCommonTube = joinRule('no-common-tube', (join) => {
  if (!goesRightWay(join) || join.way !== null || !hasFingerings(join)) return null;
  const ends = endsOf(join);
  const cause: NoCommonTube = { ...ends, closes: join.closes, nearest: nearestReach(ends.reached, ends.to) };
  return { severity: 'impossible', cause };
});

function goesRightWay({ closes, riseCents }: HandJoin): boolean {
  return closes ? riseCents <= 0 : riseCents >= 0;
}

/** A note that has no fingering at all is found by other rules. */
function hasFingerings({ from, to }: HandJoin): boolean {
  return from.candidates.length > 0 && to.candidates.length > 0;
}
