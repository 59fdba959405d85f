/** Who reads the panel: the editor's language, and the names of notes chosen with the score. */
import {
  ENGLISH_READER,
  type Language,
  languageLetters,
  type Reader,
  readerOfWords,
  type Words,
} from '../../core/index.ts';
import type { Choice } from './choice.ts';
import type { Host } from './hostApi.ts';

/** The reader of what is said and printed. English where nothing is written in the editor's language. */
export function readerFor(host: Host, { noteNaming }: Choice): Reader {
  const language = languageLetters(host.engine.locale().name);
  if (!takenIn.has(language)) takenIn.set(language, wordsBeside(host, language));
  const words = takenIn.get(language) ?? null;
  return words
    ? readerOfWords(language as Language, words, noteNaming)
    : readerOfWords('en', ENGLISH_READER.words, noteNaming);
}

/** The words of the languages that were asked for; null for one that nothing is written in. */
const takenIn = new Map<string, Words | null>([['en', ENGLISH_READER.words]]);

/** Every language but English has a script of its own (build/bundle.ts): the editor takes in none that nobody reads. */
function wordsBeside({ file, engine }: Host, language: string): Words | null {
  const text = `import QtQuick 2.9
import "bellhand-${language}.js" as Script
QtObject { readonly property var words: Script.Bellhand.words }`;
  try {
    const item = engine.createQmlObject(text, file, engine.resolvedUrl('BellhandWords.qml'));
    return (item as { readonly words: Words }).words;
  } catch (_) {
    // There is no such script.
    return null;
  }
}
