/**
 * Finds glissandos, slides and bends that go down from a stopped note to an open one.
 * Why: opening the hand lets a tone rise back to its natural pitch. Only low down does it let one slip down, by a
 * semitone, back to where the closing hand took it from: on harmonic 3 and below as the usual way, on harmonic 4 with luck.
 * @source smalley; commonPractice for closing; that opening leads back as surely is a choice
 */
import { againstTheHand, joinRule } from './handJoin.ts';

export const opensDownward = joinRule('opens-downward', (join) =>
  join.closes ? null : againstTheHand(join),
);
