/** What the report says of a whole part, before and between its music. */
import type { Severity } from '../../rules/rule.ts';

/** Counts are of notes, 1 or more unless said otherwise. */
export interface ReportWords {
  /** The page around its parts. */
  readonly page: {
    /** The way past the head, for whoever does not see it. */
    readonly skip: string;
    /** The name of the list of links. */
    readonly onThisPage: string;
    readonly howToRead: string;
    fingeringsOf(part: string): string;
    /** The heading over the engraved part. */
    readonly music: string;
    /** @param file the file's name */
    madeFrom(file: string): string;
    /** Bars of one system or more. */
    barsTo(first: string, last: string): string;
    /** @param bars as `barsTo` or the word for one bar names them */
    engraved(bars: string): string;
  };
  /** How grave a finding is, behind its sign. */
  readonly severities: { readonly [severity in Severity]: string };
  /** The table of fingerings. */
  readonly table: {
    readonly none: string;
    labelOf(part: string): string;
    readonly caption: string;
    readonly note: string;
    readonly hand: string;
    readonly fingeredAs: string;
    readonly natural: string;
    readonly drop: string;
    readonly offBy: string;
    readonly verdict: string;
    readonly otherWays: string;
    readonly bars: string;
    /** Notes in those bars. */
    notes(count: number): string;
  };
  /** The picture of a glissando that the hand cannot make. Notes are named by the reader's names. */
  readonly glissando: {
    /** At the end that the music asks for. */
    wanted(note: string): string;
    /** At the ends of the hand's way. */
    readonly natural: string;
    readonly stopped: string;
    /** @param start the state, as it stands behind the name of a note */
    leads(from: string, start: string, to: string, end: string): string;
    closes(from: string, to: string, fingering: string): string;
    opens(from: string, to: string, fingering: string): string;
    readonly nowhere: string;
  };
  /** How to read the page. */
  readonly reading: {
    /** @param key of the side that has the thumb */
    lines(key: string): string;
    /** The colour of what is impossible, and what it means. */
    readonly vermillion: string;
    readonly impossible: string;
    readonly blue: string;
    readonly risky: string;
    readonly rings: string;
    readonly pitches: string;
  };
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
