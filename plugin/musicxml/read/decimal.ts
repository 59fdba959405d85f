/** Numbers as scores write them. */

/** Larger numbers are no music but faults of the file. */
const LARGEST = 1e9;
const DECIMAL = /^\s*[+-]?(?:\d+\.?\d*|\.\d+)\s*$/;

/**
 * The number that a text is, or `null` when it is none, is out of all proportion, or is written with an exponent, which
 * the format does not know.
 * @source musicxml40: its numbers are of the type xs:decimal
 */
export function decimal(text: string): number | null {
  // Most numbers of a score are one digit.
  const digit = text.length === 1 ? text.charCodeAt(0) - 48 : -1;
  if (digit >= 0 && digit <= 9) return digit;
  if (!DECIMAL.test(text)) return null;
  const value = Number(text);
  return Math.abs(value) <= LARGEST ? value : null;
}

/** A number that counts from 1, such as a staff's, or `null`. */
export function ordinal(text: string): number | null {
  const value = decimal(text);
  return value !== null && value >= 1 && value % 1 === 0 ? value : null;
}

/** A length in divisions. The format has only positive ones; whatever else stands there counts as nothing. */
export function ticksOf(text: string): number {
  return Math.max(0, decimal(text) ?? 0);
}
