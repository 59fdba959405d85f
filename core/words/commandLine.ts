/** The words of the command line. */
import type { CommandLineWords } from './areas/commandLine.ts';
import { commandLine as de } from './de.ts';
import { commandLine as en } from './en.ts';
import { commandLine as es } from './es.ts';
import { commandLine as fr } from './fr.ts';
import { commandLine as it } from './it.ts';
import type { Language } from './language.ts';

/** What the command line says, by language. */
export const COMMAND_LINE_WORDS: { readonly [language in Language]: CommandLineWords } = {
  en,
  de,
  fr,
  it,
  es,
};

export type { CommandLineWords } from './areas/commandLine.ts';
