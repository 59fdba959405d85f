/** The options that études, lessons and courses share: what is composed, and for which copy. */
import { type Command, InvalidArgumentError } from 'commander';
import {
  type CommandLineWords,
  HIGHEST_SEED,
  type Key,
  LEVELS,
  type Level,
  type Pitch,
  parseKey,
  pitchCents,
} from '../../../core/index.ts';
import type { Copy } from '../../etude/sheetText.ts';
import { oneOf, pitchNamed } from './optionValues.ts';

/** As commander hands them over. */
export interface ComposingOptions {
  readonly range?: WrittenRange;
  readonly seed?: number;
  readonly copy: Copy;
}

interface WrittenRange {
  readonly low: Pitch;
  readonly high: Pitch;
}

/** Adds range, seed and copy. */
export function withComposingOptions(command: Command, words: CommandLineWords): Command {
  const { options } = words;
  return command
    .option('--range <low-high>', options.range, rangeOf(words))
    .option('--seed <number>', options.seed, seedOf(words))
    .option('--copy <copy>', options.copy, oneOf(words, ['marked', 'plain']), 'marked');
}

/** Seeds drawn for the user are short enough to be told on. */
const NEW_SEEDS = 10000;

/** The seed that was asked for, or a new one. */
export function seedFrom({ seed }: ComposingOptions): number {
  return seed ?? Math.floor(Math.random() * NEW_SEEDS);
}

/** The ends of the range that was asked for, or null for what suits. */
export function endsOf({ range }: ComposingOptions): {
  readonly low: Pitch | null;
  readonly high: Pitch | null;
} {
  return range ?? { low: null, high: null };
}

/** A reader of levels. */
export function levelOf(words: CommandLineWords): (text: string) => Level {
  return (text) => Number(oneOf(words, LEVELS.map(String))(text)) as Level;
}

/** A reader of written keys. */
export function keyOf({ usage }: CommandLineWords): (text: string) => Key {
  return (text) => {
    try {
      return parseKey(text);
    } catch {
      throw new InvalidArgumentError(usage.notAKey(text));
    }
  };
}

function rangeOf(words: CommandLineWords): (text: string) => WrittenRange {
  return (text) => {
    const ends = /^([^-]+)-(.+)$/.exec(text);
    if (!ends) throw new InvalidArgumentError(words.usage.rangeEnds);
    const [low, high] = [ends[1]!, ends[2]!].map(pitchNamed(words)) as [Pitch, Pitch];
    if (pitchCents(low) >= pitchCents(high)) throw new InvalidArgumentError(words.usage.lowerFirst);
    return { low, high };
  };
}

function seedOf({ usage }: CommandLineWords): (text: string) => number {
  return (text) => {
    const seed = /^\d{1,10}$/.test(text) ? Number(text) : Number.NaN;
    if (!(seed <= HIGHEST_SEED)) throw new InvalidArgumentError(usage.wholeBetween(0, HIGHEST_SEED));
    return seed;
  };
}
