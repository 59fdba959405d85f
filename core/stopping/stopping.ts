/** What the hand does to one harmonic of one tube. All pitches sound, in cents above MIDI note 0. */
import { checkInteger, checkNumber } from '../guards/allowed.ts';
import { HIGHEST_HARMONIC } from '../horn/harmonics.ts';
import { type LowRegisterLimit, openPitchCents, type Tube } from '../horn/horn.ts';

/** A drop smaller than this, in cents, is no change that anybody hears as one. A choice: about the smallest step an ear tells in a scale. */
export const UNCHANGED_CENTS = 15;

/** How far echo horn (the bell mostly closed) brings a tone down, in cents. @source smalley, hand positions */
export const ECHO_DROP_CENTS = 100;

/** How far a hand's own offset may lie from the usual closure, in cents. A choice: a semitone either way. */
export const HAND_OFFSET_CENTS: readonly [lowest: number, highest: number] = [-100, 100];

/** How a full stop treats one harmonic. */
export interface Stop {
  /** What sounds if the hand opens and nothing else changes. */
  readonly naturalCents: number;
  readonly stoppedCents: number;
  /** Natural minus stopped pitch, in cents; 0 or more. */
  readonly dropCents: number;
  /** Why the hand cannot simply bring the tone down, or null when it can. */
  readonly limit: LowRegisterLimit | 'nothing-changes' | null;
}

/**
 * The full stop of a harmonic: down to the side's closure above the next lower harmonic, and never up.
 * Below the bending range the same pitch is where the tone slides up to from the next lower harmonic.
 * @param harmonicNumber 2 to HIGHEST_HARMONIC; the 1st has no harmonic below it
 * @param handOffsetCents what this player's hand adds to the side's closure, in cents, −100 to 100
 * @throws {RangeError} when `harmonicNumber` is not an integer from 2 to HIGHEST_HARMONIC, or the offset lies outside
 * @source smalley; commonPractice
 * @example
 * // The open F side, 8th harmonic: written C5 falls to a semitone above B♭4, the 7th.
 * Math.round(stop(tubesOf(HORNS[0].sides[0])[0], 8).dropCents) // => 131
 */
export function stop(tube: Tube, harmonicNumber: number, handOffsetCents = 0): Stop {
  // The model asks millions of times: what is plainly allowed costs one look.
  if (!(harmonicNumber >= 2)) checkInteger('harmonicNumber', harmonicNumber, 2, HIGHEST_HARMONIC);
  if (handOffsetCents !== 0) checkNumber('handOffsetCents', handOffsetCents, ...HAND_OFFSET_CENTS);
  const { side } = tube;
  const open = openPitchCents(tube, harmonicNumber);
  const closed = Math.min(
    open,
    openPitchCents(tube, harmonicNumber - 1) + side.closureCents + handOffsetCents,
  );
  const dropCents = open - closed;
  return {
    naturalCents: open - side.stoppingValveCents,
    stoppedCents: closed - side.stoppingValveCents,
    dropCents,
    limit: side.lowRegister[harmonicNumber] ?? (dropCents < UNCHANGED_CENTS ? 'nothing-changes' : null),
  };
}

/** A degree of closing as players name it; sources and hands differ, so it is a band and not a number. */
export const CLOSING_BANDS = ['open', '¼', '½', '¾', 'full'] as const;

/** One of the bands. */
export type ClosingBand = (typeof CLOSING_BANDS)[number];

/**
 * How far the hand closes to bring a harmonic to a wanted pitch: 0 open, 1 full stop, by the linear rule
 * (natural − wanted) / (natural − stopped). NaN when the stop changes nothing.
 */
export function closingDegree(closed: Stop, wantedCents: number): number {
  return closed.dropCents > 0 ? (closed.naturalCents - wantedCents) / closed.dropCents : Number.NaN;
}

/**
 * The band a degree of closing falls in; beyond the ends, the last.
 * @param degree 0 open … 1 full
 * @throws {TypeError} when `degree` is NaN: where the stop changes nothing there is none
 */
export function closingBand(degree: number): ClosingBand {
  checkNumber('degree', degree);
  return CLOSING_BANDS[Math.min(4, Math.max(0, Math.round(4 * degree)))]!;
}
