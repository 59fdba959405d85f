/** How a horn file is refused. */
import { commandLineWords } from '../../words/commandLine.ts';
import { type HornFileWords, hornFileFaultText } from '../../words/hornFiles.ts';
import { ENGLISH_READER } from '../../words/language.ts';
import type { HornFileFault, WantedValue } from '../hornFileFault.ts';

/** A horn file that cannot be read. `message` is one clear line in English, `in` the same in any language. */
export class HornFileError extends RangeError {
  /** What is wrong, as data. */
  readonly fault: HornFileFault;

  constructor(fault: HornFileFault) {
    super(hornFileFaultText(fault, commandLineWords(ENGLISH_READER).hornFile));
    this.name = 'HornFileError';
    this.fault = fault;
  }

  /** The line in the words of a language. */
  in(words: HornFileWords): string {
    return hornFileFaultText(this.fault, words);
  }
}

/** More of what a file says does not fit into a line, in characters. */
const LONGEST_SHOWN = 60;

/** A value that is none of those a field may hold. */
export function wrongValue(at: string, wanted: WantedValue | WantedValue['is'], got: unknown): HornFileError {
  const shown = got === undefined ? '' : JSON.stringify(got);
  return new HornFileError({
    is: 'wrong-value',
    at,
    wanted: (typeof wanted === 'string' ? { is: wanted } : wanted) as WantedValue,
    got: shown.length > LONGEST_SHOWN ? `${shown.slice(0, LONGEST_SHOWN)}…` : shown,
  });
}
