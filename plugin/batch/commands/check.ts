/** `bellhand check FILE…`: says what was found, and writes nothing. Ends with 1 when a note is impossible. */
import { Command } from 'commander';
import { plainReader, type Reader } from '../../../core/index.ts';
import { runFiles, withJobs } from '../files/fileCommand.ts';
import { refuseInputAsStandardOutput } from '../files/outputs.ts';
import { oneOf } from '../options/optionValues.ts';
import { type PartOptions, readingOf, withPartOptions } from '../options/partOptions.ts';
import { type PlayerOptions, withPlayerOptions } from '../options/playerOptions.ts';
import { wordsFor } from '../reader.ts';

interface CheckOptions extends PlayerOptions, PartOptions {
  readonly format: 'table' | 'json' | 'json-lines';
  readonly jobs: number;
}

export function checkCommand(reader: Reader): Command {
  const words = wordsFor(reader);
  const command = new Command('check')
    .description(words.commands.check)
    .argument('<files...>', words.arguments.files);
  withPartOptions(withPlayerOptions(command, words), words).option(
    '--format <format>',
    words.options.checkFormat,
    oneOf(words, ['table', 'json', 'json-lines']),
    'table',
  );
  return withJobs(command, words).action(async (files: string[], options: CheckOptions) => {
    refuseInputAsStandardOutput(files);
    const pairs = files.map((input) => ({ input, output: input }));
    process.exitCode = await runFiles(
      {
        kind: 'check',
        reader: plainReader(reader),
        reading: readingOf(options),
        format: options.format,
        isOneOfMany: files.length > 1,
      },
      pairs,
      options.jobs,
    );
  });
}
