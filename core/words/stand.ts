/** The page without installation in words. */
import type { StandWords } from './areas/stand.ts';
import type { Reader } from './language.ts';
import { SAID } from './languages.ts';

/** What the page that needs no installation says to a reader beside its music. */
export function standWords({ language }: Pick<Reader, 'language'>): StandWords {
  return SAID[language].pages.stand;
}

export type { StandWords } from './areas/stand.ts';
