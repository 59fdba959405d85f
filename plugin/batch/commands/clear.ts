/** `bellhand clear FILE…`: takes out what annotate wrote, and nothing else. */
import { Command } from 'commander';
import { runFiles, withJobs } from '../files/fileCommand.ts';
import { pairOutputs } from '../files/outputs.ts';
import { type ForceOption, withForce } from '../options/forceOption.ts';

interface ClearOptions extends ForceOption {
  readonly output?: string;
  readonly inPlace?: boolean;
  readonly jobs: number;
}

export function clearCommand(): Command {
  const command = new Command('clear')
    .description('take every mark of annotate out again and leave all else as it is')
    .argument('<files...>', 'MusicXML files, plain or compressed; - for standard input')
    .option('-o, --output <path>', 'where to write: a file, a folder, or - (default: FILE.cleared.musicxml)')
    .option('--in-place', 'write onto the input itself');
  return withJobs(withForce(command)).action(async (files: string[], options: ClearOptions) => {
    const pairs = pairOutputs(files, options, 'cleared');
    process.exitCode = await runFiles({ kind: 'clear', force: options.force ?? false }, pairs, options.jobs);
  });
}
