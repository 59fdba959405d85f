/** The single horn in B♭ whose stopping valve undoes the hand. */
import type { Horn } from '../horn.ts';
import { BFLAT_SIDE_WITH_STOPPING_VALVE } from '../sides.ts';

export const SINGLE_BFLAT_STOP_VALVE: Horn = {
  id: 'single-bflat-stop-valve',
  label: 'single horn in B♭ with a stopping valve',
  sides: [BFLAT_SIDE_WITH_STOPPING_VALVE],
  natural: false,
};
