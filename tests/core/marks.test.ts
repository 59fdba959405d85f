/** How marks are set over notes that stand close together. */
import { describe, expect, test } from 'vitest';
import { marksFor } from '../../core/marks/marks.ts';
import { passageOf } from '../../core/part/passageOf.ts';
import { examine } from '../../core/rules/examine.ts';

function linesOf(text: string): readonly (readonly string[])[] {
  return marksFor(examine(passageOf(text))).map(({ lines }) => lines);
}

const TWO_LINES = ['(C♯)', 'B 2'];
const COLUMN = ['(C♯)', 'B', '2'];

describe('marks stand in two lines where there is room, in a column where there is not', () => {
  test.each([
    ['quarters', 'C5+ C5+', [TWO_LINES, TWO_LINES]],
    ['eighths', 'C5+/0.5 C5+/0.5', [TWO_LINES, TWO_LINES]],
    ['sixteenths: the last has room', 'C5+/0.25 C5+/0.25', [COLUMN, TWO_LINES]],
    ['a sixteenth before open notes', '@60 C5+/0.25 C5/0.25 C5/0.5 C5+/0.25', [TWO_LINES, TWO_LINES]],
    ['a grace note stands at its note’s place, one text over the other', 'g:C5+ C5+', [TWO_LINES, TWO_LINES]],
    ['another voice does not crowd', 'C5+/1 r/3 v2: r/0.25 C5+/1', [TWO_LINES, TWO_LINES]],
  ])('%s', (_, text, expected) => {
    expect(linesOf(text)).toEqual(expected);
  });

  test('the notes of a chord crowd the next place, not one another', () => {
    expect(linesOf('[E5+ C5+]').map((lines) => lines.length)).toEqual([2, 2]);
    expect(linesOf('[E5+/0.25 C5+/0.25] [E5+ C5+]').map((lines) => lines.length)).toEqual([3, 3, 2, 2]);
  });
});
