/** The options that say who reads, of every command, before or after its name. Their values are known before: see reader.ts. */
import { type Command, Option } from 'commander';
import { type CommandLineWords, LANGUAGES, NOTE_NAMINGS } from '../../../core/index.ts';
import { oneOf } from './optionValues.ts';

/** Adds the options to the program. */
export function withReaderOptions(program: Command, words: CommandLineWords): Command {
  const { language, noteNames } = words.options;
  return program
    .addOption(new Option('--language <language>', language(LANGUAGES)).argParser(oneOf(words, LANGUAGES)))
    .addOption(new Option('--note-names <names>', noteNames).argParser(oneOf(words, NOTE_NAMINGS)));
}
