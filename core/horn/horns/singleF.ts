/** The single horn in F. */
import type { Horn } from '../horn.ts';
import { F_SIDE } from '../sides.ts';

export const SINGLE_F: Horn = {
  id: 'single-f',
  label: 'single horn in F',
  sides: [F_SIDE],
  natural: false,
};
