/** `bellhand etude`: composes a fingering-marked étude for the stopping hand. */
import { Command, InvalidArgumentError, Option } from 'commander';
import {
  type CommandLineWords,
  composeEtude,
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
  type Reader,
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
import { wordsFor } from '../reader.ts';

interface EtudeOptions extends PlayerOptions, ComposingOptions, ForceOption {
  readonly kind: EtudeKind;
  readonly key: Key;
  readonly level: Level;
  readonly bars: number;
  readonly tempo?: number;
  readonly output?: string;
}

export function etudeCommand(reader: Reader): Command {
  const words = wordsFor(reader);
  const { options } = words;
  const command = new Command('etude')
    .description(words.commands.etude(ETUDE_KINDS.map(({ kind }) => kindWords(kind, reader).name).join(', ')))
    .requiredOption(
      '--kind <kind>',
      ETUDE_KINDS.map(({ kind }) => kind).join(', '),
      oneOf(
        words,
        ETUDE_KINDS.map(({ kind }) => kind),
      ),
    )
    .addOption(
      new Option('--key <key>', options.etudeKey).argParser(keyOf(words)).default(parseKey('C'), 'C'),
    )
    .addOption(new Option('--level <level>', options.level).argParser(levelOf(words)).default(1, '1'))
    .option('--bars <number>', options.bars(PHRASE_BARS), barsOf(words), 32)
    .option('--tempo <beats>', options.tempo, numberBetween(words, SLOWEST_TEMPO, FASTEST_TEMPO, 'beats'));
  withComposingOptions(command, words).option(
    '-o, --output <path>',
    options.outputOfOne('etude-KIND-SEED.musicxml'),
  );
  return withForce(withPlayerOptions(command, words), words).action((asked: EtudeOptions) =>
    writeEtude(asked, reader),
  );
}

function writeEtude(options: EtudeOptions, reader: Reader): void {
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
    reader,
  });
  if (!result.ok) throw new Failure(() => result.reason);
  const sheet = etudeSheet(result.etude, reader);
  const output = options.output ?? `etude-${kind}-${seed}.musicxml`;
  const text = sheetText(sheet, player, copy, documentText);
  const written = writeOwnText(output, text, {
    content: 'score',
    kind: 'etude',
    force: options.force ?? false,
    inputs: [],
  });
  warnLines(written.map((say) => say(wordsFor(reader))));
  const tell = isStandardOutput(output) ? warnLines : printLines;
  tell([`${output}: ${sheet.title} (${sheet.lines.join(' ')})`]);
}

function barsOf({ usage }: CommandLineWords): (text: string) => number {
  return (text) => {
    const bars = Number(text);
    if (!(bars >= SHORTEST_BARS && bars <= LONGEST_BARS) || bars % PHRASE_BARS !== 0)
      throw new InvalidArgumentError(usage.bars(PHRASE_BARS, SHORTEST_BARS, LONGEST_BARS));
    return bars;
  };
}
