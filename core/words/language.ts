/** Who reads: in which language, and by which names of notes. */

/** The languages in which everything can be said. */
export const LANGUAGES = ['en', 'de', 'fr', 'it', 'es'] as const;

/** A language by its two letters. @source ISO 639-1 (from memory) */
export type Language = (typeof LANGUAGES)[number];

/** Every way to name notes: `B♭ B C♯`, `B H Cis`, or `si♭ si do♯`. */
export const NOTE_NAMINGS = ['english', 'german', 'solfege'] as const;

/** A way to name notes. */
export type NoteNaming = (typeof NOTE_NAMINGS)[number];

/** Whoever reads what is said. */
export interface Reader {
  readonly language: Language;
  readonly noteNaming: NoteNaming;
}

/** How notes are named where a language is spoken. @source commonPractice */
const USUAL_NAMINGS: { readonly [language in Language]: NoteNaming } = {
  en: 'english',
  de: 'german',
  fr: 'solfege',
  it: 'solfege',
  es: 'solfege',
};

/**
 * A reader of a language.
 * @param noteNaming null for what is usual in the language
 */
export function readerOf(language: Language, noteNaming: NoteNaming | null = null): Reader {
  return { language, noteNaming: noteNaming ?? USUAL_NAMINGS[language] };
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
