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

/**
 * The text of a mark as it goes into a score: the prefix, then one zero-width space for each step of chord rank plus
 * one if, and only if, the note's colour is ours too (so that clearing knows whose colour to take off), then the lines.
 * @param colouredChordRank the note's place in its chord, from 0, if its colour is ours; else null
 */
export function markText(lines: readonly string[], colouredChordRank: number | null): string {
  let claim = '';
  for (let i = 0; colouredChordRank !== null && i <= colouredChordRank; i++) claim += '\u200b';
  return `${MARK_PREFIX}${claim}${lines.join('\n')}`;
}

/** The chord rank whose colour a mark text claims as ours, or `null` when the mark left the colour alone. */
export function claimedChordRank(text: string): number | null {
  let count = 0;
  while (text[MARK_PREFIX.length + count] === '\u200b') count += 1;
  return count === 0 ? null : count - 1;
}
