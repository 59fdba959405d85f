/** What a user can set, and what holds until they do. */
import { DOUBLE } from '../horn/horns.ts';
import { DEFAULT_TOLERANCE_CENTS, type Player } from '../stopping/fingering.ts';

/** How notes are named over the part: in the part's own written pitch, or as a player of the F horn reads them. */
export type NoteNames = 'as-written' | 'f-horn';

/**
 * How notes in the bass clef are meant: `new` as they stand, `old` an octave low (the habit until about 1900),
 * `auto` to decide from the notes and say so.
 * @source grove1879, p. 750
 */
export type BassClef = 'auto' | 'old' | 'new';

/** What a user can set. Every field has a default in DEFAULT_SETTINGS. */
export interface Settings extends Player {
  /** Less time than this, in seconds, for the hand to go in or out is too quick; 0 or more. */
  readonly handSeconds: number;
  /** For the fingered and the natural note; the written note always stays as written. */
  readonly names: NoteNames;
  readonly bassClef: BassClef;
  /** The speed of a part that states none, in quarter notes a minute; above 0. */
  readonly assumedQuartersPerMinute: number;
}

/**
 * A quarter of a second for the hand is from memory; the assumed tempo is the one of midi10; the horn and the tolerance
 * are as their own constants say.
 * @source midi10
 */
export const DEFAULT_SETTINGS: Settings = {
  horn: DOUBLE,
  toleranceCents: DEFAULT_TOLERANCE_CENTS,
  handOffsetCents: 0,
  handSeconds: 0.25,
  names: 'as-written',
  bassClef: 'auto',
  assumedQuartersPerMinute: 120,
};
