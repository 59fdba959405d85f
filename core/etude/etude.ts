/** What an étude is: an exercise that trains one thing about the hand, as data; the doors turn it into a score. */
import type { Settings } from '../part/settings.ts';
import type { Pitch, Transposition } from '../pitch/pitch.ts';
import type { Reader } from '../words/language.ts';
import type { Bar, Meter } from './bar.ts';
import type { Difficulty } from './difficulty.ts';
import type { Key } from './key.ts';
import type { EtudeKind } from './kinds.ts';
import type { Level } from './levels.ts';

/** What is asked for. */
export interface EtudeRequest {
  readonly kind: EtudeKind;
  readonly key: Key;
  readonly level: Level;
  /** Length in bars: a multiple of four, SHORTEST_BARS to LONGEST_BARS. */
  readonly bars: number;
  /** Beats a minute, or null for the kind's own at this level; SLOWEST_TEMPO to FASTEST_TEMPO. */
  readonly tempo: number | null;
  /** The meter in which it begins and ends: one of the kind's at this level; drawn among them where null or absent. */
  readonly meter?: Meter | null;
  /** The lowest and highest written note, or null for what suits the level and the horn. */
  readonly low: Pitch | null;
  readonly high: Pitch | null;
  /** An integer from 0 to HIGHEST_SEED; the same request and seed make the same étude. */
  readonly seed: number;
  /** The horn, hand and ear it is written for. */
  readonly player: Settings;
  /** Whoever is told why there is no étude; English where absent. */
  readonly reader?: Reader;
}

/** The shortest étude, in bars. */
export const SHORTEST_BARS = 4;
/** The longest étude, in bars. */
export const LONGEST_BARS = 64;
/** Lengths are multiples of this, in bars. */
export const PHRASE_BARS = 4;
/** The slowest tempo of an étude, in the meter's beats a minute. */
export const SLOWEST_TEMPO = 40;
/** The fastest tempo of an étude, in the meter's beats a minute. */
export const FASTEST_TEMPO = 132;

/** An étude: one exercise of a lesson, or a piece by itself. */
export interface Etude {
  readonly kind: EtudeKind;
  readonly level: Level;
  readonly key: Key;
  /** What brings it back, with the same request. */
  readonly seed: number;
  /** Beats a minute, counted in the first bar's `meter.beatQuarters`. */
  readonly tempo: number;
  /** How it goes, in the trade's Italian. */
  readonly tempoWords: string;
  readonly transposition: Transposition;
  readonly player: Settings;
  readonly bars: readonly Bar[];
  readonly difficulty: Difficulty;
}

/** An étude, or why there can be none: one sentence that says what to ask for instead. */
export type EtudeResult =
  | { readonly ok: true; readonly etude: Etude }
  | { readonly ok: false; readonly reason: string };
