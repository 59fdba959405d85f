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

/** A line that prints nothing: the last of a mark keeps what comes below off it, the one next to the staff lifts it onto the next row. */
export const EMPTY_LINE = '\u200b';

/** What a mark in an editor says of how it was set. Marks in files leave that to whoever engraves them. */
export interface MarkSetting {
  /** The row it stands on, in half staff spaces from the staff, 8 to 15; 0 for none. */
  readonly row: number;
  /** By how many fifths its bar was made wider for its marks, 0 to 5. */
  readonly widens: number;
}

/** A mark whose place is left to the engraver. */
export const UNSET: MarkSetting = { row: 0, widens: 0 };

/**
 * The text of a mark as it goes into a score: the prefix, then what clearing and setting it again have to know, in
 * characters that print nothing, then the lines. One zero-width space for each step of chord rank plus one says, if they
 * are there, that the note's colour is ours too; four more characters, if they are there, say how the mark was set.
 * @param colouredChordRank the note's place in its chord, from 0, if its colour is ours; else null
 */
export function markText(
  lines: readonly string[],
  colouredChordRank: number | null,
  setting: MarkSetting = UNSET,
): string {
  return textOf(colouredChordRank === null ? 0 : colouredChordRank + 1, setting, lines.join('\n'));
}

/** The chord rank whose colour a mark text claims as ours, or `null` when the mark left the colour alone. */
export function claimedChordRank(text: string): number | null {
  const { ranks } = partsOf(text);
  return ranks === 0 ? null : ranks - 1;
}

/** How a mark text was set. */
export function markSetting(text: string): MarkSetting {
  return partsOf(text).setting;
}

/** The lines that a mark text prints, from the top. */
export function linesIn(text: string): readonly string[] {
  return allLinesIn(text).filter((line) => line !== EMPTY_LINE);
}

/** How many lines a mark text takes, those that print nothing included. */
export function heightIn(text: string): number {
  return allLinesIn(text).length;
}

function allLinesIn(text: string): readonly string[] {
  const { printed } = partsOf(text);
  return printed === '' ? [] : printed.split('\n');
}

function textOf(ranks: number, setting: MarkSetting, printed: string): string {
  return `${MARK_PREFIX}${'\u200b'.repeat(ranks)}${settingText(setting)}${printed}`;
}

/** Few characters, since each costs the editor's layout as much as one that prints: a number to the base of three. */
const DIGITS = '\u200b\u2060\u2063';
const WIDTHS = 6;
/** The number before the lowest row. */
const NO_ROW = 7;

function settingText({ row, widens }: MarkSetting): string {
  let rest = Math.max(0, row - NO_ROW) * WIDTHS + widens;
  if (rest === 0) return '';
  let text = '';
  for (let i = 0; i < 3; i++) {
    text = DIGITS.charAt(rest % 3) + text;
    rest = Math.floor(rest / 3);
  }
  // The first is no space, which would count as one of the ranks.
  return DIGITS.charAt(rest + 1) + text;
}

const CLAIMS = new RegExp(`^${MARK_PREFIX}(\u200b*)(?:([\u2060\u2063])([${DIGITS}]{3}))?`);

interface MarkTextParts {
  /** How many zero-width spaces tell of a colour. */
  readonly ranks: number;
  readonly setting: MarkSetting;
  readonly printed: string;
}

/** A part has many marks, and few different ones: what each says is read once. */
const KNOWN = new Map<string, MarkTextParts>();
const MOST_KNOWN = 200;

function partsOf(text: string): MarkTextParts {
  let parts = KNOWN.get(text);
  if (!parts) {
    parts = readParts(text);
    if (KNOWN.size >= MOST_KNOWN) KNOWN.clear();
    KNOWN.set(text, parts);
  }
  return parts;
}

function readParts(text: string): MarkTextParts {
  const [claims, ranks, first, others] = CLAIMS.exec(text) ?? ['', ''];
  let number = first ? DIGITS.indexOf(first) - 1 : 0;
  for (const digit of others ?? '') number = 3 * number + DIGITS.indexOf(digit);
  const row = Math.floor(number / WIDTHS);
  return {
    ranks: ranks!.length,
    setting: { row: row === 0 ? 0 : row + NO_ROW, widens: number % WIDTHS },
    printed: text.slice(claims!.length),
  };
}
