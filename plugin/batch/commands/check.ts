/** `bellhand check FILE…`: says what was found, and writes nothing. Ends with 1 when a note is impossible. */
import { Command } from 'commander';
import { runFiles, withJobs } from '../files/fileCommand.ts';
import { refuseInputAsStandardOutput } from '../files/outputs.ts';
import { oneOf } from '../options/optionValues.ts';
import { type PartOptions, readingOf, withPartOptions } from '../options/partOptions.ts';
import { type PlayerOptions, withPlayerOptions } from '../options/playerOptions.ts';

interface CheckOptions extends PlayerOptions, PartOptions {
  readonly format: 'table' | 'json' | 'json-lines';
  readonly jobs: number;
}

export function checkCommand(): Command {
  const command = new Command('check')
    .description(
      'list every stopped note and every finding without writing; ends with 1 if a note is impossible',
    )
    .argument('<files...>', 'MusicXML files, plain or compressed; - for standard input');
  withPartOptions(withPlayerOptions(command)).option(
    '--format <format>',
    'table; json, one object for each file, one a line; json-lines, the same without the notes, for catalogues',
    oneOf(['table', 'json', 'json-lines']),
    'table',
  );
  return withJobs(command).action(async (files: string[], options: CheckOptions) => {
    refuseInputAsStandardOutput(files);
    const pairs = files.map((input) => ({ input, output: input }));
    process.exitCode = await runFiles(
      { kind: 'check', reading: readingOf(options), format: options.format, isOneOfMany: files.length > 1 },
      pairs,
      options.jobs,
    );
  });
}
