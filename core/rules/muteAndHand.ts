/**
 * Finds notes to be stopped by hand while a straight mute is in the bell.
 * Why: the mute is where the hand would go. Often a word to take the mute out is missing, or a stopping mute is meant.
 * @source commonPractice
 */
import { closedness } from '../part/handStates.ts';
import type { Pitch } from '../pitch/pitch.ts';
import type { HandState } from '../stopping/fingering.ts';
import { noteRule } from './rule.ts';

/** The note under the mute, and what the hand is to do there. */
export interface MuteAndHand {
  readonly written: Pitch;
  readonly state: HandState;
}

export const muteAndHand = noteRule('mute-and-hand', ({ note, reading }) => {
  if (reading.mute !== 'straight' || closedness(reading.state) === 0) return null;
  const cause: MuteAndHand = { written: note.written, state: reading.state };
  return { severity: 'impossible', cause };
});
