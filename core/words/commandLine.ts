/** The words of the command line. */
import type { CommandLineWords } from './areas/commandLine.ts';
import type { Reader } from './language.ts';
import { SAID } from './languages.ts';

/** What the command line says to a reader. */
export function commandLineWords({ language }: Pick<Reader, 'language'>): CommandLineWords {
  return SAID[language].commandLine;
}

export type { CommandLineWords } from './areas/commandLine.ts';
