/** Findings in words. */
import type { Finding } from '../rules/rules.ts';
import type { FindingText, FindingWords } from './areas/findings.ts';
import type { Speech } from './areas/speech.ts';
import { findings as de } from './de.ts';
import { findings as en } from './en.ts';
import { findings as es } from './es.ts';
import { findings as fr } from './fr.ts';
import { findings as it } from './it.ts';
import type { Language, Reader } from './language.ts';
import { speechFor } from './speech.ts';

const WORDS: { readonly [language in Language]: FindingWords } = { en, de, fr, it, es };

/**
 * What a reader is told of a finding: two words for the page, what is wrong and why, and what to do instead.
 * @example
 * const { findings } = examine(passageOf('E4~ F4+'));
 * findingText(findings[0], readerOf('de')).brief // => 'schließt aufwärts'
 */
export function findingText({ id, cause }: Finding, reader: Reader): FindingText {
  // The rule's id tells which fields there are; the compiler cannot follow it through the table.
  const say = WORDS[reader.language][id] as (cause: Finding['cause'], speech: Speech) => FindingText;
  return say(cause, speechFor(reader));
}

export type { FindingText } from './areas/findings.ts';
