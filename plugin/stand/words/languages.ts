/** The page's words by language. */
import type { Language } from '../../../core/index.ts';
import { de } from './de.ts';
import { en } from './en.ts';
import { es } from './es.ts';
import { fr } from './fr.ts';
import { it } from './it.ts';
import type { StandWords } from './standWords.ts';

export const STAND_WORDS: { readonly [language in Language]: StandWords } = { en, de, fr, it, es };
