/** The papers that pages are printed on. */
import type { Page } from 'playwright-core';

export interface Paper {
  readonly name: 'A4' | 'Letter';
  /** In points, upright. */
  readonly width: number;
  readonly height: number;
}

/** @source ISO 216: A4 is 210 by 297 mm. ANSI/ASME Y14.1: the letter sheet is 8.5 by 11 inches. */
export const PAPERS: readonly Paper[] = [
  { name: 'A4', width: 595.3, height: 841.9 },
  { name: 'Letter', width: 612, height: 792 },
];

/**
 * Prints a page as a reader with that paper does.
 * @returns the name of the paper for every sheet of its size that lies as asked, any other sheet's measures
 */
export async function sheetsOf(
  page: Page,
  { name, width, height }: Paper,
  isAcross = false,
): Promise<readonly string[]> {
  const pdf = await page.pdf({ format: name, preferCSSPageSize: true });
  const wanted = isAcross ? [height, width] : [width, height];
  return [...pdf.toString('latin1').matchAll(/\/MediaBox\s*\[[\d.]+ [\d.]+ ([\d.]+) ([\d.]+)\]/g)].map(
    ([, ...sides]) =>
      sides.every((side, i) => Math.abs(Number(side) - wanted[i]!) < 1.5) ? name : sides.join(' × '),
  );
}
