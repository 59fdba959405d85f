/** What an étude is: a short piece that trains one thing about the hand, as data; the doors turn it into a score. */
import type { Settings } from '../part/settings.ts';
import type { Pitch, Transposition } from '../pitch/pitch.ts';
import type { EtudeNote, Meter } from './bar.ts';
import type { Key } from './key.ts';
import type { EtudeKind } from './kinds.ts';
import type { Level } from './level.ts';

/** What is asked for. */
export interface EtudeRequest {
  readonly kind: EtudeKind;
  readonly key: Key;
  readonly level: Level;
  /** Length in bars: whole four-bar phrases, SHORTEST_BARS to LONGEST_BARS. */
  readonly bars: number;
  /** Beats a minute, or null for the kind's own; SLOWEST_TEMPO to FASTEST_TEMPO. */
  readonly tempo: number | null;
  /** The lowest and highest written note, or null for what suits the level and the horn. */
  readonly low: Pitch | null;
  readonly high: Pitch | null;
  /** An integer from 0 to HIGHEST_SEED; the same request and seed make the same étude. */
  readonly seed: number;
  /** The horn, hand and ear it is written for. */
  readonly player: Settings;
}

/** The shortest étude, in bars. */
export const SHORTEST_BARS = 4;
/** The longest étude, in bars. */
export const LONGEST_BARS = 64;
/** Bars of a phrase: an étude is made of whole ones. */
export const PHRASE_BARS = 4;
/** The slowest tempo of an étude, in the meter's beats a minute. */
export const SLOWEST_TEMPO = 40;
/** The fastest tempo of an étude, in the meter's beats a minute. */
export const FASTEST_TEMPO = 132;

/** An étude. */
export interface Etude {
  readonly kind: EtudeKind;
  readonly title: string;
  /** Horn, key, level and seed in one line. */
  readonly subtitle: string;
  /** One line that says what it trains. */
  readonly trains: string;
  /** When to rest and when to stop. */
  readonly advice: string;
  /** The request's own: with it the same étude comes again. */
  readonly seed: number;
  readonly key: Key;
  readonly meter: Meter;
  /** Beats a minute, counted in `meter.beatQuarters`. */
  readonly tempo: number;
  readonly transposition: Transposition;
  readonly bars: readonly (readonly EtudeNote[])[];
}

/** An étude, or why there can be none: one sentence that says what to ask for instead. */
export type EtudeResult =
  | { readonly ok: true; readonly etude: Etude }
  | { readonly ok: false; readonly reason: string };
