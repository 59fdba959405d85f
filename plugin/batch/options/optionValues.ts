/** Reads the values of options; a bad value is told with what would be good. */
import { InvalidArgumentError } from 'commander';
import { type Pitch, parsePitch } from '../../../core/index.ts';

/** A reader of numbers from `from` to `to`, ends included, in `unit`. */
export function numberBetween(from: number, to: number, unit: string): (text: string) => number {
  return (text) => {
    const value = text.trim() === '' ? Number.NaN : Number(text);
    if (!(value >= from && value <= to)) {
      throw new InvalidArgumentError(`Give a number of ${unit} from ${from} to ${to}.`);
    }
    return value;
  };
}

/** A reader of whole numbers from 1 up. */
export function wholeNumber(text: string): number {
  if (!/^[1-9]\d{0,5}$/.test(text)) throw new InvalidArgumentError('Give a whole number from 1 up.');
  return Number(text);
}

/** A reader of one of some words. */
export function oneOf<T extends string>(words: readonly T[]): (text: string) => T {
  return (text) => {
    if (!isIn(words, text)) throw new InvalidArgumentError(`Choose one of ${listed(words)}.`);
    return text;
  };
}

/** A reader of several of some words, separated by commas. */
export function someOf<T extends string>(words: readonly T[]): (text: string) => readonly T[] {
  return (text) =>
    text.split(',').map((word) => {
      const wanted = word.trim();
      if (!isIn(words, wanted)) {
        throw new InvalidArgumentError(`Choose from ${listed(words)}, with commas between.`);
      }
      return wanted;
    });
}

/** A reader for options that may be given more than once. */
export function gather(text: string, earlier: readonly string[] = []): readonly string[] {
  return [...earlier, text];
}

/** A reader of note names with an octave. */
export function noteName(text: string): Pitch {
  try {
    return parsePitch(text);
  } catch (fault) {
    throw new InvalidArgumentError(`${(fault as RangeError).message}.`);
  }
}

function isIn<T extends string>(words: readonly T[], word: string): word is T {
  return (words as readonly string[]).includes(word);
}

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words[words.length - 1]}`;
}
