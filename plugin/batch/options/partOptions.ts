/** The options that say which parts are horns, and in which key they stand where a score keeps silent. */
import { type Command, InvalidArgumentError } from 'commander';
import { type CommandLineWords, crookFromName, type Transposition } from '../../../core/index.ts';
import type { Reading } from '../files/examinedScore.ts';
import { gather } from './optionValues.ts';
import { type PassageOptions, type PlayerOptions, settingsOf, withPassageOptions } from './playerOptions.ts';

/** As commander hands them over. */
export interface PartOptions extends PassageOptions {
  readonly part?: readonly string[];
  readonly key?: Transposition;
}

/** Adds the options to a command. */
export function withPartOptions(command: Command, words: CommandLineWords): Command {
  return withPassageOptions(command, words)
    .option('--part <part>', words.options.part, gather)
    .option('--key <key>', words.options.keyOfPart, keyNamed(words));
}

/**
 * Reads the key of a horn, as its part would name it after "Horn in".
 * @throws {InvalidArgumentError} when it names none
 */
export function keyNamed({ usage }: CommandLineWords): (key: string) => Transposition {
  return (key) => {
    const crook = crookFromName(`Horn in ${key}`);
    if (crook.ok) return crook.transposition;
    throw new InvalidArgumentError(usage.hornKey);
  };
}

/** How the options ask a score to be read. */
export function readingOf(options: PartOptions & PlayerOptions): Reading {
  return { parts: options.part ?? null, key: options.key ?? null, settings: settingsOf(options) };
}
