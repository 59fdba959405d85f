/** What an étude is: a short piece that trains one thing about the hand, as data; the doors turn it into a score. */
import type { HandSign } from '../part/passage.ts';
import type { Settings } from '../part/settings.ts';
import type { Pitch, Transposition } from '../pitch/pitch.ts';
import type { Key } from './key.ts';

/**
 * `match`: an open note matched by the same note stopped. `bend`: a tone closed and opened on one fingering.
 * `scale`: stopped scales and broken chords. `phrase`: a phrase and its stopped echo.
 * `change`: open and stopped in turn, in ever shorter notes.
 */
export type EtudeKind = 'match' | 'bend' | 'scale' | 'phrase' | 'change';

/** 1 for the first weeks with the hand, 2 for a player who knows the fingerings, 3 for one who is at home in them. */
export type Level = (typeof LEVELS)[number];
/** Every level, from the first. */
export const LEVELS = [1, 2, 3] as const;

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

/** A note or a rest, in order of time. */
export interface EtudeNote {
  /** The written pitch, or null for a rest. */
  readonly written: Pitch | null;
  readonly quarters: number;
  /** The sign printed at it; every note has one where its hand differs from the note before. */
  readonly sign: HandSign | null;
  /** Where a slur begins or ends here. */
  readonly slur: 'start' | 'stop' | null;
  /** True when the hand slides from this note to the next on one fingering. */
  readonly slides: boolean;
  /** True when a breath is taken after it. */
  readonly breath: boolean;
  /** A dynamic that begins here, or null. */
  readonly dynamic: 'p' | 'mf' | null;
}

/** The bar lengths that études use. */
export interface Meter {
  readonly beats: number;
  readonly beatType: number;
  /** Quarters in the beat that the tempo counts: 1, or 1.5 in 6/8. */
  readonly beatQuarters: number;
}

/** Common time. */
export const FOUR_FOUR: Meter = { beats: 4, beatType: 4, beatQuarters: 1 };
/** Three quarters. */
export const THREE_FOUR: Meter = { beats: 3, beatType: 4, beatQuarters: 1 };
/** Six eighths, counted in two. */
export const SIX_EIGHT: Meter = { beats: 6, beatType: 8, beatQuarters: 1.5 };

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
