/** What the inside of a `note` element says, wherever in its part it stands. */
import type { HandSign, JoinKind, Pitch } from '../../../core/index.ts';

/** One end of a slur, glissando or slide, as a note states it. */
export interface JoinEnd {
  readonly kind: JoinKind;
  readonly isStart: boolean;
  /** Tells joins that run at once from one another. */
  readonly label: string;
}

export interface NoteContent {
  /** The written pitch, or `null` for what is not the player's: rests, unpitched notes, cues of other players. */
  readonly pitch: Pitch | null;
  readonly ticks: number;
  /** `null` where nothing is stated. */
  readonly voice: string | null;
  readonly staff: string | null;
  readonly instrument: string | null;
  readonly isChord: boolean;
  readonly isGrace: boolean;
  /** True for a note with a head that is not printed. */
  readonly isHeadless: boolean;
  readonly sign: HandSign | null;
  /** The text of its first fingering that is no other's alternative and no mark of ours. */
  readonly fingering: string | null;
  readonly startsTie: boolean;
  readonly endsTie: boolean;
  readonly hasBend: boolean;
  readonly noteheadColour: string | null;
  readonly joinEnds: readonly JoinEnd[];
  /** Where another `notations` may go: directly after the last child before lyrics; characters from the end of the start tag. */
  readonly notationsAt: number;
}
