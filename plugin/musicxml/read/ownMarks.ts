/** How our own marks are known again in a text, however they got there: by invisible characters, which print nothing. */
import { isOurMark, MARK_PREFIX } from '../../../core/index.ts';

/**
 * Stands before a sign of ours, which has no text to tell whose it is. A processing instruction is allowed in every
 * version of the format, as no attribute for this purpose is.
 */
export const OWN_SIGN = '<?bellhand sign?>';

/** The mark's characters as they stand, or as references in a file that cannot hold them. */
const PREFIX = Array.from(MARK_PREFIX, (character) => {
  const code = character.charCodeAt(0);
  return `(?:${character}|&#x${code.toString(16)};|&#${code};)`;
}).join('');
const REFERENCES = ['&#x2060;', '&#8288;'];

/** Children of ours inside a note: an added sign or a fingering, in a `notations` of their own, exactly as written. */
const OWN_NOTATIONS = new RegExp(
  '^<((?:[^\\s<>:]+:)?)notations>(?:<\\?bellhand sign\\?><\\1technical><\\1stopped(?: placement="below")?/>|' +
    `<\\1technical><\\1fingering>${PREFIX}[^<>]*</\\1fingering>)` +
    '</\\1technical></\\1notations>',
);
/** Longer than any of these. */
const LONGEST_NOTATIONS = 400;

/** False when a text surely holds no mark of ours: a quick look, by rare characters, before the careful one. */
export function mayHoldMarks(text: string): boolean {
  return [MARK_PREFIX, OWN_SIGN.slice(1), ...REFERENCES].some((ours) => text.indexOf(ours) >= 0);
}

/** True when the `notations` element that opens at `start` is ours. */
export function isOwnNotations(text: string, start: number): boolean {
  return OWN_NOTATIONS.test(text.slice(start, start + LONGEST_NOTATIONS));
}

/** True for the text of a `words` or `fingering` of ours. */
export function isOwnText(text: string): boolean {
  return isOurMark(text.trim());
}
