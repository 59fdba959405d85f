/**
 * Finds notes to be stopped by hand while a straight mute is in the bell.
 * Why: the mute is where the hand would go. Often a word to take the mute out is missing, or a stopping mute is meant.
 * @source commonPractice
 */
import { closedness } from '../part/handStates.ts';
import { printPitch } from '../pitch/pitch.ts';
import { noteRule } from './rule.ts';

export const muteAndHand = noteRule('mute-and-hand', ({ note, reading }) => {
  if (reading.mute !== 'straight' || closedness(reading.state) === 0) return null;
  return {
    severity: 'impossible',
    brief: 'mute in',
    message: `${printPitch(note.written)} is to be ${reading.state} while the mute is still in the bell, where the hand cannot go.`,
    remedy:
      'Take the mute out first (and say so in the part, with time to do it), or ask for a stopping mute.',
  };
});
