/** `bellhand etude`: composes a fingering-marked étude for the stopping hand. */
import { Command, InvalidArgumentError, Option } from 'commander';
import {
  composeEtude,
  ENGLISH_READER,
  ETUDE_KINDS,
  type EtudeKind,
  etudeSheet,
  FASTEST_TEMPO,
  type Key,
  kindWords,
  type Level,
  LONGEST_BARS,
  PHRASE_BARS,
  parseKey,
  SHORTEST_BARS,
  SLOWEST_TEMPO,
} from '../../../core/index.ts';
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
import { numberBetween, oneOf } from '../options/optionValues.ts';
import { type PlayerOptions, settingsOf, withPlayerOptions } from '../options/playerOptions.ts';
import { writeOwnText } from '../output/result.ts';
import { isStandardOutput, printLines, warnLines } from '../output/streams.ts';

interface EtudeOptions extends PlayerOptions, ComposingOptions, ForceOption {
  readonly kind: EtudeKind;
  readonly key: Key;
  readonly level: Level;
  readonly bars: number;
  readonly tempo?: number;
  readonly output?: string;
}

export function etudeCommand(): Command {
  const command = new Command('etude')
    .description(
      `compose an étude for the stopping hand: ${ETUDE_KINDS.map(({ kind }) => kindWords(kind, ENGLISH_READER).name).join(', ')}`,
    )
    .requiredOption(
      '--kind <kind>',
      ETUDE_KINDS.map(({ kind }) => kind).join(', '),
      oneOf(ETUDE_KINDS.map(({ kind }) => kind)),
    )
    .addOption(
      new Option('--key <key>', 'the written key: C, Bb, F#, Dm, …')
        .argParser(keyOf)
        .default(parseKey('C'), 'C'),
    )
    .addOption(
      new Option('--level <level>', '1 for the first weeks, 2 for daily practice, 3 for the experienced')
        .argParser(levelOf)
        .default(1, '1'),
    )
    .option('--bars <number>', `length in bars, in phrases of ${PHRASE_BARS}`, barsOf, 16)
    .option(
      '--tempo <beats>',
      'beats a minute (default: what suits the kind)',
      numberBetween(SLOWEST_TEMPO, FASTEST_TEMPO, 'beats'),
    );
  withComposingOptions(command).option(
    '-o, --output <path>',
    'where to write, or - (default: etude-KIND-SEED.musicxml)',
  );
  return withForce(withPlayerOptions(command)).action((options: EtudeOptions) => writeEtude(options));
}

function writeEtude(options: EtudeOptions): void {
  const player = settingsOf(options);
  const { kind, key, level, bars, tempo, copy } = options;
  const seed = seedFrom(options);
  const result = composeEtude({
    kind,
    key,
    level,
    bars,
    tempo: tempo ?? null,
    ...endsOf(options),
    seed,
    player,
  });
  if (!result.ok) throw new Failure(result.reason);
  const sheet = etudeSheet(result.etude);
  const output = options.output ?? `etude-${kind}-${seed}.musicxml`;
  const text = sheetText(sheet, player, copy, documentText);
  warnLines(writeOwnText(output, text, { kind: 'etude', force: options.force ?? false, inputs: [] }));
  const tell = isStandardOutput(output) ? warnLines : printLines;
  tell([`${output}: ${sheet.title} (${sheet.lines.slice(0, 2).join('; ')})`]);
}

function barsOf(text: string): number {
  const bars = Number(text);
  if (!(bars >= SHORTEST_BARS && bars <= LONGEST_BARS) || bars % PHRASE_BARS !== 0) {
    throw new InvalidArgumentError(
      `Give a multiple of ${PHRASE_BARS} from ${SHORTEST_BARS} to ${LONGEST_BARS}.`,
    );
  }
  return bars;
}
