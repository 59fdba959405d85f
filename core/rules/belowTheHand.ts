/**
 * Finds stopped notes below the lowest that any fingering reaches.
 * Why: the lowest harmonic a hand or a lip can hold stopped is the 3rd; the 2nd has only the fundamental beneath it.
 * @source commonPractice
 */
import { printPitch } from '../pitch.ts';
import { lowestStoppableCents } from '../reach.ts';
import { noteRule } from './rule.ts';

export const belowTheHand = noteRule(
  'below-the-hand',
  ({ note, reading, player, soundingCents, verdict }) => {
    if (reading.state !== 'stopped' || verdict !== 'impossible' || soundingCents === null) return null;
    if (soundingCents >= lowestStoppableCents(player)) return null;
    return {
      severity: 'impossible',
      brief: 'too low',
      message: `${printPitch(note.written)} lies below every note that can be stopped on a ${player.horn.label}.`,
      remedy: 'Write it open, use a stopping mute, or put it an octave higher.',
    };
  },
);
