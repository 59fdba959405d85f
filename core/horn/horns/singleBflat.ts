/** The single horn in B♭. */
import type { Horn } from '../horn.ts';
import { BFLAT_SIDE } from '../sides.ts';

export const SINGLE_BFLAT: Horn = {
  id: 'single-bflat',
  label: 'single horn in B♭',
  sides: [BFLAT_SIDE],
  natural: false,
};
