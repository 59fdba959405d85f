/** How marks are set over notes that stand close together. */
import { describe, expect, test } from 'vitest';
import { HORNS } from '../../core/horn/horns.ts';
import { marksFor, SHOW_ALL, SHOW_USUAL, type Show } from '../../core/marks/marks.ts';
import { passageOf } from '../../core/part/passageOf.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { examine } from '../../core/rules/examine.ts';

function linesOf(text: string, horn = 'double'): readonly (readonly string[])[] {
  const player = { ...DEFAULT_SETTINGS, horn: HORNS.find(({ id }) => id === horn)! };
  return marksFor(examine(passageOf(text), player)).map(({ lines }) => lines);
}

const TWO_LINES = ['(C♯)', 'B 2'];

describe('a bar has whole marks where they have room side by side, else the valves alone', () => {
  test.each([
    ['quarters', 'C5+ E4+', [TWO_LINES, ['(F♯)', 'E♭ 2']]],
    ['eighths, to the end of their bar', 'C5+/0.5 D4+/0.5 r/1 C5+/2', [['2'], ['12'], ['2']]],
    ['the bar after them', 'C5+/0.5 D4+/0.5 r/3 C5+', [['2'], ['12'], TWO_LINES]],
    ['the last note of a bar', 'r/3.5 C5+/0.5 D4+', [['2'], ['(E)', 'C♯ 12']]],
    ['a risky one', 'C#3+/0.5 C5+/0.5', [['≈0'], ['2']]],
    ['a sixteenth before open notes', '@60 C5+/0.25 C5/0.25 C5/0.5 C5+/0.25', [TWO_LINES, TWO_LINES]],
    ['repeats are left out and need no room', 'C5+/0.5 C5+/0.5 C5+/0.5 C5+/0.5', [TWO_LINES]],
    ['the next bar says it again', 'C5+/4 C5+/4', [TWO_LINES, TWO_LINES]],
    ['a tie does not', 'C5+_/4 C5+/4', [TWO_LINES]],
    ['a grace note stands at its note’s place, one text over the other', 'g:C5+ D4+', [['2'], ['12']]],
    ['another voice does not crowd', 'C5+/1 r/3 v2: r/0.25 C5+/1', [TWO_LINES, TWO_LINES]],
    [
      'the notes of a chord do not make it quick, but have one line each',
      '[E5+ C5+] D4+',
      [['E♭ 2'], ['B 2'], ['(E)', 'C♯ 12']],
    ],
    ['a risky note of a chord', '[C5+ C#3+]', [['B 2'], ['≈ C 0']]],
    ['a chord in quick notes', '[E5+/0.5 C5+/0.5] D4+/0.5', [['2'], ['2'], ['12']]],
    ['one stopped note of a chord has all of it', '[E5 C5+]', [TWO_LINES]],
  ])('%s', (_, text, expected) => {
    expect(linesOf(text)).toEqual(expected);
  });

  test('on wish every note has everything, tied notes once', () => {
    const lines = (text: string) => marksFor(examine(passageOf(text)), SHOW_ALL).map((mark) => mark.lines);
    expect(lines('C5+/0.25 C5+/0.25')).toEqual([TWO_LINES, TWO_LINES]);
    expect(lines('C5+_/4 C5+/4')).toEqual([TWO_LINES]);
  });

  test('a tied note keeps the colour of its verdict', () => {
    const marks = marksFor(examine(passageOf('C#3+_/4 C#3+/4')));
    expect(marks.map(({ lines, colour }) => [lines.length, colour !== null])).toEqual([
      [2, true],
      [0, true],
    ]);
  });

  test('a narrow bar has the valves alone, however slow its notes are, unless everything is asked for', () => {
    const lines = (show: Show) =>
      marksFor(examine(passageOf('C5+ D4+/3 | C5+ D4+/3')), show, undefined, [1]).map((mark) => mark.lines);
    expect(lines(SHOW_USUAL)).toEqual([TWO_LINES, ['(E)', 'C♯ 12'], ['2'], ['12']]);
    expect(lines({ ...SHOW_USUAL, quick: 'full' })).toEqual([
      TWO_LINES,
      ['(E)', 'C♯ 12'],
      TWO_LINES,
      ['(E)', 'C♯ 12'],
    ]);
  });

  test('without valves the fingered note stands alone, with neither the mark stays whole', () => {
    const lines = (show: Partial<Show>) =>
      marksFor(examine(passageOf('C5+/0.5 D4+/0.5')), { ...SHOW_USUAL, ...show }).map((mark) => mark.lines);
    expect(lines({ valves: false })).toEqual([['B'], ['C♯']]);
    expect(lines({ valves: false, fingered: false })).toEqual([['(C♯)'], ['(E)']]);
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
