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

/** The width of a mark's fingering and natural pitch, in staff spaces; a reason above them may pass over its neighbours. */
export function markWidth(lines: readonly string[]): number {
  const widths = lines.filter((line) => line.indexOf('×') < 0).map(lineWidth);
  return Math.max(0, ...widths);
}

function lineWidth(line: string): number {
  let width = 0;
  for (const sign of Array.from(line)) width += OTHERS.get(sign) ?? (/\d/.test(sign) ? DIGIT : LETTER);
  return width;
}
