import { ScoreError } from '../bytes/scoreError.ts';

const EXPORT_AGAIN = 'export the score again from the program that wrote it';

/** What the parser's faults mean to someone with a broken file. */
const FAULTS: readonly (readonly [RegExp, string, string])[] = [
  [/unclosed tag: (.+)|unexpected end/, 'the file is cut short', 'fetch or export it again'],
  [/unexpected close tag|unmatched closing tag/, 'a closing tag has no opening tag to match', EXPORT_AGAIN],
  [/outside of root node|must contain a root/, 'this is not XML', 'export the score as MusicXML'],
  [/only one root/, 'there is a second document in the same file', 'keep one score in each file'],
  [
    /undefined entity/,
    'an entity is used that the file does not declare',
    'write the character itself, or &amp; for &',
  ],
  [/duplicate attribute/, 'an attribute is given twice', EXPORT_AGAIN],
  [
    /disallowed character/,
    'a character stands where XML does not allow it',
    `write < and & as &lt; and &amp;, or ${EXPORT_AGAIN}`,
  ],
];

/** The error for a fault that the XML parser reports as `line:column: message.` */
export function xmlFault(message: string, line: number, column: number): ScoreError {
  const plain = message.replace(/^\d+:\d+: /, '').replace(/\.$/, '');
  for (const [pattern, fault, remedy] of FAULTS) {
    if (pattern.test(plain)) return new ScoreError(`${fault} (${plain})`, remedy, line, column + 1);
  }
  return new ScoreError(`this is not well-formed XML (${plain})`, EXPORT_AGAIN, line, column + 1);
}
