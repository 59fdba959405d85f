/** What the score is to look like where notes have marks. */
import type { HostMeasure } from './hostApi.ts';
import type { MarkOffset } from './markRows.ts';
import type { MarkedPlace } from './ownMarks.ts';

/** A text as it goes into the score, and where. */
export interface PlannedText {
  readonly text: string;
  readonly isBelow: boolean;
  readonly offset: MarkOffset;
}

/** What one place of the score is to look like. */
export interface PlannedPlace {
  readonly place: MarkedPlace;
  /** The nearest to the staff first. */
  readonly texts: readonly PlannedText[];
  /** The colour of each note of `notesAt(place)`; `null` leaves the user's colour, BLACK takes ours off. */
  readonly colours: readonly (string | null)[];
}

/** A bar, and how wide it is to be; 1 for as wide as the editor makes it. */
export interface PlannedBar {
  readonly measure: HostMeasure;
  readonly stretch: number;
}

/** What has to change in a part. */
export interface PlannedPart {
  readonly places: readonly PlannedPlace[];
  /** Empty where no place changes. */
  readonly bars: readonly PlannedBar[];
}
