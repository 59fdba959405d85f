/** The options that études, lessons and courses share: what is composed, and for which copy. */
import { type Command, InvalidArgumentError } from 'commander';
import {
  HIGHEST_SEED,
  type Key,
  LEVELS,
  type Level,
  type Pitch,
  parseKey,
  pitchCents,
} from '../../../core/index.ts';
import type { Copy } from '../../etude/sheetText.ts';
import { noteName, oneOf } from './optionValues.ts';

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
export function withComposingOptions(command: Command): Command {
  return command
    .option('--range <low-high>', 'lowest and highest written note, as in C4-G5 (default: by level)', rangeOf)
    .option('--seed <number>', 'the same seed makes the same music (default: a new one each time)', seedOf)
    .option(
      '--copy <copy>',
      'marked, with its fingerings, or plain, for the student to fill in',
      oneOf(['marked', 'plain']),
      'marked',
    );
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

export function levelOf(text: string): Level {
  return Number(oneOf(LEVELS.map(String))(text)) as Level;
}

export function keyOf(text: string): Key {
  try {
    return parseKey(text);
  } catch (fault) {
    throw new InvalidArgumentError(`${(fault as RangeError).message}.`);
  }
}

function rangeOf(text: string): WrittenRange {
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
