/** `bellhand annotate FILE…`: writes fingerings, natural pitches and colours over the stopped notes. */
import { Command } from 'commander';
import { runFiles, withJobs } from '../files/fileCommand.ts';
import { pairOutputs } from '../files/outputs.ts';
import { type ForceOption, withForce } from '../options/forceOption.ts';
import { type PartOptions, readingOf, withPartOptions } from '../options/partOptions.ts';
import { type PlayerOptions, withPlayerOptions } from '../options/playerOptions.ts';
import { type ShowOptions, showOf, withShowOptions } from '../options/showOptions.ts';

interface AnnotateOptions extends PlayerOptions, PartOptions, ShowOptions, ForceOption {
  readonly output?: string;
  readonly inPlace?: boolean;
  readonly complete?: boolean;
  readonly jobs: number;
}

export function annotateCommand(): Command {
  const command = new Command('annotate')
    .description('write fingering, natural pitch and verdict over every stopped note of the horn parts')
    .argument('<files...>', 'MusicXML files, plain or compressed; - for standard input')
    .option('-o, --output <path>', 'where to write: a file, a folder, or - (default: FILE.marked.musicxml)')
    .option('--in-place', 'write onto the input itself')
    .option('--complete', 'add + signs missing under a word, and words missing to end one');
  withShowOptions(withPartOptions(withPlayerOptions(command)));
  return withJobs(withForce(command)).action(async (files: string[], options: AnnotateOptions) => {
    const pairs = pairOutputs(files, options, 'marked');
    process.exitCode = await runFiles(
      {
        kind: 'annotate',
        reading: readingOf(options),
        ...showOf(options),
        complete: options.complete ?? false,
        force: options.force ?? false,
      },
      pairs,
      options.jobs,
    );
  });
}
