/** The triple horn in F, B♭ and high F: fingered as the double horn, the high F side kept for those who ask. */
import type { Horn } from '../horn.ts';
import { F_SIDE, HIGH_F_SIDE, THUMB_BFLAT_SIDE } from '../sides.ts';

export const TRIPLE_HIGH_F: Horn = {
  id: 'triple-high-f',
  label: 'triple horn in F, B♭ and high F',
  sides: [F_SIDE, THUMB_BFLAT_SIDE, { ...HIGH_F_SIDE, valvePrefix: 'H' }],
  natural: false,
};
