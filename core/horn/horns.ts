/** The usual horns. Each number carries its source; what is a choice says so. */

import { CROOKS, type Crook } from '../data/crooks.ts';
import { COMPROMISE_VALVES, NO_VALVES } from '../data/valves.ts';
import { checkNumber } from '../guards/allowed.ts';
import type { Horn, Side } from './horn.ts';

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

/**
 * Open notes from written A♭4 up (sounding D♭4, MIDI 61) are taken on the B♭ side of a double horn.
 * @source commonPractice
 */
const DOUBLE_SHORT_SIDE_FROM_CENTS = 6100;

/** Sounding F1, MIDI 29: 4th harmonic written C4. */
const F_FUNDAMENTAL_CENTS = 2900;
/** Sounding B♭1, MIDI 34. */
const BFLAT_FUNDAMENTAL_CENTS = 3400;
/** Sounding F2, MIDI 41. */
const HIGH_F_FUNDAMENTAL_CENTS = 4100;

/**
 * The F side bends from the 4th harmonic up; the 4th already wants to rise, the 3rd is forced by the lip, the 2nd
 * has nothing below it to come down to.
 * @source commonPractice; Tchaikovsky 6, iv (C♯3 stopped, on the 3rd harmonic) after boldin
 */
export const F_LOW_REGISTER = { 2: 'below-the-hand', 3: 'lip-only', 4: 'wants-to-rise' } as const;

/** On the B♭ side the 3rd harmonic can still be brought down. @source commonPractice */
export const BFLAT_LOW_REGISTER = { 2: 'below-the-hand' } as const;

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
};

export const BFLAT_SIDE: Side = {
  name: 'Bb',
  valvePrefix: 'T',
  fundamentalCents: BFLAT_FUNDAMENTAL_CENTS,
  valves: COMPROMISE_VALVES,
  closureCents: BFLAT_CLOSURE_CENTS,
  stoppingValveCents: 0,
  fingeredNote: 'natural-pitch',
  lowRegister: BFLAT_LOW_REGISTER,
  stoppable: true,
  stoppedHarmonics: BFLAT_STOPPED_HARMONICS,
};

const BFLAT_SIDE_WITH_STOPPING_VALVE: Side = {
  ...BFLAT_SIDE,
  stoppingValveCents: STOPPING_VALVE_CENTS,
  fingeredNote: 'lower-harmonic',
  stoppedHarmonics: [],
};

/** A high F side closes at a distance nobody has published; players stop on the long F side instead. @source commonPractice */
const HIGH_F_SIDE: Side = {
  ...BFLAT_SIDE,
  name: 'high F',
  valvePrefix: 'H',
  fundamentalCents: HIGH_F_FUNDAMENTAL_CENTS,
  stoppable: false,
};

export const DOUBLE: Horn = {
  id: 'double',
  label: 'double horn in F and B♭',
  sides: [F_SIDE, BFLAT_SIDE],
  shortSideFromCents: DOUBLE_SHORT_SIDE_FROM_CENTS,
  natural: false,
};

/** Sounding C2, MIDI 36: the fundamental of a horn that sounds as written. */
const C_FUNDAMENTAL_CENTS = 3600;

/**
 * A crook as long as the F side stops as the F side does, one as short as the B♭ side as that does; between them the
 * distance grows evenly with the shortness, and longer or shorter crooks keep the nearer end. A choice: no source has
 * measured it.
 */
function crookClosureCents(fundamentalCents: number): number {
  const shortness =
    (fundamentalCents - F_FUNDAMENTAL_CENTS) / (BFLAT_FUNDAMENTAL_CENTS - F_FUNDAMENTAL_CENTS);
  return F_CLOSURE_CENTS + Math.min(1, Math.max(0, shortness)) * (BFLAT_CLOSURE_CENTS - F_CLOSURE_CENTS);
}

/**
 * A natural horn with a crook of any length.
 * @param semitones written to sounding, −24 to 12: −7 for F, −14 for B♭ basso
 * @throws {TypeError} or {RangeError} when `semitones` is no such number
 */
export function naturalHorn({ id, name, semitones }: Pick<Crook, 'id' | 'name' | 'semitones'>): Horn {
  checkNumber('semitones', semitones, -24, 12);
  const fundamentalCents = C_FUNDAMENTAL_CENTS + 100 * semitones;
  const crook: Side = {
    name,
    valvePrefix: '',
    fundamentalCents,
    valves: NO_VALVES,
    closureCents: crookClosureCents(fundamentalCents),
    stoppingValveCents: 0,
    fingeredNote: 'natural-pitch',
    lowRegister: fundamentalCents < BFLAT_FUNDAMENTAL_CENTS ? F_LOW_REGISTER : BFLAT_LOW_REGISTER,
    stoppable: true,
    stoppedHarmonics: [],
  };
  return {
    id,
    label: `natural horn with the ${name.replace(/^([A-G])b/, '$1♭')} crook`,
    sides: [crook],
    shortSideFromCents: null,
    natural: true,
  };
}

/** A natural horn with the crook that the part is written for, changing with the part. */
const NATURAL: Horn = {
  ...naturalHorn({ id: 'natural', name: 'F', semitones: -7 }),
  label: 'natural horn, crooked as the part asks',
  crookFollowsPart: true,
};

/** The horns that can be named in an option, the default first. */
export const HORNS: readonly Horn[] = [
  DOUBLE,
  { id: 'single-f', label: 'single horn in F', sides: [F_SIDE], shortSideFromCents: null, natural: false },
  {
    id: 'single-bflat',
    label: 'single horn in B♭',
    sides: [{ ...BFLAT_SIDE, valvePrefix: '' }],
    shortSideFromCents: null,
    natural: false,
  },
  {
    id: 'single-bflat-stop-valve',
    label: 'single horn in B♭ with a stopping valve',
    sides: [{ ...BFLAT_SIDE_WITH_STOPPING_VALVE, valvePrefix: '' }],
    shortSideFromCents: null,
    natural: false,
  },
  {
    id: 'double-stop-valve',
    label: 'double horn with a stopping valve on the B♭ side',
    sides: [BFLAT_SIDE_WITH_STOPPING_VALVE, F_SIDE],
    shortSideFromCents: DOUBLE_SHORT_SIDE_FROM_CENTS,
    natural: false,
  },
  {
    id: 'triple-high-f',
    label: 'triple horn in F, B♭ and high F',
    sides: [F_SIDE, BFLAT_SIDE, HIGH_F_SIDE],
    shortSideFromCents: DOUBLE_SHORT_SIDE_FROM_CENTS,
    natural: false,
  },
  NATURAL,
  ...CROOKS.map(naturalHorn),
];
