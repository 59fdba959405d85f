/** Closing curves in words. */
import type { CurveWords } from './areas/curves.ts';
import type { Reader } from './language.ts';
import { PAGE_WORDS } from './languages.ts';

/** What a closing curve says to a reader. */
export function curveWords({ language }: Reader): CurveWords {
  return PAGE_WORDS[language].curves;
}
