/** Horns: their sides, the tubes that valves make of a side, and where each tube's fundamental lies. */
import type { ValveCombination } from '../data/valves.ts';
import { HIGHEST_HARMONIC, harmonicCents } from './harmonics.ts';

/** Why a stopped note on some harmonic is not sure; a key into the wording. */
export type LowRegisterLimit = 'wants-to-rise' | 'lip-only' | 'below-the-hand';

/** One side of a horn, or one crook of a natural horn. */
export interface Side {
  /** `F`, `Bb`, `high F`, or a crook such as `Eb`. */
  readonly name: string;
  /** What players write before the valves: `T` for the thumb on the B♭ side, else nothing. */
  readonly valvePrefix: string;
  /** Sounding pitch of the 1st harmonic with no valve down, in cents above MIDI note 0. */
  readonly fundamentalCents: number;
  readonly valves: readonly ValveCombination[];
  /** How far above the next lower open harmonic a full stop comes to rest, in cents. */
  readonly closureCents: number;
  /** How much a stopping valve lowers the side while the hand is in, in cents; 0 without one. */
  readonly stoppingValveCents: number;
  /**
   * The note a player thinks of: the next lower harmonic (a semitone below the written note on the F side, the
   * written note itself with a stopping valve) or the natural pitch, where closing is no whole number of semitones.
   */
  readonly fingeredNote: 'lower-harmonic' | 'natural-pitch';
  /** Harmonics that the hand brings down with reservations or not at all, by harmonic number. */
  readonly lowRegister: { readonly [harmonicNumber: number]: LowRegisterLimit };
  /** False for a side that players do not stop on. */
  readonly stoppable: boolean;
  /** Harmonics to reach for first when stopping, where closing misses the scale on most others; empty for no preference. */
  readonly stoppedHarmonics: readonly number[];
}

/** A horn as a player holds it. */
export interface Horn {
  /** Name for options and settings: `double`, `single-f`, … */
  readonly id: string;
  /** In the player's words: "double horn in F and B♭". */
  readonly label: string;
  /** Sides in the order in which the player reaches for them when stopping. */
  readonly sides: readonly Side[];
  /** Open notes from this sounding pitch up (cents above MIDI note 0) go to the shortest side first; null to keep the order. */
  readonly shortSideFromCents: number | null;
  /** True for a horn without valves, where the hand makes every note between the harmonics. */
  readonly natural: boolean;
  /** True for a natural horn that takes the crook each note is written for; its `sides` then show the F crook. */
  readonly crookFollowsPart?: true;
}

/** A length of horn: a side with some valves down. */
export interface Tube {
  readonly side: Side;
  readonly combination: ValveCombination;
  /** Place among the side's combinations from the shortest, from 0. */
  readonly order: number;
  /** Sounding pitch of the 1st harmonic, in cents above MIDI note 0, before any stopping valve. */
  readonly fundamentalCents: number;
}

/** Every tube of a side, in the order of its valve combinations (shortest first). */
export function tubesOf(side: Side): readonly Tube[] {
  let tubes = TUBES.get(side);
  if (!tubes) {
    tubes = side.valves.map((combination, order) => ({
      side,
      combination,
      order,
      fundamentalCents: side.fundamentalCents - 100 * combination.semitones + combination.sharpCents,
    }));
    TUBES.set(side, tubes);
  }
  return tubes;
}

/** Sides are constant data, so their tubes are worked out once. */
const TUBES = new WeakMap<Side, readonly Tube[]>();

/**
 * The open pitch of a harmonic on a tube, in cents above MIDI note 0.
 * @throws {RangeError} when `harmonicNumber` is not an integer from 1 to HIGHEST_HARMONIC
 */
export function openPitchCents(tube: Tube, harmonicNumber: number): number {
  return tube.fundamentalCents + harmonicCents(harmonicNumber);
}

/** Valves as they are printed, with the side's prefix: `12`, `T0`. */
export function printValves(tube: Tube): string {
  return tube.side.valvePrefix + tube.combination.valves;
}

/**
 * How sharp valves are together when each slide is tuned alone, in cents: lengths add, cents do not.
 * @param loweringsCents what each valve lowers by on its own, in cents
 * @source computed from slide lengths; the JMU brass pedagogy page agrees within a cent
 */
export function exactCombinationSharpCents(loweringsCents: readonly number[]): number {
  let length = 1;
  let total = 0;
  for (const lowering of loweringsCents) {
    length += 2 ** (lowering / 1200) - 1;
    total += lowering;
  }
  return total - 1200 * Math.log2(length);
}

/** Harmonics a player can use, lowest first. */
export const HARMONICS: readonly number[] = Array.from({ length: HIGHEST_HARMONIC }, (_, i) => i + 1);
