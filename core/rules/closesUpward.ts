/**
 * Finds glissandos, slides and bends that go up from an open note to a stopped one.
 * Why: closing the hand brings a tone down. Only in the low register does it let one slide up, by a semitone.
 * @source smalley; commonPractice
 */
import type { Pitch } from '../pitch/pitch.ts';
import { closesTo, handJoinsOf, opensTo, type Reach } from './handJoin.ts';
import type { Rule } from './rule.ts';

/** The open note and the closed one above it. */
export interface ClosesUpward {
  readonly from: Pitch;
  readonly to: Pitch;
  /** Where the open note falls as the hand closes, the player's first choices first; may be empty. */
  readonly falls: readonly Reach[];
  /** Open notes that fall to the closed one, and that the slide could start from; may be empty. */
  readonly starts: readonly Reach[];
}

export const closesUpward: Rule<'closes-upward', ClosesUpward> = {
  id: 'closes-upward',
  check(context) {
    return handJoinsOf(context)
      .filter(({ closes, riseCents, isPlayable }) => closes && riseCents > 0 && !isPlayable)
      .map(({ from, to }) => ({
        id: this.id,
        severity: 'impossible',
        noteIndex: to.note.index,
        otherIndex: from.note.index,
        cause: {
          from: from.note.written,
          to: to.note.written,
          falls: closesTo(from, to),
          starts: opensTo(to),
        },
      }));
  },
};
