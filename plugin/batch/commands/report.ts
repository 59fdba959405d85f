/** `bellhand report FILE`: one page to look at, print and send: the part as a marked proof. */
import { basename, join, parse } from 'node:path';
import { Command } from 'commander';
import { EngravingError } from '../../pages/engrave.ts';
import { reportPage } from '../../pages/reportPage.ts';
import { EXIT, Failure } from '../failure.ts';
import { examineText } from '../files/examinedScore.ts';
import { openScoreAt } from '../files/scoreAt.ts';
import { STANDARD, writeWhole } from '../files/wholeFile.ts';
import { type PartOptions, readingOf, withPartOptions } from '../options/partOptions.ts';
import { type PlayerOptions, withPlayerOptions } from '../options/playerOptions.ts';

interface ReportOptions extends PlayerOptions, PartOptions {
  readonly output?: string;
}

export function reportCommand(): Command {
  const command = new Command('report')
    .description('write a page with the engraved part, every finding beside its bar, and the fingerings')
    .argument('<file>', 'a MusicXML file, plain or compressed; - for standard input')
    .option('-o, --output <path>', 'where to write the page, or - (default: FILE.report.html)');
  return withPartOptions(withPlayerOptions(command)).action((file: string, options: ReportOptions) =>
    writeReport(file, options),
  );
}

async function writeReport(file: string, options: ReportOptions): Promise<void> {
  const { text } = openScoreAt(file);
  const examined = examineText(text, file, readingOf(options));
  const name = file === STANDARD ? 'this part' : basename(file);
  const page = await reportPage({ ...examined, name }).catch((fault: unknown) => {
    throw fault instanceof EngravingError ? new Failure(`${file}: ${fault.message}`) : fault;
  });
  const output = options.output ?? defaultOutput(file);
  writeWhole(output, new TextEncoder().encode(page));
  if (output !== STANDARD) process.stdout.write(`${output}: ready to open in a browser\n`);
  for (const remark of examined.remarks) process.stderr.write(`bellhand: ${remark}\n`);
  process.exitCode = EXIT.fine;
}

function defaultOutput(file: string): string {
  if (file === STANDARD) return STANDARD;
  const { dir, name } = parse(file);
  return join(dir, `${name}.report.html`);
}
