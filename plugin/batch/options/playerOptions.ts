/** The options that say who plays: the horn, the ear and the hand. */
import { parse } from 'node:path';
import { type Command, InvalidArgumentError, Option } from 'commander';
import {
  type BassClef,
  DEFAULT_SETTINGS,
  HORNS,
  type Horn,
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
export function withPlayerOptions(command: Command): Command {
  return command
    .addOption(
      new Option(
        '--horn <horn>',
        `the horn played: ${VALVE_HORNS}, natural, natural-eb and the like, or a .json file`,
      )
        .argParser(hornNamed)
        .default(DEFAULT_SETTINGS.horn, DEFAULT_SETTINGS.horn.id),
    )
    .option(
      '--tolerance <cents>',
      'fingerings further off than this are none',
      numberBetween(0, 100, 'cents'),
      DEFAULT_SETTINGS.toleranceCents,
    )
    .option(
      '--hand-offset <cents>',
      'what this hand adds to every closing: above 0 for a hand that stops sharp',
      numberBetween(-100, 100, 'cents'),
      DEFAULT_SETTINGS.handOffsetCents,
    )
    .option(
      '--hand-time <seconds>',
      'the least time in which the hand goes in or out',
      numberBetween(0, 10, 'seconds'),
      DEFAULT_SETTINGS.handSeconds,
    )
    .option(
      '--names <names>',
      'notes named as-written in the part, or as a player reading for the f-horn names them',
      oneOf(['as-written', 'f-horn']),
      DEFAULT_SETTINGS.names,
    );
}

/** What only a part, and no single note, can ask for. */
export interface PassageOptions {
  readonly bassClef: BassClef;
  readonly tempo: number;
}

/** Adds the options to a command that reads parts. */
export function withPassageOptions(command: Command): Command {
  return command
    .option(
      '--bass-clef <notation>',
      'notes in the bass clef: new, as they stand; old, an octave low; auto, by the look of them',
      oneOf(['auto', 'old', 'new']),
      DEFAULT_SETTINGS.bassClef,
    )
    .option(
      '--tempo <quarters>',
      'the speed of a part that states none, in quarters a minute',
      numberBetween(1, 1000, 'quarters a minute'),
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
function hornNamed(name: string): Horn {
  const horn = HORNS.find(({ id }) => id === name);
  if (horn) return horn;
  if (!/\.json$/i.test(name)) {
    throw new InvalidArgumentError(
      `Choose one of ${HORNS.map(({ id }) => id).join(', ')}, or name a .json file.`,
    );
  }
  try {
    return readHornFile(new TextDecoder().decode(readWhole(name)), parse(name).name);
  } catch (fault) {
    if (fault instanceof Failure) throw new InvalidArgumentError(`${fault.message}.`);
    if (fault instanceof RangeError) throw new InvalidArgumentError(`${name}: ${fault.message}.`);
    throw fault;
  }
}
