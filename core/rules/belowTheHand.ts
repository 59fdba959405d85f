/**
 * Finds stopped notes below the lowest that any fingering reaches.
 * Why: the lowest harmonic a hand or a lip can hold stopped is the 3rd; the 2nd has only the fundamental beneath it.
 * @source commonPractice
 */
import type { Horn } from '../horn/horn.ts';
import type { Pitch } from '../pitch/pitch.ts';
import type { HandState } from '../stopping/fingering.ts';
import { lowestStoppableCents } from '../stopping/reach.ts';
import { noteRule } from './rule.ts';

/** The note, what the hand is asked to do there, and the horn that holds nothing so low. */
export interface BelowTheHand {
  readonly written: Pitch;
  readonly state: HandState;
  readonly horn: Horn;
}

export const belowTheHand = noteRule(
  'below-the-hand',
  ({ note, reading, player, soundingCents, fingering }) => {
    if (soundingCents === null) return null;
    const isTooLow = fingering
      ? fingering.reasons.indexOf('below-the-hand') >= 0
      : reading.state === 'stopped' && soundingCents < lowestStoppableCents(player);
    if (!isTooLow) return null;
    const cause: BelowTheHand = { written: note.written, state: reading.state, horn: player.horn };
    return { severity: 'impossible', cause };
  },
);
