/** Why pages cannot be drawn, in words. */
import type { EngravingWords } from './areas/words.ts';
import type { Reader } from './language.ts';
import { SAID } from './languages.ts';

/** What is said to a reader where no page can be drawn. */
export function engravingWords({ language }: Pick<Reader, 'language'>): EngravingWords {
  return SAID[language].pages.engraving;
}

export type { EngravingWords } from './areas/words.ts';
