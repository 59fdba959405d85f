/** `bellhand chart`: every note a horn can stop, or bend by the hand, as a page or as a score. */
import { Command } from 'commander';
import type { Reader, Settings } from '../../../core/index.ts';
import { chartPage } from '../../pages/chartPage.ts';
import { chartScoreText, chartTitle } from '../../pages/chartScore.ts';
import { EngravingError } from '../../pages/engrave.ts';
import { slideChartText, slidePage, slideTitle } from '../../pages/slidePage.ts';
import { Failure } from '../failure.ts';
import { type ForceOption, withForce } from '../options/forceOption.ts';
import { oneOf } from '../options/optionValues.ts';
import { type PlayerOptions, settingsOf, withPlayerOptions } from '../options/playerOptions.ts';
import { holdingOf } from '../output/ending.ts';
import { writeOwnText } from '../output/result.ts';
import { isStandardOutput, printLines, warnLines } from '../output/streams.ts';
import { wordsFor } from '../reader.ts';

interface ChartOptions extends PlayerOptions, ForceOption {
  readonly of: 'fingerings' | 'bends';
  /** As the output's name ends, by default: a page unless it is a score's. */
  readonly format?: 'html' | 'musicxml';
  readonly output?: string;
}

export function chartCommand(reader: Reader): Command {
  const words = wordsFor(reader);
  const command = new Command('chart')
    .description(words.commands.chart)
    .option('--of <what>', words.options.chartOf, oneOf(words, ['fingerings', 'bends']), 'fingerings')
    .option('--format <format>', words.options.chartFormat, oneOf(words, ['html', 'musicxml']))
    .option(
      '-o, --output <path>',
      words.options.outputOfOne('chart-HORN.html, chart-bends-HORN.musicxml, …'),
    );
  return withForce(withPlayerOptions(command, words), words).action((options: ChartOptions) =>
    writeChart(options, reader),
  );
}

async function writeChart(options: ChartOptions, reader: Reader): Promise<void> {
  const player = settingsOf(options);
  const { of, output: asked } = options;
  const isScore = asked !== undefined && holdingOf(asked) !== null;
  const { format = isScore ? 'musicxml' : 'html' } = options;
  const { text, title } = await chartOf(player, of, format, reader).catch((fault: unknown) => {
    throw fault instanceof EngravingError ? new Failure(() => fault.in(reader)) : fault;
  });
  const name = of === 'bends' ? 'chart-bends' : 'chart';
  const output = asked ?? `${name}-${player.horn.id}.${format}`;
  const written = writeOwnText(output, text, {
    content: format === 'html' ? 'page' : 'score',
    kind: 'chart',
    force: options.force ?? false,
    inputs: [],
  });
  warnLines(written.map((say) => say(wordsFor(reader))));
  if (!isStandardOutput(output)) printLines([`${output}: ${title}`]);
}

async function chartOf(
  player: Settings,
  of: ChartOptions['of'],
  format: 'html' | 'musicxml',
  reader: Reader,
): Promise<{ text: string; title: string }> {
  if (of === 'bends') {
    const text = format === 'html' ? await slidePage(player, reader) : slideChartText(player, reader);
    return { text, title: slideTitle(player, reader) };
  }
  const text = format === 'html' ? await chartPage(player, reader) : chartScoreText(player, reader);
  return { text, title: chartTitle(player, reader) };
}
