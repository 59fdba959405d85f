/** What can be changed in a part so that something found in it goes away; as data, so that every door can do it. */
import type { HandSign, JoinKind } from '../part/passage.ts';
import type { Pitch } from '../pitch/pitch.ts';
import type { OwnFingering } from '../plan/examinedNote.ts';
import type { Fingering } from '../stopping/fingering.ts';

/**
 * One change to a part, at one note. `noteIndex` and `toIndex` are places in the passage, from 0.
 * - `note`: another note is written there
 * - `sign`: a sign for the hand is written over it in place of any other; `null` takes it away
 * - `join`: a tie, slur or line that leads from it to the note at `toIndex` is taken out
 * - `fingering`: a fingering is written at it in place of any that stood there, or `null` takes that away
 * - `word`: a word is written over the staff where it stands
 */
export type RepairStep =
  | { readonly change: 'note'; readonly noteIndex: number; readonly written: Pitch }
  | { readonly change: 'sign'; readonly noteIndex: number; readonly sign: HandSign | null }
  | {
      readonly change: 'fingering';
      readonly noteIndex: number;
      readonly fingering: Fingering | null;
      /** What stood there and gives way; null for nothing. */
      readonly before: OwnFingering | null;
    }
  | { readonly change: 'join'; readonly noteIndex: number; readonly toIndex: number; readonly kind: JoinKind }
  | { readonly change: 'word'; readonly noteIndex: number; readonly text: string };

/** What a repair comes to. */
export type RepairKind = (typeof REPAIR_KINDS)[number];
/** Every kind of repair. */
export const REPAIR_KINDS = [
  /** The note an octave higher or lower. */
  'octave-up',
  'octave-down',
  /** A slide that starts or ends on another note. */
  'other-start',
  'other-end',
  /** A glissando, slide or bend taken out, a slur taken out, a tie broken. */
  'line-removed',
  'slur-removed',
  'tie-broken',
  /** A sign for the hand over the note. */
  'sign-added',
  'sign-removed',
  /** A fingering written over the note as the player's own, or one taken away. */
  'fingering-taken',
  'fingering-removed',
  /** A word that opens the hand, one that closes it again, one for the mute. */
  'opening-word',
  'closing-word',
  'stopping-mute',
  'mute-out',
] as const;

/** A change that makes one finding go away. Its steps are done together, and taken back together. */
export interface Repair {
  readonly kind: RepairKind;
  /** At least one; the first is the one it is named by. */
  readonly steps: readonly RepairStep[];
}
