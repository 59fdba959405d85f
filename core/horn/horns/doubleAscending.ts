/**
 * The double horn whose third valve raises by a tone, the F side into G and the B♭ side into C. Sides and change-over as
 * on the usual double horn: a choice. From memory: the third valve of horns built in France.
 */
import { ASCENDING_VALVES } from '../../data/valves.ts';
import type { Horn } from '../horn.ts';
import { F_SIDE, THUMB_BFLAT_SIDE } from '../sides.ts';

export const DOUBLE_ASCENDING: Horn = {
  id: 'double-ascending',
  label: 'double horn with an ascending third valve',
  sides: [
    { ...F_SIDE, valves: ASCENDING_VALVES },
    { ...THUMB_BFLAT_SIDE, valves: ASCENDING_VALVES },
  ],
  natural: false,
};
