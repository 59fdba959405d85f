/** What every kind of étude is made from, and what a kind is. */
import type { HandSign } from '../part/passage.ts';
import type { Pitch } from '../pitch/pitch.ts';
import type { EtudeNote, Meter } from './bar.ts';
import type { PhrasePlan } from './harmony.ts';
import type { Degree, Key } from './key.ts';
import type { Level } from './level.ts';
import type { Bend } from './palette.ts';
import type { Random } from './random.ts';

/** Everything at hand when an étude is composed. */
export interface Workshop {
  readonly random: Random;
  readonly key: Key;
  readonly level: Level;
  /** Beats a minute. */
  readonly tempo: number;
  /** The notes of the key that can be stopped and played open, or by a natural horn at all, lowest first. */
  readonly notes: readonly Degree[];
  /** What the hand does at a note that is not meant open: closes, and on a natural horn only as far as the note asks. */
  hand(written: Pitch): HandSign;
  /** True on a horn with valves, where a note can be heard open before it is stopped. */
  readonly hasOpenModel: boolean;
  /** Every bend in the range, lowest first; empty unless the kind asks for them. */
  readonly bends: readonly Bend[];
  /** Four bars each. */
  readonly phrases: readonly PhrasePlan[];
}

/** The bars of an étude. */
export interface Draft {
  readonly meter: Meter;
  readonly bars: readonly (readonly EtudeNote[])[];
}

/** A kind of étude: what it is called, what it trains and how it goes. */
export interface KindOfEtude {
  /** As options and settings name it. */
  readonly kind: string;
  /** In a list of kinds. */
  readonly name: string;
  /** Over the music. */
  readonly title: string;
  /** One line that says what it trains. */
  readonly trains: string;
  /** The same for a natural horn, where it is something else. */
  readonly trainsOnNaturalHorn?: string;
  /** Beats a minute where none is asked for. */
  readonly tempo: number;
  /** What the range must hold enough of: notes of the key that can be stopped, or bends. */
  readonly needs: 'notes' | 'bends';
  /** False for what asks for a second fingering of the same note. */
  readonly onNaturalHorn: boolean;
  compose(workshop: Workshop): Draft;
}

/**
 * The shortest time, in seconds, from one change of the hand to the next. From memory: a beginner needs more than half a
 * second; where the set time of the hand makes a change impossible, the highest level keeps clear of it.
 */
const SHORTEST_SECONDS: { readonly [level in Level]: number } = { 1: 0.6, 2: 0.42, 3: 0.3 };

/** True when the level has time to change the hand after a note of so many quarters (tempo in quarters). */
export function hasTimeFor(quarters: number, { level, tempo }: Pick<Workshop, 'level' | 'tempo'>): boolean {
  return (quarters * 60) / tempo >= SHORTEST_SECONDS[level];
}
