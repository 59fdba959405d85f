/** What the moving hand can join: two notes on one tube, the horn's valves left alone. */
import type { Fingering, HandState } from '../stopping/fingering.ts';
import { closedness } from './handStates.ts';

/** One end of a join: how it is fingered, and what the hand does there. */
export interface HandPlace {
  readonly fingering: Fingering;
  readonly state: HandState;
}

/** True when the hand goes further in or out between two states. Mutes are not the hand's. */
export function movesHand(from: HandState, to: HandState): boolean {
  return closedness(from) !== closedness(to);
}

/**
 * True when the hand alone leads from one place to the other: one tube and one harmonic, which falls as the hand
 * closes and rises as it opens; or, in the low register, an open harmonic and the tone a semitone above it, to which
 * closing lets it slide up. @source smalley; commonPractice
 */
export function joinsByHand(from: HandPlace, to: HandPlace): boolean {
  const a = from.fingering;
  const b = to.fingering;
  if (a.tube !== b.tube) return false;
  return a.harmonic === b.harmonic || risesByHand(from, to) || risesByHand(to, from);
}

/** True when closing the hand takes the first tone, low and open, up to the second. */
export function risesByHand(open: HandPlace, closed: HandPlace): boolean {
  return (
    open.fingering.tube === closed.fingering.tube &&
    open.fingering.harmonic + 1 === closed.fingering.harmonic &&
    closedness(open.state) === 0 &&
    closed.state === 'stopped' &&
    open.fingering.tube.side.lowRegister[open.fingering.harmonic] !== undefined
  );
}
