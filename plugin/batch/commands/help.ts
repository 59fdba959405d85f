/** `bellhand help [COMMAND]`: the help of a command, or of all. */
import { Command } from 'commander';
import type { Reader } from '../../../core/index.ts';
import { wordsFor } from '../reader.ts';

/** @param program the program whose commands it knows */
export function helpCommand(program: Command, reader: Reader): Command {
  return new Command('help')
    .description(wordsFor(reader).help.helpOf)
    .argument('[command]')
    .action((name: string | undefined) => {
      const asked = name === undefined ? program : program.commands.find((one) => one.name() === name);
      if (asked) asked.help();
      else program.error(`error: unknown command '${name}'`, { code: 'commander.unknownCommand' });
    });
}
