/** What the report says of a whole part, before and between its music. */

/** Counts are of notes, 1 or more unless said otherwise. */
export interface ReportWords {
  /** @param horn without an article */
  readFor(horn: string): string;
  stoppedNotesIn(title: string): string;
  cannotBePlayed(count: number): string;
  /** Said calmly where no note is impossible. */
  readonly canBePlayed: string;
  areRisky(count: number): string;
  readonly nothingStopped: string;
  /** The heading over the findings. */
  readonly findings: string;
  readonly nothingFound: string;
  /** The word before their numbers. */
  bars(count: number): string;
  /** What is folded away of an entry with many notes. */
  elsewhere(count: number): string;
  /** Before a sound. @param way the fingering, such as `open F horn` */
  heardClosing(note: string, way: string): string;
  heardOpening(note: string, way: string): string;
  /** Behind the bars of music that is folded away. @param stopped from 0 */
  folded(stopped: number): string;
}
