/** What a mark's text carries besides what it prints. */
import { expect, test } from 'vitest';
import {
  claimedChordRank,
  EMPTY_LINE,
  heightIn,
  isOurMark,
  linesIn,
  MARK_PREFIX,
  markSetting,
  markText,
} from '../../core/marks/annotation.ts';

test('every row, width, rank and set of lines comes back as it went in', () => {
  const texts = new Set<string>();
  for (const row of [0, 8, 9, 10, 11, 12, 13, 14, 15])
    for (const widens of [0, 1, 2, 3, 4, 5])
      for (const rank of [null, 0, 1, 2])
        for (const lines of [[], ['2'], ['(C♯)', 'B 2']]) {
          const text = markText(lines, rank, { row, widens });
          expect(isOurMark(text)).toBe(true);
          expect([markSetting(text), claimedChordRank(text), linesIn(text)]).toEqual([
            { row, widens },
            rank,
            lines,
          ]);
          expect(text.length).toBeLessThanOrEqual(MARK_PREFIX.length + 3 + 4 + lines.join('\n').length);
          texts.add(text);
        }
  expect(texts.size).toBe(9 * 6 * 4 * 3);
});

test.each([
  [[EMPTY_LINE, '23'], ['23']],
  [['23', EMPTY_LINE], ['23']],
  [
    [EMPTY_LINE, '12', '(C♯)', EMPTY_LINE, EMPTY_LINE],
    ['12', '(C♯)'],
  ],
])('lines that print nothing take room and are no lines of the mark: %j', (lines, printed) => {
  const text = markText(lines, null, { row: 8, widens: 0 });
  expect([linesIn(text), heightIn(text), claimedChordRank(text)]).toEqual([printed, lines.length, null]);
});
