/** `bellhand chart`: every note a horn can stop, as a page for the stand or as a score. */
import { Command } from 'commander';
import type { Reader } from '../../../core/index.ts';
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
import { wordsFor } from '../reader.ts';

interface ChartOptions extends PlayerOptions, ForceOption {
  readonly format: 'html' | 'musicxml';
  readonly output?: string;
}

/** Notes on a line of the score: as many as an A4 page carries with their other ways below. */
const NOTES_A_LINE = 6;

export function chartCommand(reader: Reader): Command {
  const words = wordsFor(reader);
  const command = new Command('chart')
    .description(words.commands.chart)
    .option('--format <format>', words.options.chartFormat, oneOf(words, ['html', 'musicxml']), 'html')
    .option('-o, --output <path>', words.options.outputOfOne('chart-HORN.html, .musicxml'));
  return withForce(withPlayerOptions(command, words), words).action((options: ChartOptions) =>
    writeChart(options, reader),
  );
}

async function writeChart(options: ChartOptions, reader: Reader): Promise<void> {
  const player = settingsOf(options);
  const text =
    options.format === 'html'
      ? await chartPage(player).catch((fault: unknown) => {
          throw fault instanceof EngravingError ? new Failure(() => fault.message) : fault;
        })
      : markedChartText(chartNotes(player), player, {
          title: chartTitle(player),
          notesALine: NOTES_A_LINE,
          // An editor would have to guess which octave a bass clef means.
          clef: 'treble',
          hasDetails: true,
        });
  const output = options.output ?? `chart-${player.horn.id}.${options.format}`;
  const written = writeOwnText(output, text, { kind: 'chart', force: options.force ?? false, inputs: [] });
  warnLines(written.map((say) => say(wordsFor(reader))));
  if (!isStandardOutput(output)) printLines([`${output}: ${chartTitle(player)}`]);
}
