/** What is printed over a note, and the colours that tell a verdict. */

/**
 * Every text of ours starts with this run of zero-width characters (word joiner, invisible separator, zero-width
 * space, invisible separator, word joiner). It prints nothing, survives the host's formats and MusicXML, and is how
 * our own marks are known again, whichever door wrote them.
 */
export const MARK_PREFIX = '\u2060\u2063\u200b\u2063\u2060';

/** True when a text is one of our marks. */
export function isOurMark(text: string): boolean {
  return text.indexOf(MARK_PREFIX) === 0;
}

/** One mark to print over a note. */
export interface Mark {
  /** Index of the note in its passage. */
  readonly noteIndex: number;
  /** The lines from top to bottom, without the prefix; the line nearest the note last. Empty when only colour or valves are wanted. */
  readonly lines: readonly string[];
  /** The valves alone, for doors that can print them as a fingering sign: `0`, `12`, `T12`; `null` when there are none. */
  readonly valves: string | null;
  /** `#RRGGBB` for the note head, or `null` to leave the note as it is. */
  readonly colour: string | null;
}

/** What a mark in an editor says of how it was set. Marks in files leave that to whoever engraves them. */
export interface MarkSetting {
  /** The row it stands on, in half staff spaces from the staff; 0 for none. */
  readonly row: number;
  /** By how many tenths its bar was made wider for its marks. */
  readonly widens: number;
}

/** A mark whose place is left to the engraver. */
export const UNSET: MarkSetting = { row: 0, widens: 0 };

/**
 * The text of a mark as it goes into a score: the prefix, then what clearing and setting it again have to know, in
 * characters that print nothing, then the lines. One zero-width space for each step of chord rank plus one says, if they
 * are there, that the note's colour is ours too; word joiners count half spaces, invisible separators tenths.
 * @param colouredChordRank the note's place in its chord, from 0, if its colour is ours; else null
 */
export function markText(
  lines: readonly string[],
  colouredChordRank: number | null,
  { row, widens }: MarkSetting = UNSET,
): string {
  const claim = colouredChordRank === null ? '' : '\u200b'.repeat(colouredChordRank + 1);
  return `${MARK_PREFIX}${claim}${'\u2060'.repeat(row)}${'\u2063'.repeat(widens)}${lines.join('\n')}`;
}

/** The chord rank whose colour a mark text claims as ours, or `null` when the mark left the colour alone. */
export function claimedChordRank(text: string): number | null {
  const count = claimsOf(text)[1]!.length;
  return count === 0 ? null : count - 1;
}

/** How a mark text was set. */
export function markSetting(text: string): MarkSetting {
  const [, , row, width] = claimsOf(text);
  return { row: row!.length, widens: width!.length };
}

/** A mark text that says nothing of a row. */
export function withoutRow(text: string): string {
  const [claims, rank, , width] = claimsOf(text);
  return `${claims === '' ? '' : MARK_PREFIX}${rank}${width}${text.slice(claims!.length)}`;
}

/** The lines that a mark text prints, from the top. */
export function linesIn(text: string): readonly string[] {
  const lines = text.slice(claimsOf(text)[0]!.length);
  return lines === '' ? [] : lines.split('\n');
}

function claimsOf(text: string): readonly string[] {
  return CLAIMS.exec(text) ?? ['', '', '', ''];
}

const CLAIMS = new RegExp(`^${MARK_PREFIX}(\u200b*)(\u2060*)(\u2063*)`);
