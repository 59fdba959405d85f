import { ENGLISH_READER, type ScoreWords, scoreWords } from '../../../core/index.ts';

/** A fault, put into words where it is told. */
export type ScoreFault = (words: ScoreWords) => string;

/**
 * A score that cannot be read. `message` is one clear line in English, `in` the same in any language: the place where
 * known, what is wrong, what to do. `line` and `column` count from 1; they are 0 where the fault has no place in the text.
 */
export class ScoreError extends Error {
  readonly line: number;
  readonly column: number;
  private readonly fault: ScoreFault;

  constructor(fault: ScoreFault, line = 0, column = 0) {
    super(told(fault, line, column, scoreWords(ENGLISH_READER)));
    this.name = 'ScoreError';
    this.fault = fault;
    this.line = line;
    this.column = column;
  }

  /** The line in the words of a language. */
  in(words: ScoreWords): string {
    return told(this.fault, this.line, this.column, words);
  }
}

function told(fault: ScoreFault, line: number, column: number, words: ScoreWords): string {
  const place = line > 0 ? `${words.place(line, column)}: ` : '';
  // Names out of a damaged file may hold anything.
  return Array.from(place + fault(words), (character) => (character < ' ' ? ' ' : character)).join('');
}
