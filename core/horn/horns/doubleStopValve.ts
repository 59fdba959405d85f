/** The double horn with a stopping valve: stopped on the B♭ side first, open fingered as every double horn. */
import type { Horn } from '../horn.ts';
import { BFLAT_SIDE_WITH_STOPPING_VALVE, F_SIDE, THUMB_BFLAT_SIDE } from '../sides.ts';

const { valvePrefix, openFromCents } = THUMB_BFLAT_SIDE;

export const DOUBLE_STOP_VALVE: Horn = {
  id: 'double-stop-valve',
  label: 'double horn with a stopping valve on the B♭ side',
  sides: [
    { ...F_SIDE, stoppingOrder: 2 },
    { ...BFLAT_SIDE_WITH_STOPPING_VALVE, stoppingOrder: 1, valvePrefix, openFromCents },
  ],
  natural: false,
};
