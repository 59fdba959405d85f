/**
 * Finds stopped notes below the lowest that any fingering reaches.
 * Why: the lowest harmonic a hand or a lip can hold stopped is the 3rd; the 2nd has only the fundamental beneath it.
 * @source commonPractice
 */
import { printPitch } from '../pitch/pitch.ts';
import { lowestStoppableCents } from '../stopping/reach.ts';
import { noteRule } from './rule.ts';

export const belowTheHand = noteRule(
  'below-the-hand',
  ({ note, reading, player, soundingCents, fingering }) => {
    if (soundingCents === null) return null;
    const isTooLow = fingering
      ? fingering.reasons.indexOf('below-the-hand') >= 0
      : reading.state === 'stopped' && soundingCents < lowestStoppableCents(player);
    if (!isTooLow) return null;
    return {
      severity: 'impossible',
      brief: 'too low',
      message: `${printPitch(note.written)} ${reading.state} lies below every note that the hand holds there on a ${player.horn.label}.`,
      remedy: 'Write it open, use a stopping mute, or put it an octave higher.',
    };
  },
);
