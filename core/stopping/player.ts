/** A player's terms: who plays, what the hand does, and what one way to play a note is. */
import { checkNumber, checkObject } from '../guards/allowed.ts';
import type { Horn, LowRegisterLimit, Tube } from '../horn/horn.ts';
import { type ClosingBand, HAND_OFFSET_CENTS } from './stopping.ts';

/** What the hand, or a mute, may do to a note. */
export const HAND_STATES = [
  'open',
  'half-stopped',
  'stopped',
  'echo',
  'stopping-mute',
  'straight-mute',
] as const;

/** What the hand, or a mute, does to a note. */
export type HandState = (typeof HAND_STATES)[number];

/** Whether a note can be played as it is written: `sure`, `risky` with luck, or `impossible`. */
export type Verdict = 'sure' | 'risky' | 'impossible';

/** Why a fingering is not simply sure. `reasonText` puts it into words. */
export type FingeringReason = LowRegisterLimit | 'nothing-changes' | 'off-pitch' | 'unusual-degree';

/** Every reason, once. */
export const FINGERING_REASONS: readonly FingeringReason[] = Object.keys({
  'wants-to-rise': true,
  'lip-only': true,
  'below-the-hand': true,
  'nothing-changes': true,
  'off-pitch': true,
  'unusual-degree': true,
} satisfies Record<FingeringReason, true>) as FingeringReason[];

/** One way to play a note. Pitches sound, in cents above MIDI note 0. */
export interface Fingering {
  readonly tube: Tube;
  /** Valves as printed, with the side's prefix: `12`, `T0`. */
  readonly printed: string;
  /** The harmonic that is played, and pulled down when the hand closes. */
  readonly harmonic: number;
  /** The harmonic that the pitch hangs from: the one below under a full stop, the harmonic itself otherwise. */
  readonly carrier: number;
  /** False where players choose another fingering if there is one, since the tone is hard to place or stops out of tune. */
  readonly standsWell: boolean;
  /** The note the player thinks of, in semitones from the written note: −1 on the F side when stopped. */
  readonly fingeredSemitones: number;
  readonly naturalCents: number;
  /** Natural minus played pitch. */
  readonly dropCents: number;
  /** Played minus wanted pitch; sharp is positive. */
  readonly deviationCents: number;
  /** How far the hand closes, or null where the state itself says so. */
  readonly band: ClosingBand | null;
  readonly verdict: Verdict;
  readonly reasons: readonly FingeringReason[];
}

/** What a player brings: the instrument, an ear and a hand. */
export interface Player {
  readonly horn: Horn;
  /** Fingerings further than this from the written note are no fingerings, in cents; 0–100. */
  readonly toleranceCents: number;
  /** What this player's hand adds to every closure, in cents, −100 to 100: above 0 for a hand that stops sharp. */
  readonly handOffsetCents: number;
}

/** How far out a fingering may be asked for, in cents. */
export const TOLERANCE_CENTS: readonly [lowest: number, highest: number] = [0, 100];

/**
 * Lets a player pass who has a horn, and an ear and a hand within what is known of them.
 * @throws {TypeError} or {RangeError} naming the first field that is wrong, and what is allowed
 */
export function checkPlayer({ horn, toleranceCents, handOffsetCents }: Player): void {
  checkObject('horn', horn, 'a horn: one of HORNS, or what readHornFile makes');
  checkNumber('toleranceCents', toleranceCents, ...TOLERANCE_CENTS);
  checkNumber('handOffsetCents', handOffsetCents, ...HAND_OFFSET_CENTS);
}

/**
 * Wide enough for the published B♭-side fingering on 123 (39 cents), narrow enough to turn away the 50 cents by which
 * the B♭ side usually misses.
 * @source smalley for the row; the width is a choice
 */
export const DEFAULT_TOLERANCE_CENTS = 40;

/** A fingering further out than this is marked risky: the lip has to help. From memory: about what a player bends without thought. */
export const SURE_CENTS = 25;
