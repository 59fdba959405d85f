/** `bellhand etude`: composes a fingering-marked étude for the stopping hand. */
import { Command, InvalidArgumentError, Option } from 'commander';
import {
  composeEtude,
  ETUDE_KINDS,
  type EtudeKind,
  FASTEST_TEMPO,
  HIGHEST_SEED,
  type Key,
  LEVELS,
  type Level,
  LONGEST_BARS,
  PHRASE_BARS,
  type Pitch,
  parseKey,
  pitchCents,
  SHORTEST_BARS,
  SLOWEST_TEMPO,
} from '../../../core/index.ts';
import { documentText } from '../../etude/documentText.ts';
import { markedEtudeText } from '../../etude/markedEtude.ts';
import { Failure } from '../failure.ts';
import { type ForceOption, withForce } from '../options/forceOption.ts';
import { noteName, numberBetween, oneOf } from '../options/optionValues.ts';
import { type PlayerOptions, settingsOf, withPlayerOptions } from '../options/playerOptions.ts';
import { writeOwnText } from '../output/result.ts';
import { isStandardOutput, printLines, warnLines } from '../output/streams.ts';

interface EtudeOptions extends PlayerOptions, ForceOption {
  readonly kind: EtudeKind;
  readonly key: Key;
  readonly level: Level;
  readonly bars: number;
  readonly tempo?: number;
  readonly range?: Range;
  readonly seed?: number;
  readonly output?: string;
}

interface Range {
  readonly low: Pitch;
  readonly high: Pitch;
}

export function etudeCommand(): Command {
  const command = new Command('etude')
    .description(`compose an étude for the stopping hand: ${ETUDE_KINDS.map(({ name }) => name).join(', ')}`)
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
        .argParser((text) => Number(oneOf(LEVELS.map(String))(text)))
        .default(1, '1'),
    )
    .option('--bars <number>', `length in bars, in phrases of ${PHRASE_BARS}`, barsOf, 16)
    .option(
      '--tempo <beats>',
      'beats a minute (default: what suits the kind)',
      numberBetween(SLOWEST_TEMPO, FASTEST_TEMPO, 'beats'),
    )
    .option('--range <low-high>', 'lowest and highest written note, as in C4-G5 (default: by level)', rangeOf)
    .option('--seed <number>', 'the same seed makes the same étude (default: a new one each time)', seedOf)
    .option('-o, --output <path>', 'where to write, or - (default: etude-KIND-SEED.musicxml)');
  return withForce(withPlayerOptions(command)).action((options: EtudeOptions) => writeEtude(options));
}

function writeEtude(options: EtudeOptions): void {
  const player = settingsOf(options);
  const { kind, key, level, bars, tempo, range } = options;
  const seed = options.seed ?? Math.floor(Math.random() * NEW_SEEDS);
  const { low, high } = range ?? { low: null, high: null };
  const result = composeEtude({ kind, key, level, bars, tempo: tempo ?? null, low, high, seed, player });
  if (!result.ok) throw new Failure(result.reason);
  const { etude } = result;
  const output = options.output ?? `etude-${kind}-${seed}.musicxml`;
  const text = markedEtudeText(etude, player, documentText);
  warnLines(writeOwnText(output, text, { kind: 'etude', force: options.force ?? false, inputs: [] }));
  const tell = isStandardOutput(output) ? warnLines : printLines;
  tell([`${output}: ${etude.title} (${etude.subtitle})`]);
}

/** Seeds drawn for the user are short enough to be told on. */
const NEW_SEEDS = 10000;

function keyOf(text: string): Key {
  try {
    return parseKey(text);
  } catch (fault) {
    throw new InvalidArgumentError(`${(fault as RangeError).message}.`);
  }
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

function rangeOf(text: string): Range {
  const ends = /^([^-]+)-(.+)$/.exec(text);
  if (!ends) throw new InvalidArgumentError('Give two notes with a hyphen between, as in C4-G5.');
  const [low, high] = [noteName(ends[1]!), noteName(ends[2]!)];
  if (pitchCents(low) >= pitchCents(high)) throw new InvalidArgumentError('Name the lower note first.');
  return { low, high };
}

function seedOf(text: string): number {
  const seed = /^\d{1,10}$/.test(text) ? Number(text) : Number.NaN;
  if (!(seed <= HIGHEST_SEED))
    throw new InvalidArgumentError(`Give a whole number from 0 to ${HIGHEST_SEED}.`);
  return seed;
}
