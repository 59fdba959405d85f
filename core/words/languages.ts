/**
 * The list of languages: one import for each, and a line in every table. There are several tables since the editor's
 * script takes in none that it has no use for.
 */
import type { CommandLineWords } from './areas/commandLine.ts';
import type { PageWords, Words } from './areas/words.ts';
import * as de from './de.ts';
import * as en from './en.ts';
import * as es from './es.ts';
import * as fr from './fr.ts';
import * as it from './it.ts';

/** What each language says at both doors, by its two letters. @source ISO 639-1 (from memory) */
export const WORDS = {
  en: en.words,
  de: de.words,
  fr: fr.words,
  it: it.words,
  es: es.words,
} satisfies { readonly [language: string]: Words };

/** A language by its two letters. */
export type Language = keyof typeof WORDS;

/** The languages in which everything can be said. */
export const LANGUAGES = Object.keys(WORDS) as readonly Language[];

/** What pages say. */
export const PAGE_WORDS: { readonly [language in Language]: PageWords } = {
  en: en.pages,
  de: de.pages,
  fr: fr.pages,
  it: it.pages,
  es: es.pages,
};

/** What the command line says. */
export const COMMAND_LINE_WORDS: { readonly [language in Language]: CommandLineWords } = {
  en: en.commandLine,
  de: de.commandLine,
  fr: fr.commandLine,
  it: it.commandLine,
  es: es.commandLine,
};
