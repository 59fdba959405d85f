/** How far down a horn can be stopped at all. */

import { HIGHEST_HARMONIC } from '../horn/harmonics.ts';
import { tubesOf } from '../horn/horn.ts';
import type { Player } from './fingering.ts';
import { stop } from './stopping.ts';

/** The lowest sounding pitch, in cents above MIDI note 0, that some tube can hold stopped, less the player's tolerance. */
export function lowestStoppableCents(player: Player): number {
  let lowest = Number.POSITIVE_INFINITY;
  for (const side of player.horn.sides) {
    if (!side.stoppable) continue;
    for (const tube of tubesOf(side)) {
      for (let n = 2; n <= HIGHEST_HARMONIC; n++) {
        const { stoppedCents, limit } = stop(tube, n, player.handOffsetCents);
        if (limit !== 'below-the-hand') lowest = Math.min(lowest, stoppedCents);
      }
    }
  }
  return lowest - player.toleranceCents;
}
