/** What the page without installation says itself: its sheets, controls and refusals. What is said of music comes from the core. */
import type { BassClef } from '../../part/settings.ts';

/** One language's words. */
export interface StandWords {
  /** The law of the hand, in one sentence. */
  readonly law: string;
  readonly sheets: { readonly note: string; readonly part: string; readonly lesson: string };
  readonly toSheet: string;
  /** That nothing is sent. */
  readonly stays: string;
  /** Who engraves, and under which licence. */
  readonly engravedBy: string;
  readonly language: string;
  /** What the language calls itself. */
  readonly itself: string;
  /** For what follows the system or the language. */
  readonly usual: string;
  /** How the English, the German and the Latin world name notes, in this order. */
  readonly namings: readonly [string, string, string];
  readonly writtenNote: string;
  readonly partKey: string;
  readonly lower: string;
  readonly higher: string;
  readonly hand: string;
  readonly open: string;
  readonly sealed: string;
  /** @param closed 0–100 @param cents below the open tone, 0 or more */
  closing(closed: number, cents: number): string;
  readonly hear: string;
  readonly silence: string;
  readonly letClose: string;
  readonly ladder: string;
  /** @param number of the harmonic @param note its open pitch as written */
  pulled(number: number, note: string): string;
  above(number: number, note: string): string;
  /** @param cents above the next lower harmonic */
  comesToRest(cents: number): string;
  readonly waysToPlay: string;
  readonly noPicture: string;
  readonly choosePart: string;
  readonly orDrop: string;
  readonly putAway: string;
  readonly example: string;
  readonly marked: string;
  readonly cleared: string;
  readonly completed: string;
  readonly print: string;
  readonly engraving: string;
  readonly notEngraved: string;
  /** @param reason without a full stop */
  notRead(name: string, reason: string): string;
  tooLarge(name: string, megabytes: number): string;
  noHorn(name: string, parts: readonly string[]): string;
  noKey(name: string): string;
  readonly hornPart: string;
  readonly findThem: string;
  /** The least time of the hand, in seconds. */
  readonly handTime: string;
  /** What a part without a tempo is taken at, in quarters a minute. */
  readonly tempo: string;
  readonly bassClef: string;
  readonly bassClefs: { readonly [notation in BassClef]: string };
  readonly teacher: string;
  readonly student: string;
  readonly another: string;
  readonly usualKey: string;
  /** For a horn out of a file. */
  readonly ownHorn: string;
  readonly lowest: string;
  readonly highest: string;
  /** For a range or tempo that follows level and horn. */
  readonly asSuits: string;
  /** How quick an étude is. */
  readonly etudeTempo: string;
  /** After the étude kinds in their list. */
  readonly course: string;
  readonly weeks: string;
  /** Which page of a course is on the sheet. */
  readonly weekShown: string;
  readonly composing: string;
  /** What is wrong with a range. */
  readonly lowerFirst: string;
}
