/**
 * Finds stopped notes so high that closing the hand changes nothing.
 * Why: high harmonics lie closer together than the distance at which the hand comes to rest above the next one down.
 * @source smalley; boldin; commonPractice
 */
import { printPitch } from '../pitch/pitch.ts';
import { noteRule } from './rule.ts';

export const aboveTheHand = noteRule('above-the-hand', ({ note, reading, fingering }) => {
  if (reading.state !== 'stopped' || !fingering || fingering.reasons.indexOf('nothing-changes') < 0)
    return null;
  const drop = Math.round(fingering.dropCents);
  return {
    severity: 'risky',
    brief: 'no change',
    message: `${printPitch(note.written)} is taken on harmonic ${fingering.harmonic}, where closing the hand moves the pitch by ${drop === 1 ? '1 cent' : `${drop} cents`}: the colour dims, nothing bends.`,
    remedy: `Finger it open (${fingering.printed || `harmonic ${fingering.harmonic}`}) with the hand in, or write the stopped passage lower.`,
  };
});
