/** The list of languages. One file each holds all that is said in it. */
import type { CommandLineWords } from './areas/commandLine.ts';
import type { PageWords, Words } from './areas/words.ts';
import * as de from './de.ts';
import * as en from './en.ts';
import * as es from './es.ts';
import * as fr from './fr.ts';
import * as it from './it.ts';

/** What a language's file exports. */
interface Said {
  readonly words: Words;
  readonly pages: PageWords;
  readonly commandLine: CommandLineWords;
}

/** What each language says, by its two letters; offered in this order. @source ISO 639-1 (from memory) */
export const SAID = { en, de, fr, it, es } satisfies { readonly [language: string]: Said };

/** A language by its two letters. */
export type Language = keyof typeof SAID;

/** The languages in which everything can be said. */
export const LANGUAGES = Object.keys(SAID) as readonly Language[];
