/** What a score that the editor saved holds of ours. */
import { MARK_PREFIX } from '../../../core/marks/annotation.ts';

/** The texts of ours in a saved score, without the prefix. */
export function marksIn(saved: string): string[] {
  return Array.from(saved.matchAll(/<text>(.*?)<\/text>/gs), ([, text]) => text!.replace(/<[^>]*>/g, ''))
    .filter((text) => text.startsWith(MARK_PREFIX))
    .map((text) => text.replace(/[\u2060\u2063\u200b]/g, '').trim());
}

/** A saved score without what no reader sees: our choice among its properties. */
export function music(saved: string): string {
  return saved.replace(/\s*<metaTag name="bellhand">.*?<\/metaTag>/, '');
}

/** How many elements have a colour. */
export const colours = (saved: string) => (saved.match(/<color /g) ?? []).length;
