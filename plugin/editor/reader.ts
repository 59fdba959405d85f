/** Who reads the panel: the editor's language, and the names of notes chosen with the score. */
import { languageOf, type Reader, readerOf } from '../../core/index.ts';
import type { Choice } from './choice.ts';
import type { Host } from './hostApi.ts';

/** The reader of what is said and printed. */
export function readerFor({ engine }: Host, { noteNaming }: Choice): Reader {
  return readerOf(languageOf(engine.locale().name) ?? 'en', noteNaming);
}
