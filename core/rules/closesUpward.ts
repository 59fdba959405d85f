/**
 * Finds glissandos, slides and bends that go up from an open note to a stopped one.
 * Why: closing the hand brings a tone down. Only low down does it let one slip up, by a semitone: on harmonic 3 and below
 * that is the usual way, on harmonic 4 the tone tends to go up and may.
 * @source smalley; commonPractice
 */
import { againstTheHand, joinRule } from './handJoin.ts';

export const closesUpward = joinRule('closes-upward', (join) => (join.closes ? againstTheHand(join) : null));
