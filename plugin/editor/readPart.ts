/** What reading a horn part of the open score yields, whatever the host's version offers. */
import type { Passage } from '../../core/index.ts';
import type { ScoreChord, ScoreNote } from './scoreBar.ts';
import type { PartWalk } from './scoreWalk.ts';

/** A horn part with the way back from its passage's notes to the score's. */
export interface ReadPart {
  readonly passage: Passage;
  readonly walk: PartWalk;
  /** By note index. */
  readonly chordNotes: readonly ChordNote[];
}

/** A note of the score with the chord it is in. */
export interface ChordNote {
  readonly chord: ScoreChord;
  readonly note: ScoreNote;
}
