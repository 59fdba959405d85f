/** Why pages cannot be drawn, in words. */
import type { EngravingWords } from './areas/words.ts';
import type { Reader } from './language.ts';
import { PAGE_WORDS } from './languages.ts';

/** What is said to a reader where no page can be drawn. */
export function engravingWords({ language }: Reader): EngravingWords {
  return PAGE_WORDS[language].engraving;
}

export type { EngravingWords } from './areas/words.ts';
