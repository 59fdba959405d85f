/** Who reads: in which language, and by which names of notes. */
import { checkOneOf } from '../guards/allowed.ts';
import type { Words } from './areas/words.ts';
import { words as english } from './en.ts';
import { LANGUAGES, type Language, SAID } from './languages.ts';
import { NOTE_NAMINGS, type NoteNaming } from './noteNaming.ts';

export type { Words } from './areas/words.ts';
export { LANGUAGES, type Language } from './languages.ts';

/** Whoever reads what is said. */
export interface Reader {
  readonly language: Language;
  readonly noteNaming: NoteNaming;
  /** What is said everywhere; pages and the command line have more to say. */
  readonly words: Words;
}

/** A reader as data that can go to another thread; `readerOf(language, noteNaming)` makes a reader of it there. */
export interface PlainReader {
  readonly language: Language;
  readonly noteNaming: NoteNaming;
  readonly words?: never;
}

/**
 * A reader of a language.
 * @param noteNaming null for what is usual in the language
 * @throws {RangeError} when either is none of those there are
 * @example
 * noteName(parsePitch('B4'), readerOf('de')) // => 'h′'
 */
export function readerOf(language: Language, noteNaming: NoteNaming | null = null): Reader {
  checkOneOf('language', language, LANGUAGES);
  checkOneOf('noteNaming', noteNaming, (NOTE_NAMINGS as readonly unknown[]).concat(null));
  return readerOfWords(language, SAID[language].words, noteNaming);
}

/** The same where only some languages are at hand. @param noteNaming null for what is usual in the language */
export function readerOfWords(language: Language, words: Words, noteNaming: NoteNaming | null): Reader {
  return { language, noteNaming: noteNaming ?? words.usualNaming, words };
}

/** What is left of a reader for another thread. */
export function plainReader({ language, noteNaming }: Reader): PlainReader {
  return { language, noteNaming };
}

/** English, for data and for whoever says nothing else. */
export const ENGLISH_READER: Reader = readerOfWords('en', english, null);

/**
 * The language of a locale such as `de_AT.UTF-8` or `fr-CA`.
 * @returns `null` for one that nothing is written in
 */
export function languageOf(locale: string): Language | null {
  const letters = languageLetters(locale);
  return LANGUAGES.filter((language) => language === letters)[0] ?? null;
}

/** The two letters of a locale's language; empty for one that has none. */
export function languageLetters(locale: string): string {
  return /^[a-z]{2}(?![a-z])/.exec(locale.trim().toLowerCase())?.[0] ?? '';
}
