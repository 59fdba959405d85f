/** How wide texts are before anything draws them, to find the size at which they fit. */

/** How wide bold letters are, in parts of their size: the widest of each kind. */
const LETTER_WIDTHS = [
  [/[A-Z]/, 0.72],
  [/[a-zé]/, 0.47],
  [/[0-9]/, 0.5],
  [/[ ,.]/, 0.25],
  [/[()]/, 0.34],
  [/≈/, 0.85],
  [/./, 0.55],
] as const;

/** The width of a text in bold letters of the page's face, in parts of their size; other letters are no wider. */
export function textWidth(text: string): number {
  const width = (letter: string) => LETTER_WIDTHS.find(([letters]) => letters.test(letter))![1];
  return [...text].reduce((sum, letter) => sum + width(letter), 0);
}
