/** What is to be said of places, and of many notes at once. */
import type { Verdict } from '../../stopping/fingering.ts';

/** Counts, bars and beats. */
export interface SummaryWords {
  /** `12 stopped notes: 9 sure, 3 risky`; there may be none, and nothing to say of them. */
  stoppedNotes(count: number, verdicts: string): string;
  /** `2 risky`, said of notes. */
  readonly verdicts: { readonly [verdict in Verdict]: (count: number) => string };
  /** @param verdicts such as `1 risky` */
  openNotes(verdicts: string): string;
  /** @param listed `4` or `4, 7 and 12` */
  bars(listed: string, count: number): string;
  /** What stands at the end of a list that was cut: `3 more`. */
  more(count: number): string;
  bar(measure: string): string;
  /** `bar 3, beat 2½` */
  place(measure: string, beat: string): string;
  readonly nothingAdded: string;
  signs(count: number): string;
  words(count: number): string;
  /** @param what signs, words or both */
  added(what: string): string;
  /** Of notes whose verdict would colour them. @param count 1 or more */
  keptColour(count: number): string;
}
