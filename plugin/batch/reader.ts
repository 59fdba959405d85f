/** Who reads what the command says: asked for by an option, else by the system's locale. */
import {
  type CommandLineWords,
  commandLineWords,
  LANGUAGES,
  languageOf,
  NOTE_NAMINGS,
  type Reader,
  readerOf,
} from '../../core/index.ts';

/** The environment's variables for the language of messages, the most telling first. @source POSIX.1-2017, 8.2 */
const LOCALE_VARIABLES = ['LC_ALL', 'LC_MESSAGES', 'LANG'] as const;

/**
 * The reader of a run, known before the options are read: help and faults are in the reader's language too. A value that
 * means nothing is left to the options themselves, which turn it away.
 */
export function readerOfRun(args: readonly string[], env: NodeJS.ProcessEnv): Reader {
  const asked = valueAfter(args, '--language');
  const naming = valueAfter(args, '--note-names');
  const locale = LOCALE_VARIABLES.map((name) => env[name]).find((value) => value) ?? '';
  const language = LANGUAGES.find((one) => one === asked) ?? languageOf(locale) ?? 'en';
  return readerOf(language, NOTE_NAMINGS.find((one) => one === naming) ?? null);
}

/** The words of the command line for a reader. */
export function wordsFor(reader: Pick<Reader, 'language'>): CommandLineWords {
  return commandLineWords(reader);
}

/** `--name value` or `--name=value`; the last counts, and nothing behind `--`. */
function valueAfter(args: readonly string[], name: string): string | null {
  let found: string | null = null;
  for (const [i, arg] of args.entries()) {
    if (arg === '--') break;
    if (arg === name) found = args[i + 1] ?? null;
    else if (arg.startsWith(`${name}=`)) found = arg.slice(name.length + 1);
  }
  return found;
}
