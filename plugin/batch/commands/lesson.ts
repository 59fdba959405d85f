/** `bellhand lesson`: composes a page of exercises for one practice, in the order in which they are practised. */
import { Command, Option } from 'commander';
import { composeLesson, type Key, type Level, type Reader } from '../../../core/index.ts';
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
import { wordsFor } from '../reader.ts';

interface LessonOptions extends PlayerOptions, ComposingOptions, ForceOption {
  readonly key?: Key;
  readonly level: Level;
  readonly output?: string;
}

export function lessonCommand(reader: Reader): Command {
  const words = wordsFor(reader);
  const { options } = words;
  const command = new Command('lesson')
    .description(words.commands.lesson)
    .addOption(new Option('--level <level>', options.level).argParser(levelOf(words)).default(1, '1'))
    .option('--key <key>', options.lessonKey, keyOf(words));
  withComposingOptions(command, words).option(
    '-o, --output <path>',
    options.outputOfOne('lesson-LEVEL-SEED.musicxml'),
  );
  return withForce(withPlayerOptions(command, words), words).action((asked: LessonOptions) =>
    writeLesson(asked, reader),
  );
}

function writeLesson(options: LessonOptions, reader: Reader): void {
  const player = settingsOf(options);
  const { level, key, copy } = options;
  const seed = seedFrom(options);
  const result = composeLesson({ level, key: key ?? null, ...endsOf(options), seed, player, reader });
  if (!result.ok) throw new Failure(() => result.reason);
  const { sheet } = result;
  const ending = copy === 'plain' ? '-plain' : '';
  const output = options.output ?? `lesson-${level}-${seed}${ending}.musicxml`;
  const text = sheetText(sheet, player, copy, documentText);
  const written = writeOwnText(output, text, {
    content: 'score',
    kind: 'etude',
    force: options.force ?? false,
    inputs: [],
  });
  warnLines(written.map((say) => say(wordsFor(reader))));
  const tell = isStandardOutput(output) ? warnLines : printLines;
  tell([`${output}: ${sheet.title} (${sheet.lines.join(' ')})`]);
}
