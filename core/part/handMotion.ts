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
 * How the hand alone leads from one place to another.
 * - `bends`: on one harmonic, which falls as the hand closes and rises as it opens
 * - `slips`: from an open harmonic, the 3rd or lower, to the tone a semitone above it, as a closing hand lets it; or back
 * - `may-slip`: the same from the 4th harmonic, where the tone tends to go up and may, but can be brought down as well
 * @source smalley; commonPractice
 */
export type HandWay = 'bends' | 'slips' | 'may-slip';

/** The way between two places on one tube, or null where the hand alone does not lead. */
export function handWay(from: HandPlace, to: HandPlace): HandWay | null {
  if (from.fingering.tube !== to.fingering.tube) return null;
  if (from.fingering.harmonic === to.fingering.harmonic) return 'bends';
  return slip(from, to) ?? slip(to, from);
}

/** How closing the hand takes the first tone, low and open, up to the second. */
function slip(open: HandPlace, closed: HandPlace): HandWay | null {
  const { tube, harmonic } = open.fingering;
  if (harmonic + 1 !== closed.fingering.harmonic) return null;
  if (closedness(open.state) !== 0 || closed.state !== 'stopped') return null;
  const limit = tube.side.lowRegister[harmonic];
  if (limit === undefined) return null;
  return limit === 'wants-to-rise' ? 'may-slip' : 'slips';
}
