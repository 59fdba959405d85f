/** `bellhand report FILE`: one page to look at, print and send: the part as a marked proof. */
import { basename, join, parse } from 'node:path';
import { Command } from 'commander';
import type { Reader } from '../../../core/index.ts';
import { EngravingError } from '../../pages/engrave.ts';
import { reportPage } from '../../pages/reportPage.ts';
import { EXIT, Failure } from '../failure.ts';
import { examineText } from '../files/examinedScore.ts';
import { refuseInputAsStandardOutput } from '../files/outputs.ts';
import { openScoreAt } from '../files/scoreAt.ts';
import { type ForceOption, withForce } from '../options/forceOption.ts';
import { type PartOptions, readingOf, withPartOptions } from '../options/partOptions.ts';
import { type PlayerOptions, withPlayerOptions } from '../options/playerOptions.ts';
import { writeOwnText } from '../output/result.ts';
import { isStandardOutput, printLines, STANDARD, warnLines } from '../output/streams.ts';
import { wordsFor } from '../reader.ts';

interface ReportOptions extends PlayerOptions, PartOptions, ForceOption {
  readonly output?: string;
  readonly whole?: true;
  readonly sound?: true;
}

export function reportCommand(reader: Reader): Command {
  const words = wordsFor(reader);
  const command = new Command('report')
    .description(words.commands.report)
    .argument('<file>', words.arguments.file)
    .option('-o, --output <path>', words.options.outputOfOne('FILE.report.html'))
    .option('--whole', words.options.whole)
    .option('--sound', words.options.soundOfReport);
  return withForce(withPartOptions(withPlayerOptions(command, words), words), words).action(
    (file: string, options: ReportOptions) => writeReport(file, options, reader),
  );
}

async function writeReport(file: string, options: ReportOptions, reader: Reader): Promise<void> {
  const words = wordsFor(reader);
  refuseInputAsStandardOutput([file]);
  const { text } = openScoreAt(file);
  const examined = examineText(text, file, readingOf(options));
  const remarks = examined.remarks.map((say) => say(words));
  const name = file === STANDARD ? words.told.thisPart : basename(file);
  const page = await reportPage({
    ...examined,
    name,
    remarks,
    isWhole: options.whole === true,
    hasSound: options.sound === true,
    reader,
  }).catch((fault: unknown) => {
    throw fault instanceof EngravingError ? new Failure(() => `${file}: ${fault.in(reader)}`) : fault;
  });
  const output = options.output ?? defaultOutput(file);
  const force = options.force ?? false;
  const written = writeOwnText(output, page, { content: 'page', kind: 'report', force, inputs: [file] });
  warnLines(written.map((say) => say(words)));
  if (!isStandardOutput(output)) printLines([`${output}: ${words.told.pageReady}`]);
  warnLines(remarks);
  process.exitCode = EXIT.fine;
}

function defaultOutput(file: string): string {
  if (file === STANDARD) return STANDARD;
  const { dir, name } = parse(file);
  return join(dir, `${name}.report.html`);
}
