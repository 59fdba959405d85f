/** Who reads: in which language, and by which names of notes. */
import { checkOneOf } from '../guards/allowed.ts';
import { LANGUAGES, type Language, WORDS } from './languages.ts';
import { NOTE_NAMINGS, type NoteNaming } from './noteNaming.ts';

export { LANGUAGES, type Language } from './languages.ts';

/** Whoever reads what is said. */
export interface Reader {
  readonly language: Language;
  readonly noteNaming: NoteNaming;
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
  return { language, noteNaming: noteNaming ?? WORDS[language].usualNaming };
}

/** English, for data and for whoever says nothing else. */
export const ENGLISH_READER: Reader = readerOf('en');

/**
 * The language of a locale such as `de_AT.UTF-8` or `fr-CA`.
 * @returns `null` for one that nothing is written in
 */
export function languageOf(locale: string): Language | null {
  const letters = /^([a-z]{2})(?![a-z])/.exec(locale.trim().toLowerCase());
  return LANGUAGES.filter((language) => letters && language === letters[1])[0] ?? null;
}
