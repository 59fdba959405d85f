/** `bellhand chart`: every note a horn can stop, as a page for the stand or as a score. */
import { Command } from 'commander';
import { chartNotes } from '../../pages/chartNotes.ts';
import { chartPage, chartTitle } from '../../pages/chartPage.ts';
import { markedChartText } from '../../pages/chartScore.ts';
import { EngravingError } from '../../pages/engrave.ts';
import { Failure } from '../failure.ts';
import { type ForceOption, withForce } from '../options/forceOption.ts';
import { oneOf } from '../options/optionValues.ts';
import { type PlayerOptions, settingsOf, withPlayerOptions } from '../options/playerOptions.ts';
import { writeOwnText } from '../output/result.ts';
import { isStandardOutput, printLines, warnLines } from '../output/streams.ts';

interface ChartOptions extends PlayerOptions, ForceOption {
  readonly format: 'html' | 'musicxml';
  readonly output?: string;
}

/** Notes on a line of the score: as many as an A4 page carries with their other ways below. */
const NOTES_A_LINE = 6;

export function chartCommand(): Command {
  const command = new Command('chart')
    .description('write the fingering chart of a horn: every note it can stop, with natural pitch and drop')
    .option(
      '--format <format>',
      'html, a page to print, or musicxml, a score',
      oneOf(['html', 'musicxml']),
      'html',
    )
    .option('-o, --output <path>', 'where to write, or - (default: chart-HORN.html or .musicxml)');
  return withForce(withPlayerOptions(command)).action((options: ChartOptions) => writeChart(options));
}

async function writeChart(options: ChartOptions): Promise<void> {
  const player = settingsOf(options);
  const text =
    options.format === 'html'
      ? await chartPage(player).catch((fault: unknown) => {
          throw fault instanceof EngravingError ? new Failure(fault.message) : fault;
        })
      : markedChartText(chartNotes(player), player, {
          title: chartTitle(player),
          notesALine: NOTES_A_LINE,
          // An editor would have to guess which octave a bass clef means.
          clef: 'treble',
          hasDetails: true,
        });
  const output = options.output ?? `chart-${player.horn.id}.${options.format}`;
  warnLines(writeOwnText(output, text, { kind: 'chart', force: options.force ?? false, inputs: [] }));
  if (!isStandardOutput(output)) printLines([`${output}: ${chartTitle(player)}`]);
}
