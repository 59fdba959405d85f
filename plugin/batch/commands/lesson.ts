/** `bellhand lesson`: composes a page of exercises for one practice, in the order in which they are practised. */
import { Command, Option } from 'commander';
import { composeLesson, type Key, type Level } from '../../../core/index.ts';
import { documentText } from '../../etude/documentText.ts';
import { sheetText } from '../../etude/sheetText.ts';
import { Failure } from '../failure.ts';
import {
  type ComposingOptions,
  endsOf,
  keyOf,
  levelOf,
  seedFrom,
  withComposingOptions,
} from '../options/etudeOptions.ts';
import { type ForceOption, withForce } from '../options/forceOption.ts';
import { type PlayerOptions, settingsOf, withPlayerOptions } from '../options/playerOptions.ts';
import { writeOwnText } from '../output/result.ts';
import { isStandardOutput, printLines, warnLines } from '../output/streams.ts';

interface LessonOptions extends PlayerOptions, ComposingOptions, ForceOption {
  readonly key?: Key;
  readonly level: Level;
  readonly output?: string;
}

export function lessonCommand(): Command {
  const command = new Command('lesson')
    .description('compose a lesson: one page of numbered exercises, from long tones to quick changes')
    .addOption(
      new Option('--level <level>', '1 for the first weeks, 2 for daily practice, 3 for the experienced')
        .argParser(levelOf)
        .default(1, '1'),
    )
    .option('--key <key>', 'the written key of every exercise: C, Bb, F#, Dm, … (default: by level)', keyOf);
  withComposingOptions(command).option(
    '-o, --output <path>',
    'where to write, or - (default: lesson-LEVEL-SEED.musicxml)',
  );
  return withForce(withPlayerOptions(command)).action((options: LessonOptions) => writeLesson(options));
}

function writeLesson(options: LessonOptions): void {
  const player = settingsOf(options);
  const { level, key, copy } = options;
  const seed = seedFrom(options);
  const result = composeLesson({ level, key: key ?? null, ...endsOf(options), seed, player });
  if (!result.ok) throw new Failure(result.reason);
  const { sheet } = result;
  const ending = copy === 'plain' ? '-plain' : '';
  const output = options.output ?? `lesson-${level}-${seed}${ending}.musicxml`;
  const text = sheetText(sheet, player, copy, documentText);
  warnLines(writeOwnText(output, text, { kind: 'etude', force: options.force ?? false, inputs: [] }));
  const tell = isStandardOutput(output) ? warnLines : printLines;
  tell([`${output}: ${sheet.title} (${sheet.lines.slice(0, 2).join('; ')})`]);
}
