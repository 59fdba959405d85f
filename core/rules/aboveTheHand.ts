/**
 * Finds stopped notes so high that closing the hand changes nothing.
 * Why: high harmonics lie closer together than the distance at which the hand comes to rest above the next one down.
 * @source smalley; boldin; commonPractice
 */
import type { Pitch } from '../pitch/pitch.ts';
import type { Fingering } from '../stopping/fingering.ts';
import { noteRule } from './rule.ts';

/** The note, and the fingering on which nothing bends. */
export interface AboveTheHand {
  readonly written: Pitch;
  readonly fingering: Fingering;
}

export const aboveTheHand = noteRule('above-the-hand', ({ note, reading, fingering }) => {
  if (reading.state !== 'stopped' || !fingering || fingering.reasons.indexOf('nothing-changes') < 0)
    return null;
  const cause: AboveTheHand = { written: note.written, fingering };
  return { severity: 'risky', cause };
});
