/** `bellhand annotate FILE…`: writes fingerings, natural pitches and colours over the stopped notes. */
import { Command } from 'commander';
import { plainReader, type Reader } from '../../../core/index.ts';
import { runFiles, withJobs } from '../files/fileCommand.ts';
import { pairOutputs } from '../files/outputs.ts';
import { type ForceOption, withForce } from '../options/forceOption.ts';
import { type PartOptions, readingOf, withPartOptions } from '../options/partOptions.ts';
import { type PlayerOptions, withPlayerOptions } from '../options/playerOptions.ts';
import { type ShowOptions, showOf, withShowOptions } from '../options/showOptions.ts';
import { wordsFor } from '../reader.ts';

interface AnnotateOptions extends PlayerOptions, PartOptions, ShowOptions, ForceOption {
  readonly output?: string;
  readonly inPlace?: boolean;
  readonly complete?: boolean;
  readonly jobs: number;
}

export function annotateCommand(reader: Reader): Command {
  const words = wordsFor(reader);
  const command = new Command('annotate')
    .description(words.commands.annotate)
    .argument('<files...>', words.arguments.files)
    .option('-o, --output <path>', words.options.output('FILE.marked.musicxml'))
    .option('--in-place', words.options.inPlace)
    .option('--complete', words.options.complete);
  withShowOptions(withPartOptions(withPlayerOptions(command, words), words), words);
  return withJobs(withForce(command, words), words).action(
    async (files: string[], options: AnnotateOptions) => {
      const pairs = pairOutputs(files, options, 'marked');
      process.exitCode = await runFiles(
        {
          kind: 'annotate',
          reader: plainReader(reader),
          reading: readingOf(options),
          ...showOf(options),
          complete: options.complete ?? false,
          force: options.force ?? false,
        },
        pairs,
        options.jobs,
      );
    },
  );
}
