/** A kind of étude: what it needs, how it goes, and how it is made. What it is called stands in `core/words`. */
import type { Meter } from '../bar.ts';
import type { Level } from '../levels.ts';
import type { Draft, Workshop } from '../workshop.ts';

/** A kind of étude, as its own file states it. */
export interface KindOfEtude {
  /** One word, as commands and files have it. */
  readonly kind: string;
  /** What it is made of: notes that the hand closes, or bends. */
  readonly needs: 'notes' | 'bends';
  /** True where notes that lie apart will not do. */
  readonly needsSteps?: boolean;
  /** True where a note and the closed one beside it are practised by themselves: open notes of a natural horn do not count. */
  readonly isByPairs?: boolean;
  /** Quarters a minute where no tempo is asked for, by level. */
  readonly tempo: { readonly [level in Level]: number };
  /** Meters in which an étude by itself may begin and end, by level; those of the level's sheets where absent. */
  readonly meters?: { readonly [level in Level]: readonly Meter[] };
  /** How it is to be played, in the trade's Italian, after the word for the tempo. */
  readonly character: string;
  /** True where a bar that comes again and again is the exercise. */
  readonly isRepetition?: boolean;
  compose(workshop: Workshop): Draft;
}
