/** Findings in words. */
import type { Finding } from '../rules/rules.ts';
import type { FindingText } from './areas/findings.ts';
import type { Speech } from './areas/speech.ts';
import type { Reader } from './language.ts';
import { speechFor } from './speech.ts';

/**
 * What a reader is told of a finding: two words for the page, what is wrong and why, and what to do instead.
 * @example
 * const { findings } = examine(passageOf('E4~ F4+'));
 * findingText(findings[0], readerOf('de')).brief // => 'schließt aufwärts'
 */
export function findingText({ id, cause }: Finding, reader: Reader): FindingText {
  // The rule's id tells which fields there are; the compiler cannot follow it through the table.
  const say = reader.words.findings[id] as (cause: Finding['cause'], speech: Speech) => FindingText;
  return say(cause, speechFor(reader));
}

export type { FindingText } from './areas/findings.ts';
