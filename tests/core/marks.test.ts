/** How marks are set over notes that stand close together. */
import { describe, expect, test } from 'vitest';
import { HORNS } from '../../core/horn/horns.ts';
import { marksFor } from '../../core/marks/marks.ts';
import { passageOf } from '../../core/part/passageOf.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { examine } from '../../core/rules/examine.ts';

function linesOf(text: string, horn = 'double'): readonly (readonly string[])[] {
  const player = { ...DEFAULT_SETTINGS, horn: HORNS.find(({ id }) => id === horn)! };
  return marksFor(examine(passageOf(text), player)).map(({ lines }) => lines);
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

describe('a natural horn has every change of the hand marked', () => {
  test.each([
    ['as far as it closes, and where it opens', 'C5 B4 C5 A4', [['(C)', '¾'], ['o'], ['(B♭)', '½']]],
    ['open notes after an open one are left alone', 'B4 C5 E5 G5', [['(C)', '¾'], ['o']]],
    ['a full stop', 'G4 F4 G4', [['(G)', '+'], ['o']]],
    ['not where the part has its own sign', 'B4 C5o', [['(C)', '¾']]],
    ['never how far beside a + of the part', 'B4+ C5 F4+', [['(C)'], ['o'], ['(G)']]],
    ['an open note that is out of tune, as risky', 'C5 Bb4 B4 Bb4', [['≈'], ['(C)', '¾'], ['≈ o']]],
    ['in each voice by itself', 'B4/2 C5/2 | v2: C4/2 E4/2', [['(C)', '¾'], ['o']]],
  ])('%s', (_, text, expected) => {
    expect(linesOf(text, 'natural')).toEqual(expected);
  });

  test('with valves, open notes are left alone', () => {
    expect(linesOf('C5+ C5')).toEqual([TWO_LINES]);
  });
});
