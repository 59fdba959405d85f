/** One note of a passage with everything that was found out about it. */

import type { HandReading } from '../part/handStates.ts';
import type { PassageNote } from '../part/passage.ts';
import type { Pitch } from '../pitch/pitch.ts';
import type { Fingering, Player, Verdict } from '../stopping/fingering.ts';
import type { ChoiceReason } from './plan.ts';

/** Why a note leaves its standard fingering; `choiceText` puts it into words. */
export interface ChosenBecause {
  readonly kind: ChoiceReason['kind'];
  /** The standard fingering. */
  readonly insteadOf: Fingering;
  /** The note that made it leave: its place in the passage, from 0, and its written pitch. */
  readonly neighbourIndex: number;
  readonly neighbour: Pitch;
}

/** A fingering that the part prints over a note. */
export interface OwnFingering {
  /** As it is printed. */
  readonly text: string;
  /** True for a word over the staff, false for what stands at the note itself. */
  readonly isWord: boolean;
  /** The fingering of the note that it asks for, or `null` where it does not give the note. */
  readonly fingering: Fingering | null;
}

/** One note as it was read, with the fingering chosen for it. */
export interface ExaminedNote {
  readonly note: PassageNote;
  readonly reading: HandReading;
  /** The written pitch that fingered and natural notes are named from: the note's own, or the F horn's reading of it. */
  readonly namedFrom: Pitch;
  /** Who plays it, on what: the settings' own player, with the crook of the moment on a natural horn. */
  readonly player: Player;
  /** Wanted sounding pitch in cents above MIDI note 0; null when the transposition is not known. */
  readonly soundingCents: number | null;
  /** The fingering that the part itself prints here, which rules where it gives the note; null where it leaves that open. */
  readonly own: OwnFingering | null;
  /** The fingering chosen, or null when the note has none. */
  readonly fingering: Fingering | null;
  /** Every fingering of the note, first choice first. */
  readonly candidates: readonly Fingering[];
  /** What comes closest when there is no fingering. */
  readonly nearest: Fingering | null;
  /** Why this fingering and not the standard one, or null when it is the standard one or the part's own. */
  readonly chosenBecause: ChosenBecause | null;
  readonly verdict: Verdict;
}
