/** Natural horns, on one crook or on the one that the part asks for. */
import { CROOKS, type Crook } from '../../data/crooks.ts';
import { NO_VALVES } from '../../data/valves.ts';
import { checkNumber } from '../../guards/allowed.ts';
import { FROM_THE_BOTTOM, type Horn, type Side } from '../horn.ts';
import {
  BFLAT_CLOSURE_CENTS,
  BFLAT_FUNDAMENTAL_CENTS,
  BFLAT_LOW_REGISTER,
  F_CLOSURE_CENTS,
  F_FUNDAMENTAL_CENTS,
  F_LOW_REGISTER,
} from '../sides.ts';

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
    stoppingOrder: 1,
    openFromCents: FROM_THE_BOTTOM,
    flatHarmonics: [],
  };
  return {
    id,
    label: `natural horn with the ${name.replace(/^([A-G])b/, '$1♭')} crook`,
    sides: [crook],
    natural: true,
  };
}

/** A natural horn with the crook that the part is written for, changing with the part. */
export const NATURAL: Horn = {
  ...naturalHorn({ id: 'natural', name: 'F', semitones: -7 }),
  label: 'natural horn, crooked as the part asks',
  crookFollowsPart: true,
};

/** A natural horn for every crook of the table, from the shortest. */
export const CROOKED: readonly Horn[] = CROOKS.map(naturalHorn);
