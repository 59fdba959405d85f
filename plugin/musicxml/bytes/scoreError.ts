/**
 * A score that cannot be read. `message` is one clear sentence: the place where known, what is wrong, what to do.
 * `line` and `column` count from 1; they are 0 where the fault has no place in the text.
 */
export class ScoreError extends Error {
  readonly line: number;
  readonly column: number;

  constructor(fault: string, remedy: string, line = 0, column = 0) {
    const place = line > 0 ? `line ${line}, column ${column}: ` : '';
    // Names out of a damaged file may hold anything.
    super(
      Array.from(`${place}${fault}: ${remedy}`, (character) => (character < ' ' ? ' ' : character)).join(''),
    );
    this.name = 'ScoreError';
    this.line = line;
    this.column = column;
  }
}
