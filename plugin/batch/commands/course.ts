/** `bellhand course`: composes a folder of lessons, one a week, that grow from one to the next. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { Command } from 'commander';
import { composeCourse, MOST_WEEKS } from '../../../core/index.ts';
import { documentText } from '../../etude/documentText.ts';
import { sheetText } from '../../etude/sheetText.ts';
import { Failure, systemReason } from '../failure.ts';
import { type ComposingOptions, endsOf, seedFrom, withComposingOptions } from '../options/etudeOptions.ts';
import { type ForceOption, withForce } from '../options/forceOption.ts';
import { numberBetween } from '../options/optionValues.ts';
import { type PlayerOptions, settingsOf, withPlayerOptions } from '../options/playerOptions.ts';
import { writeOwnText } from '../output/result.ts';
import { printLines, warnLines } from '../output/streams.ts';

interface CourseOptions extends PlayerOptions, ComposingOptions, ForceOption {
  readonly weeks: number;
  readonly output?: string;
}

export function courseCommand(): Command {
  const command = new Command('course')
    .description('compose a course: a lesson a week, each a little harder and each coming back to the last')
    .option('--weeks <number>', 'how many lessons', numberBetween(1, MOST_WEEKS, 'weeks'), 8);
  withComposingOptions(command).option('-o, --output <folder>', 'where to write (default: course-SEED)');
  return withForce(withPlayerOptions(command)).action((options: CourseOptions) => writeCourse(options));
}

function writeCourse(options: CourseOptions): void {
  const player = settingsOf(options);
  const { copy } = options;
  const seed = seedFrom(options);
  const result = composeCourse({ weeks: Math.round(options.weeks), ...endsOf(options), seed, player });
  if (!result.ok) throw new Failure(result.reason);
  const folder = options.output ?? `course-${seed}`;
  try {
    mkdirSync(folder, { recursive: true });
  } catch (fault) {
    throw new Failure(`${folder}: cannot be written: ${systemReason(fault)}`);
  }
  const ending = copy === 'plain' ? '-plain' : '';
  const lines = result.sheets.map((sheet, i) => {
    const path = join(folder, `week-${i < 9 ? '0' : ''}${i + 1}${ending}.musicxml`);
    const text = sheetText(sheet, player, copy, documentText);
    warnLines(writeOwnText(path, text, { kind: 'etude', force: options.force ?? false, inputs: [] }));
    return `${path}: ${sheet.lines.slice(0, 2).join('; ')}`;
  });
  printLines(lines);
}
