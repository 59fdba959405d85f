/** `bellhand clear FILE…`: takes out what annotate wrote, and nothing else. */
import { Command } from 'commander';
import { plainReader, type Reader } from '../../../core/index.ts';
import { runFiles, withJobs } from '../files/fileCommand.ts';
import { pairOutputs } from '../files/outputs.ts';
import { type ForceOption, withForce } from '../options/forceOption.ts';
import { wordsFor } from '../reader.ts';

interface ClearOptions extends ForceOption {
  readonly output?: string;
  readonly inPlace?: boolean;
  readonly jobs: number;
}

export function clearCommand(reader: Reader): Command {
  const words = wordsFor(reader);
  const command = new Command('clear')
    .description(words.commands.clear)
    .argument('<files...>', words.arguments.files)
    .option('-o, --output <path>', words.options.output('FILE.cleared.musicxml'))
    .option('--in-place', words.options.inPlace);
  return withJobs(withForce(command, words), words).action(async (files: string[], options: ClearOptions) => {
    const pairs = pairOutputs(files, options, 'cleared');
    process.exitCode = await runFiles(
      { kind: 'clear', reader: plainReader(reader), force: options.force ?? false },
      pairs,
      options.jobs,
    );
  });
}
