/** The options that say who plays: the horn, the ear and the hand. */
import { parse } from 'node:path';
import { type Command, InvalidArgumentError, Option } from 'commander';
import {
  type BassClef,
  type CommandLineWords,
  DEFAULT_SETTINGS,
  HORNS,
  type Horn,
  HornFileError,
  type NoteNames,
  readHornFile,
  type Settings,
} from '../../../core/index.ts';
import { Failure } from '../failure.ts';
import { readWhole } from '../files/input.ts';
import { numberBetween, oneOf } from './optionValues.ts';

/** As commander hands them over. */
export interface PlayerOptions {
  readonly horn: Horn;
  readonly tolerance: number;
  readonly handOffset: number;
  readonly handTime: number;
  readonly names: NoteNames;
}

/** Adds the options to a command. */
export function withPlayerOptions(command: Command, words: CommandLineWords): Command {
  const { options } = words;
  return command
    .addOption(
      new Option('--horn <horn>', options.horn(VALVE_HORNS))
        .argParser(hornNamed(words))
        .default(DEFAULT_SETTINGS.horn, DEFAULT_SETTINGS.horn.id),
    )
    .option(
      '--tolerance <cents>',
      options.tolerance,
      numberBetween(words, 0, 100, 'cents'),
      DEFAULT_SETTINGS.toleranceCents,
    )
    .option(
      '--hand-offset <cents>',
      options.handOffset,
      numberBetween(words, -100, 100, 'cents'),
      DEFAULT_SETTINGS.handOffsetCents,
    )
    .option(
      '--hand-time <seconds>',
      options.handTime,
      numberBetween(words, 0, 10, 'seconds'),
      DEFAULT_SETTINGS.handSeconds,
    )
    .option('--names <names>', options.names, oneOf(words, ['as-written', 'f-horn']), DEFAULT_SETTINGS.names);
}

/** What only a part, and no single note, can ask for. */
export interface PassageOptions {
  readonly bassClef: BassClef;
  readonly tempo: number;
}

/** Adds the options to a command that reads parts. */
export function withPassageOptions(command: Command, words: CommandLineWords): Command {
  return command
    .option(
      '--bass-clef <notation>',
      words.options.bassClef,
      oneOf(words, ['auto', 'old', 'new']),
      DEFAULT_SETTINGS.bassClef,
    )
    .option(
      '--tempo <quarters>',
      words.options.assumedTempo,
      numberBetween(words, 1, 1000, 'quarters'),
      DEFAULT_SETTINGS.assumedQuartersPerMinute,
    );
}

/** The settings that the options make. */
export function settingsOf(options: PlayerOptions & Partial<PassageOptions>): Settings {
  return {
    ...DEFAULT_SETTINGS,
    horn: options.horn,
    toleranceCents: options.tolerance,
    handOffsetCents: options.handOffset,
    handSeconds: options.handTime,
    names: options.names,
    bassClef: options.bassClef ?? DEFAULT_SETTINGS.bassClef,
    assumedQuartersPerMinute: options.tempo ?? DEFAULT_SETTINGS.assumedQuartersPerMinute,
  };
}

const VALVE_HORNS = HORNS.filter(({ natural }) => !natural)
  .map(({ id }) => id)
  .join(', ');

/** A horn by its name, or as a JSON file describes it. */
function hornNamed(words: CommandLineWords): (name: string) => Horn {
  return (name) => {
    const horn = HORNS.find(({ id }) => id === name);
    if (horn) return horn;
    if (!/\.json$/i.test(name))
      throw new InvalidArgumentError(words.usage.hornOrFile(HORNS.map(({ id }) => id).join(', ')));
    try {
      return readHornFile(new TextDecoder().decode(readWhole(name)), parse(name).name);
    } catch (fault) {
      if (fault instanceof Failure) throw new InvalidArgumentError(`${fault.say(words)}.`);
      if (fault instanceof HornFileError)
        throw new InvalidArgumentError(`${name}: ${fault.in(words.hornFile)}.`);
      throw fault;
    }
  };
}
