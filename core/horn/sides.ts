/** The sides that horns are made of. Each number carries its source; what is a choice says so. */

import { COMPROMISE_VALVES } from '../data/valves.ts';
import { FROM_THE_BOTTOM, type Side } from './horn.ts';

/**
 * A full stop on the F side rests a semitone above the next lower harmonic, whatever valves are down.
 * @source smalley; commonPractice
 */
export const F_CLOSURE_CENTS = 100;

/**
 * On the B♭ side it rests about three quarters of a tone above.
 * @source ericson; smalley; commonPractice
 */
export const BFLAT_CLOSURE_CENTS = 150;

/**
 * What a stopping valve lowers the B♭ side by: cut to undo the hand, so that the written fingering stands.
 * Measured slides run from 132 to 165 cents (computed from ericson; German Wikipedia, "Perinet-Ventil"); a player
 * whose valve and hand do not cancel sets a hand offset.
 */
export const STOPPING_VALVE_CENTS = 150;

/**
 * Harmonics that stop in tune on the B♭ side without a stopping valve: the 12th, where closing changes nothing, and
 * the 8th, which the flat 7th below it lets fall just far enough.
 * @source smalley (12 rows on these two harmonics)
 */
export const BFLAT_STOPPED_HARMONICS: readonly number[] = [12, 8];

/** Sounding F1, MIDI 29: 4th harmonic written C4. */
export const F_FUNDAMENTAL_CENTS = 2900;
/** Sounding B♭1, MIDI 34. */
export const BFLAT_FUNDAMENTAL_CENTS = 3400;
/** Sounding F2, MIDI 41. */
export const HIGH_F_FUNDAMENTAL_CENTS = 4100;

/**
 * The F side bends from the 4th harmonic up; the 4th already wants to rise, the 3rd is forced by the lip, the 2nd
 * has nothing below it to come down to.
 * @source commonPractice; Tchaikovsky 6, iv (C♯3 stopped, on the 3rd harmonic) after boldin
 */
export const F_LOW_REGISTER = { 2: 'below-the-hand', 3: 'lip-only', 4: 'wants-to-rise' } as const;

/** On the B♭ side the 3rd harmonic can still be brought down. @source commonPractice */
export const BFLAT_LOW_REGISTER = { 2: 'below-the-hand' } as const;

/**
 * On the B♭ side the 5th and the 10th harmonic, 14 cents flat, give way to the 6th and the 12th on a tube up to 23:
 * A♭4 and A♭5 on T23, A4 and A5 on T12. On the F side players keep them (E4 on 0).
 * @source smalley for A♭5 and A5 (its stopped rows on the 12th harmonic, which closing does not change) and for E4;
 *   A♭4 and A4 from memory, as in the usual chart of the double horn
 */
export const BFLAT_FLAT_HARMONICS: readonly number[] = [5, 10];

/** The F side, by itself: every horn says of its sides which comes first. */
export const F_SIDE: Side = {
  name: 'F',
  valvePrefix: '',
  fundamentalCents: F_FUNDAMENTAL_CENTS,
  valves: COMPROMISE_VALVES,
  closureCents: F_CLOSURE_CENTS,
  stoppingValveCents: 0,
  fingeredNote: 'lower-harmonic',
  lowRegister: F_LOW_REGISTER,
  stoppable: true,
  stoppedHarmonics: [],
  stoppingOrder: 1,
  openFromCents: FROM_THE_BOTTOM,
  flatHarmonics: [],
};

/** The B♭ side, by itself and without a thumb valve. */
export const BFLAT_SIDE: Side = {
  name: 'Bb',
  valvePrefix: '',
  fundamentalCents: BFLAT_FUNDAMENTAL_CENTS,
  valves: COMPROMISE_VALVES,
  closureCents: BFLAT_CLOSURE_CENTS,
  stoppingValveCents: 0,
  fingeredNote: 'natural-pitch',
  lowRegister: BFLAT_LOW_REGISTER,
  stoppable: true,
  stoppedHarmonics: BFLAT_STOPPED_HARMONICS,
  stoppingOrder: 1,
  openFromCents: FROM_THE_BOTTOM,
  flatHarmonics: BFLAT_FLAT_HARMONICS,
};

/** The B♭ side with a stopping valve: the hand and the valve together leave every note where it was. */
export const BFLAT_SIDE_WITH_STOPPING_VALVE: Side = {
  ...BFLAT_SIDE,
  stoppingValveCents: STOPPING_VALVE_CENTS,
  fingeredNote: 'lower-harmonic',
  stoppedHarmonics: [],
};

/**
 * The B♭ side of a double horn: the thumb, second when stopping, and for open notes from written A♭4 up (sounding
 * D♭4, MIDI 61). @source commonPractice
 */
export const THUMB_BFLAT_SIDE: Side = {
  ...BFLAT_SIDE,
  valvePrefix: 'T',
  stoppingOrder: 2,
  openFromCents: 6100,
};

/**
 * A high F side closes at a distance nobody has published; players stop on another side instead. It is fingered as the
 * F side an octave below. @source commonPractice
 */
export const HIGH_F_SIDE: Side = {
  ...BFLAT_SIDE,
  name: 'high F',
  fundamentalCents: HIGH_F_FUNDAMENTAL_CENTS,
  stoppable: false,
  stoppingOrder: 9,
  openFromCents: null,
  flatHarmonics: [],
};
