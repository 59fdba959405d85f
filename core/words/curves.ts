/** Closing curves in words. */
import type { CurveWords } from './areas/curves.ts';
import type { Reader } from './language.ts';
import { SAID } from './languages.ts';

/** What a closing curve says to a reader. */
export function curveWords({ language }: Pick<Reader, 'language'>): CurveWords {
  return SAID[language].pages.curves;
}
