/** `bellhand report FILE`: one page to look at, print and send: the part as a marked proof. */
import { basename, join, parse } from 'node:path';
import { Command } from 'commander';
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

interface ReportOptions extends PlayerOptions, PartOptions, ForceOption {
  readonly output?: string;
  readonly whole?: true;
}

export function reportCommand(): Command {
  const command = new Command('report')
    .description(
      'write a page with the verdict, what to do, the engraved music around every finding, and the fingerings',
    )
    .argument('<file>', 'a MusicXML file, plain or compressed; - for standard input')
    .option('-o, --output <path>', 'where to write the page, or - (default: FILE.report.html)')
    .option('--whole', 'show all the music; otherwise what is in order is folded away');
  return withForce(withPartOptions(withPlayerOptions(command))).action(
    (file: string, options: ReportOptions) => writeReport(file, options),
  );
}

async function writeReport(file: string, options: ReportOptions): Promise<void> {
  refuseInputAsStandardOutput([file]);
  const { text } = openScoreAt(file);
  const examined = examineText(text, file, readingOf(options));
  const name = file === STANDARD ? 'this part' : basename(file);
  const page = await reportPage({ ...examined, name, isWhole: options.whole === true }).catch(
    (fault: unknown) => {
      throw fault instanceof EngravingError ? new Failure(`${file}: ${fault.message}`) : fault;
    },
  );
  const output = options.output ?? defaultOutput(file);
  const force = options.force ?? false;
  warnLines(writeOwnText(output, page, { kind: 'report', force, inputs: [file] }));
  if (!isStandardOutput(output)) printLines([`${output}: ready to open in a browser`]);
  warnLines(examined.remarks);
  process.exitCode = EXIT.fine;
}

function defaultOutput(file: string): string {
  if (file === STANDARD) return STANDARD;
  const { dir, name } = parse(file);
  return join(dir, `${name}.report.html`);
}
