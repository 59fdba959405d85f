/**
 * The descant horn in B♭ and high F: stopped on the B♭ side by its stopping valve, the thumb for the high F side. That
 * side takes over at written G5 (sounding C5, MIDI 72), its 6th harmonic: a choice, players differ. The stopping valve
 * is from memory the usual make of such horns.
 */
import type { Horn } from '../horn.ts';
import { BFLAT_SIDE_WITH_STOPPING_VALVE, HIGH_F_SIDE } from '../sides.ts';

export const DESCANT: Horn = {
  id: 'descant',
  label: 'descant horn in B♭ and high F',
  sides: [BFLAT_SIDE_WITH_STOPPING_VALVE, { ...HIGH_F_SIDE, valvePrefix: 'T', openFromCents: 7200 }],
  natural: false,
};
