/** Reads the values of options; a bad value is told with what would be good. */
import { InvalidArgumentError } from 'commander';
import { type CommandLineWords, type Pitch, parsePitch } from '../../../core/index.ts';

/** A reader of numbers from `from` to `to`, ends included, in `unit`. */
export function numberBetween(
  { usage, units }: CommandLineWords,
  from: number,
  to: number,
  unit: keyof CommandLineWords['units'],
): (text: string) => number {
  return (text) => {
    const value = text.trim() === '' ? Number.NaN : Number(text);
    if (!(value >= from && value <= to)) {
      throw new InvalidArgumentError(usage.number(units[unit], from, to));
    }
    return value;
  };
}

/** A reader of whole numbers from 1 up. */
export function wholeNumber({ usage }: CommandLineWords): (text: string) => number {
  return (text) => {
    if (!/^[1-9]\d{0,5}$/.test(text)) throw new InvalidArgumentError(usage.wholeNumber);
    return Number(text);
  };
}

/** A reader of one of some words. */
export function oneOf<T extends string>(
  { usage }: CommandLineWords,
  choices: readonly T[],
): (text: string) => T {
  return (text) => {
    if (!isIn(choices, text)) throw new InvalidArgumentError(usage.oneOf(choices));
    return text;
  };
}

/** A reader of several of some words, separated by commas. */
export function someOf<T extends string>(
  { usage }: CommandLineWords,
  choices: readonly T[],
): (text: string) => readonly T[] {
  return (text) =>
    text.split(',').map((word) => {
      const wanted = word.trim();
      if (!isIn(choices, wanted)) throw new InvalidArgumentError(usage.someOf(choices));
      return wanted;
    });
}

/** A reader for options that may be given more than once. */
export function gather(text: string, earlier: readonly string[] = []): readonly string[] {
  return [...earlier, text];
}

/** A reader of note names with an octave. */
export function pitchNamed({ usage }: CommandLineWords): (text: string) => Pitch {
  return (text) => {
    try {
      return parsePitch(text);
    } catch {
      throw new InvalidArgumentError(usage.notANote(text));
    }
  };
}

function isIn<T extends string>(choices: readonly T[], word: string): word is T {
  return (choices as readonly string[]).includes(word);
}
