/** The double horn in F and B♭, and so every horn whose two sides are fingered like its: full or compensating. */
import type { Horn } from '../horn.ts';
import { F_SIDE, THUMB_BFLAT_SIDE } from '../sides.ts';

export const DOUBLE: Horn = {
  id: 'double',
  label: 'double horn in F and B♭',
  sides: [F_SIDE, THUMB_BFLAT_SIDE],
  natural: false,
};
