/** Horns: their sides, the tubes that valves make of a side, and where each tube's fundamental lies. */

import type { ValveCombination } from '../data/valves.ts';
import { checkObject } from '../guards/allowed.ts';
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
  /** 1 for the side of its horn that the player reaches for first when the hand goes in, 2 for the next, … */
  readonly stoppingOrder: number;
  /**
   * Open notes from this sounding pitch up, in cents above MIDI note 0, are taken on this side first, until another side
   * takes over; FROM_THE_BOTTOM for the side that begins, null for one that is kept for those who ask.
   */
  readonly openFromCents: number | null;
  /** Harmonics so flat that the player takes their notes on a tube up to 23 instead; empty for none. */
  readonly flatHarmonics: readonly number[];
  /** Harmonics to reach for first when stopping, where closing misses the scale on most others; empty for no preference. */
  readonly stoppedHarmonics: readonly number[];
}

/** Where open notes begin that are taken on the first side of a horn. */
export const FROM_THE_BOTTOM = 0;

/** A horn as a player holds it. */
export interface Horn {
  /** Name for options and settings: `double`, `single-f`, … */
  readonly id: string;
  /** In the player's words: "double horn in F and B♭". */
  readonly label: string;
  /** In any order: which of them the player reaches for first, the sides say themselves. */
  readonly sides: readonly Side[];
  /** True for a horn without valves, where the hand makes every note between the harmonics. */
  readonly natural: boolean;
  /** True for a natural horn that takes the crook each note is written for; its `sides` then show the F crook. */
  readonly crookFollowsPart?: true;
}

/** A length of horn: a side with some valves down. */
export interface Tube {
  readonly side: Side;
  readonly combination: ValveCombination;
  /** Length that the valves put down add or take away, valve by valve, in cents; 0 with none down. */
  readonly movedCents: number;
  /** How many of the side's tubes move less; 0 with no valve down. */
  readonly order: number;
  /** Sounding pitch of the 1st harmonic, in cents above MIDI note 0, before any stopping valve. */
  readonly fundamentalCents: number;
}

/**
 * Every tube of a side, the shortest first, in whatever order its valve combinations are listed.
 * @throws {TypeError} when there is no side
 */
export function tubesOf(side: Side): readonly Tube[] {
  checkObject('side', side, 'a side of a horn, such as HORNS[0].sides[0]');
  const tubes = TUBES.get(side) ?? makeTubes(side);
  TUBES.set(side, tubes);
  return tubes;
}

function makeTubes(side: Side): readonly Tube[] {
  const moved = side.valves.map((combination) => movedCents(combination, side.valves));
  const sorted = moved.slice().sort((a, b) => a - b);
  return side.valves
    .map((combination, i) => ({
      side,
      combination,
      movedCents: moved[i]!,
      order: sorted.indexOf(moved[i]!),
      fundamentalCents: side.fundamentalCents - loweringCents(combination),
    }))
    .sort((a, b) => b.fundamentalCents - a.fundamentalCents);
}

/** By each valve's own slide; by the combination's, where a valve alone is not listed. */
function movedCents(combination: ValveCombination, all: readonly ValveCombination[]): number {
  let moved = 0;
  for (const valve of combination.valves === '0' ? [] : combination.valves.split('')) {
    const alone = all.filter(({ valves }) => valves === valve)[0];
    if (!alone) return Math.abs(loweringCents(combination));
    moved += Math.abs(loweringCents(alone));
  }
  return moved;
}

/** How far valves lower a side, in cents; below 0 for valves that raise it. */
function loweringCents({ semitones, sharpCents }: ValveCombination): number {
  return 100 * semitones - sharpCents;
}

/** Sides are constant data, so their tubes are worked out once. */
const TUBES = new WeakMap<Side, readonly Tube[]>();

/** The sides of a horn in the order in which the player reaches for them when the hand goes in. */
export function sidesForStopping({ sides }: Horn): readonly Side[] {
  return sides.slice().sort((a, b) => a.stoppingOrder - b.stoppingOrder);
}

/**
 * The sides of a horn in the order in which the player reaches for them with the hand open: the one that has taken over
 * at this pitch, then the others from the longest, those kept for who asks last.
 * @param soundingCents wanted sounding pitch, in cents above MIDI note 0
 */
export function sidesForOpen({ sides }: Horn, soundingCents: number): readonly Side[] {
  let first: Side | null = null;
  for (const side of sides) {
    if (side.openFromCents === null || side.openFromCents > soundingCents) continue;
    if (!first || side.openFromCents > first.openFromCents!) first = side;
  }
  const rank = (side: Side) => (side === first ? 0 : side.openFromCents !== null ? 1 : 2);
  return sides.slice().sort((a, b) => rank(a) - rank(b) || a.fundamentalCents - b.fundamentalCents);
}

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
