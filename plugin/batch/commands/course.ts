/** `bellhand course`: composes a folder of lessons, one a week, that grow from one to the next. */
import { join } from 'node:path';
import { Command } from 'commander';
import { composeCourse, MOST_WEEKS, type Reader } from '../../../core/index.ts';
import { documentText } from '../../etude/documentText.ts';
import { sheetText } from '../../etude/sheetText.ts';
import { Failure } from '../failure.ts';
import { type ComposingOptions, endsOf, seedFrom, withComposingOptions } from '../options/etudeOptions.ts';
import { type ForceOption, withForce } from '../options/forceOption.ts';
import { numberBetween } from '../options/optionValues.ts';
import { type PlayerOptions, settingsOf, withPlayerOptions } from '../options/playerOptions.ts';
import { makeFolder } from '../output/folder.ts';
import { writeOwnText } from '../output/result.ts';
import { printLines, warnLines } from '../output/streams.ts';
import { wordsFor } from '../reader.ts';

interface CourseOptions extends PlayerOptions, ComposingOptions, ForceOption {
  readonly weeks: number;
  readonly output?: string;
}

export function courseCommand(reader: Reader): Command {
  const words = wordsFor(reader);
  const { options } = words;
  const command = new Command('course')
    .description(words.commands.course)
    .option('--weeks <number>', options.weeks, numberBetween(words, 1, MOST_WEEKS, 'weeks'), 8);
  withComposingOptions(command, words).option('-o, --output <folder>', options.outputOfOne('course-SEED'));
  return withForce(withPlayerOptions(command, words), words).action((asked: CourseOptions) =>
    writeCourse(asked, reader),
  );
}

function writeCourse(options: CourseOptions, reader: Reader): void {
  const player = settingsOf(options);
  const { copy } = options;
  const seed = seedFrom(options);
  const result = composeCourse({
    weeks: Math.round(options.weeks),
    ...endsOf(options),
    seed,
    player,
    reader,
  });
  if (!result.ok) throw new Failure(() => result.reason);
  const folder = options.output ?? `course-${seed}`;
  makeFolder(folder);
  const ending = copy === 'plain' ? '-plain' : '';
  const lines = result.sheets.map((sheet, i) => {
    const path = join(folder, `week-${i < 9 ? '0' : ''}${i + 1}${ending}.musicxml`);
    const text = sheetText(sheet, player, copy, documentText);
    const written = writeOwnText(path, text, {
      content: 'score',
      kind: 'etude',
      force: options.force ?? false,
      inputs: [],
    });
    warnLines(written.map((say) => say(wordsFor(reader))));
    return `${path}: ${sheet.lines.join(' ')}`;
  });
  printLines(lines);
}
