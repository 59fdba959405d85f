/** The key in which a part for a horn is written. */

import type { Settings } from '../part/settings.ts';
import type { Transposition } from '../pitch/pitch.ts';

/** How a part for this horn is written: in F, or in the key of a natural horn's crook, whose 4th harmonic is written C4. */
export function transpositionOf({ horn }: Settings): Transposition {
  const crook = horn.sides[0]!;
  const chromatic = horn.natural ? Math.round((crook.fundamentalCents + 2400 - 6000) / 100) : -7;
  return { chromatic, diatonic: Math.round((chromatic * 7) / 12), octaveChange: 0 };
}
