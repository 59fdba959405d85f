/**
 * Finds glissandos, slides and bends that go up from an open note to a stopped one.
 * Why: closing the hand brings a tone down. Only low down does it let one slip up, by a semitone: on harmonic 3 and below
 * that is the usual way, on harmonic 4 the tone tends to go up and may.
 * @source smalley; commonPractice
 */
import type { Pitch } from '../pitch/pitch.ts';
import { closesTo, handJoinsOf, isAgainstTheHand, opensTo, type Reach, severityOf } from './handJoin.ts';
import type { Rule } from './rule.ts';

/** The open note and the closed one above it. */
export interface ClosesUpward {
  readonly from: Pitch;
  readonly to: Pitch;
  /** True when the tone may slip up all the same, on the 4th harmonic. */
  readonly maySlip: boolean;
  /** Where the open note falls as the hand closes, the player's first choices first; may be empty. */
  readonly falls: readonly Reach[];
  /** Open notes that fall to the closed one, and that the slide could start from; may be empty. */
  readonly starts: readonly Reach[];
}

export const closesUpward: Rule<'closes-upward', ClosesUpward> = {
  id: 'closes-upward',
  check(context) {
    return handJoinsOf(context)
      .filter((join) => join.closes && isAgainstTheHand(join))
      .map((join) => ({
        id: this.id,
        severity: severityOf(join),
        noteIndex: join.to.note.index,
        otherIndex: join.from.note.index,
        cause: {
          from: join.from.note.written,
          to: join.to.note.written,
          maySlip: join.way === 'may-slip',
          falls: closesTo(join.from, join.to),
          starts: opensTo(join.to),
        },
      }));
  },
};
