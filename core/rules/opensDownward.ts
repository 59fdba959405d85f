/**
 * Finds glissandos, slides and bends that go down from a stopped note to an open one.
 * Why: opening the hand lets a tone rise back to its natural pitch. Only low down does it let one slip down, by a
 * semitone, back to where the closing hand took it from: on harmonic 3 and below as the usual way, on harmonic 4 with luck.
 * @source smalley; commonPractice for closing; that opening leads back as surely is a choice
 */
import type { Pitch } from '../pitch/pitch.ts';
import { closesTo, handJoinsOf, isAgainstTheHand, opensTo, type Reach, severityOf } from './handJoin.ts';
import type { Rule } from './rule.ts';

/** The closed note and the open one below it. */
export interface OpensDownward {
  readonly from: Pitch;
  readonly to: Pitch;
  /** True when the tone may slip down all the same, to the 4th harmonic. */
  readonly maySlip: boolean;
  /** Where the closed note rises as the hand opens, the player's first choices first; may be empty. */
  readonly rises: readonly Reach[];
  /** Closed notes that rise to the open one, and that the slide could start from; may be empty. */
  readonly starts: readonly Reach[];
}

export const opensDownward: Rule<'opens-downward', OpensDownward> = {
  id: 'opens-downward',
  check(context) {
    return handJoinsOf(context)
      .filter((join) => !join.closes && isAgainstTheHand(join))
      .map((join) => ({
        id: this.id,
        severity: severityOf(join),
        noteIndex: join.to.note.index,
        otherIndex: join.from.note.index,
        cause: {
          from: join.from.note.written,
          to: join.to.note.written,
          maySlip: join.way === 'may-slip',
          rises: opensTo(join.from),
          starts: closesTo(join.to, join.from),
        },
      }));
  },
};
