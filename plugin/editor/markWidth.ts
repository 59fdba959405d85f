/** How wide marks print. */

/** In staff spaces, letters of 8 points as both versions set them. */
const DIGIT = 0.82;
const LETTER = 1.15;
const OTHERS: ReadonlyMap<string, number> = new Map([
  [' ', 0.45],
  ['(', 0.5],
  [')', 0.5],
  ['♭', 0.75],
  ['♯', 0.75],
  ['↑', 0.9],
  ['↓', 0.9],
  ['≈', 0.95],
]);

const HEAD = 1.2;

/** The width of a mark's fingering and natural pitch, in staff spaces; a reason above them may pass over its neighbours. */
export function markWidth(lines: readonly string[]): number {
  const widths = lines.filter((line) => line.indexOf('×') < 0).map(lineWidth);
  return Math.max(0, ...widths);
}

/** How far from the left edge of its note a mark begins: valves alone, which may be narrower or wider, stand over its middle. */
export function markLeft(lines: readonly string[]): number {
  return isValves(lines) ? Math.round(10 * (HEAD - markWidth(lines))) / 20 : 0;
}

/** True for a mark of valves alone. */
export function isValves(lines: readonly string[]): boolean {
  return lines.length === 1 && /^≈?T?[0-3]+$/.test(lines[0]!);
}

function lineWidth(line: string): number {
  let width = 0;
  for (const sign of Array.from(line)) width += OTHERS.get(sign) ?? (/\d/.test(sign) ? DIGIT : LETTER);
  return width;
}
