/** The levels, as numbers with their reasons. */
import { type Pitch, parsePitch } from '../pitch/pitch.ts';
import { FOUR_FOUR, type Meter, SIX_EIGHT, THREE_FOUR } from './bar.ts';
import { type Key, parseKey } from './key.ts';

/** Every level, from the first. */
export const LEVELS = [1, 2, 3] as const;

/** 1 for the first weeks with the hand, 2 for a player who knows the fingerings, 3 for one who is at home in them. */
export type Level = (typeof LEVELS)[number];

/** What a level asks of a player. */
export interface LevelPlan {
  /** The lowest and highest written note where nobody asks for others. */
  readonly low: Pitch;
  readonly high: Pitch;
  /** Sharps or flats of the keys that are chosen where nobody asks for one, at most; 0–7. */
  readonly mostSigns: number;
  /** The least time from one note to the next where the hand changes between them, in seconds; a slower hand has its own. */
  readonly handSeconds: number;
  /** The shortest note after which the hand may change with no rest between, in quarters. */
  readonly changeAfterQuarters: number;
  /** Where in the bar the hand may change: in whole multiples of so many beats; anywhere where 0. */
  readonly changeGridBeats: number;
  /** Meters in which a sheet's exercises begin and end, one for a whole sheet. */
  readonly meters: readonly Meter[];
  /** True when bars of different meters follow each other and beats are divided by three. */
  readonly isMixed: boolean;
  /** The largest share of notes that may be risky, 0 to 1. */
  readonly riskyShare: number;
}

/**
 * Written G4 to D5 is where a hand is first tested: there the F side falls by about a semitone, at its surest. A third
 * below and above it the drop changes with the harmonic, so that the ear must lead. Below written G3 hardly a note can
 * be stopped; above A5 closing hardly changes one.
 *
 * A beginner's hand moves while a long note or a rest leaves time for it; then it learns to move with the beat; at last
 * it moves as quickly as the set time of the hand allows. From memory; no source.
 *
 * Up to one sign the part reads itself and the ear is free; up to three is what most parts have; all keys come last.
 *
 * A sheet has one meter, in which each of its exercises begins and ends: a change between two of them would be announced
 * behind the double bar. Three beats leave a beginner's hand no half note in which to come back, so the first sheets are
 * in four.
 *
 * A risky note teaches a beginner that stopped notes are luck. The experienced meet one in ten, and are told.
 */
export const LEVEL_PLANS: { readonly [level in Level]: LevelPlan } = {
  1: {
    low: parsePitch('G4'),
    high: parsePitch('D5'),
    mostSigns: 1,
    handSeconds: 0.8,
    changeAfterQuarters: 2,
    changeGridBeats: 1,
    meters: [FOUR_FOUR],
    isMixed: false,
    riskyShare: 0,
  },
  2: {
    low: parsePitch('E4'),
    high: parsePitch('F5'),
    mostSigns: 3,
    handSeconds: 0.42,
    changeAfterQuarters: 0.5,
    changeGridBeats: 1,
    meters: [FOUR_FOUR, THREE_FOUR, SIX_EIGHT],
    isMixed: false,
    riskyShare: 0,
  },
  3: {
    low: parsePitch('G3'),
    high: parsePitch('A5'),
    mostSigns: 7,
    handSeconds: 0.25,
    changeAfterQuarters: 0,
    changeGridBeats: 0,
    meters: [FOUR_FOUR, THREE_FOUR, SIX_EIGHT],
    isMixed: true,
    riskyShare: 0.1,
  },
};

/**
 * A natural horn's hand makes the scale: it moves from note to note from the first day, wherever the note stands, and
 * learns only to do it more quickly. From memory; no source.
 */
const NATURAL_HAND_SECONDS: { readonly [level in Level]: number } = { 1: 0.6, 2: 0.35, 3: 0.25 };

/** What a level asks on a horn. */
export function planFor(level: Level, isNatural: boolean): LevelPlan {
  const plan = LEVEL_PLANS[level];
  if (!isNatural) return plan;
  return { ...plan, handSeconds: NATURAL_HAND_SECONDS[level], changeAfterQuarters: 0, changeGridBeats: 0 };
}

/** Keys by their signs, from none on; keys of the first level have their tonic in its range. */
const KEYS: readonly (readonly string[])[] = [
  ['C', 'Am'],
  ['G'],
  ['F', 'Dm', 'Em'],
  ['D', 'Bb', 'Bm', 'Gm'],
  ['A', 'Eb', 'F#m', 'Cm'],
  ['E', 'Ab', 'C#m', 'Fm'],
  ['B', 'Db', 'Bbm'],
];
/** How many rows of them, from where. The experienced have met the first. */
const ROWS: { readonly [level in Level]: readonly [from: number, to: number] } = {
  1: [0, 2],
  2: [1, 5],
  3: [3, 7],
};

/**
 * Parts for a natural horn are written in C, or near it: in keys of which the harmonics and the hand make every note. F has
 * no fourth that is in tune.
 */
const NATURAL_KEYS: { readonly [level in Level]: readonly string[] } = {
  1: ['C'],
  2: ['C', 'G'],
  3: ['C', 'G', 'Am', 'Em'],
};

/** The keys that suit a level where nobody asks for one. */
export function keysOf(level: Level, isNatural: boolean): readonly Key[] {
  const names = isNatural ? NATURAL_KEYS[level] : ([] as string[]).concat(...KEYS.slice(...ROWS[level]));
  return names.map(parseKey);
}
