/**
 * Finds stopped notes in the low register, where the hand cannot bring the tone down.
 * Why: below the bending range closing the hand lets the tone slide up a semitone from the next lower harmonic, and
 * only the lip can hold it there. @source commonPractice; smalley (none lower than the 4th harmonic)
 */
import type { LowRegisterLimit } from '../horn/horn.ts';
import type { Pitch } from '../pitch/pitch.ts';
import type { Fingering, HandState } from '../stopping/fingering.ts';
import { noteRule } from './rule.ts';

/** The note, the fingering that will not bend, and a surer one where there is one. */
export interface RisesNotBends {
  readonly written: Pitch;
  readonly state: HandState;
  readonly fingering: Fingering;
  readonly limit: Exclude<LowRegisterLimit, 'below-the-hand'>;
  readonly surer: Fingering | null;
}

export const risesNotBends = noteRule('rises-not-bends', ({ note, reading, fingering, candidates }) => {
  const limit = fingering?.reasons.filter((reason) => reason === 'wants-to-rise' || reason === 'lip-only')[0];
  if (!limit || !fingering) return null;
  const surer = candidates.filter(({ verdict }) => verdict === 'sure')[0] ?? null;
  const cause: RisesNotBends = {
    written: note.written,
    state: reading.state,
    fingering,
    limit: limit === 'lip-only' ? 'lip-only' : 'wants-to-rise',
    surer,
  };
  return { severity: 'risky', cause };
});
