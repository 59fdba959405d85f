/** What the XML parser's faults mean to someone with a broken file. */
import type { ScoreWords } from '../../../core/index.ts';
import { ScoreError } from '../bytes/scoreError.ts';
import type { TextPlace } from './noteFeed.ts';

const FAULTS: readonly (readonly [RegExp, (words: ScoreWords) => (plain: string) => string])[] = [
  [/unclosed tag: (.+)|unexpected end/, (words) => words.cutShort],
  [/unexpected close tag|unmatched closing tag/, (words) => words.unmatchedClosing],
  [/outside of root node|must contain a root/, (words) => words.notXml],
  [/only one root/, (words) => words.secondDocument],
  [/undefined entity/, (words) => words.undeclaredEntity],
  [/duplicate attribute/, (words) => words.attributeTwice],
  [/disallowed character/, (words) => words.disallowedCharacter],
];

/**
 * The error for a fault that the XML parser reports as `line:column: message.`
 * @param text the whole file's: a picture or a document has faults of any kind, and the first of them explains nothing
 */
export function xmlFault(message: string, { line, column }: TextPlace, text: string): ScoreError {
  const plain = message.replace(/^\d+:\d+: /, '').replace(/\.$/, '');
  const known = FAULTS.filter(([pattern]) => pattern.test(plain))[0];
  const say = known ? known[1] : (words: ScoreWords) => words.malformed;
  const isXml = /^\ufeff?\s*</.test(text);
  return new ScoreError((words) => (isXml ? say(words) : words.notXml)(plain), line, column + 1);
}
