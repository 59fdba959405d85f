/** How words are strung together, in every language alike. */

/** `a`, `a and b`, `a, b and c`. @param last the word before the last: `and`, `or` */
export function listed(items: readonly string[], last: string): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${last} ${items[items.length - 1]}`;
}

/** The same with a great first letter, to stand at the head of a line. */
export function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/**
 * A whole number in groups of three digits: `500,000`.
 * @param value from 0, whole
 * @param sign between the groups
 * @param from so many digits; below, they stay together
 */
export function groupedBy(value: number, sign: string, from: number): string {
  const digits = String(value);
  return digits.length < from ? digits : digits.replace(/\B(?=(?:\d{3})+$)/g, sign);
}
