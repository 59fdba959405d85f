/**
 * Finds glissandos, slides and bends that go down from a stopped note to an open one.
 * Why: opening the hand lets a tone rise back to its natural pitch. Only in the low register does it fall, by a semitone.
 * @source smalley; commonPractice
 */
import type { Pitch } from '../pitch/pitch.ts';
import { closesTo, handJoinsOf, opensTo, type Reach } from './handJoin.ts';
import type { Rule } from './rule.ts';

/** The closed note and the open one below it. */
export interface OpensDownward {
  readonly from: Pitch;
  readonly to: Pitch;
  /** Where the closed note rises as the hand opens, the player's first choices first; may be empty. */
  readonly rises: readonly Reach[];
  /** Closed notes that rise to the open one, and that the slide could start from; may be empty. */
  readonly starts: readonly Reach[];
}

export const opensDownward: Rule<'opens-downward', OpensDownward> = {
  id: 'opens-downward',
  check(context) {
    return handJoinsOf(context)
      .filter(({ closes, riseCents, isPlayable }) => !closes && riseCents < 0 && !isPlayable)
      .map(({ from, to }) => ({
        id: this.id,
        severity: 'impossible',
        noteIndex: to.note.index,
        otherIndex: from.note.index,
        cause: {
          from: from.note.written,
          to: to.note.written,
          rises: opensTo(from),
          starts: closesTo(to, from),
        },
      }));
  },
};
