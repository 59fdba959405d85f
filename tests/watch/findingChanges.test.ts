/** What counts as new and as gone between two checks. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FindingResult } from '../../core/marks/result.ts';
import { findingChanges } from '../../plugin/batch/watch/findingChanges.ts';

function finding(measure: number, written: string): FindingResult {
  return {
    id: 'off-pitch',
    severity: 'risky',
    part: 'Horn',
    measure: String(measure),
    beat: 1,
    written,
    message: `${written} is off`,
    remedy: 'Change it.',
  };
}

describe('findingChanges', () => {
  const before = [finding(1, 'C5'), finding(4, 'D5'), finding(9, 'E5')];

  test('a bar put in moves findings without making new ones', () => {
    const after = [finding(1, 'C5'), finding(5, 'D5'), finding(10, 'E5')];
    expect(findingChanges(before, after)).toEqual({ added: [], gone: [] });
  });

  test('tells the new one and the gone one apart, each with its own bar', () => {
    const after = [finding(1, 'C5'), finding(2, 'A4'), finding(9, 'E5')];
    expect(findingChanges(before, after)).toEqual({ added: [after[1]], gone: [before[1]] });
  });

  test('the second of two like findings is new', () => {
    expect(findingChanges([finding(1, 'C5')], [finding(1, 'C5'), finding(7, 'C5')]).added).toHaveLength(1);
  });

  test('law: what is kept is the same on both sides, and undoing a change swaps new and gone', () => {
    const list = fc.array(fc.constantFrom('A4', 'B4', 'C5', 'D5'), { maxLength: 12 });
    fc.assert(
      fc.property(list, list, (a, b) => {
        const [before, after] = [a, b].map((names) => names.map((name, i) => finding(i, name)));
        const there = findingChanges(before!, after!);
        const back = findingChanges(after!, before!);
        expect(there.added).toHaveLength(back.gone.length);
        expect(there.gone).toHaveLength(back.added.length);
        const keptBefore = a.filter((_, i) => !there.gone.includes(before![i]!));
        const keptAfter = b.filter((_, i) => !there.added.includes(after![i]!));
        expect(keptAfter).toEqual(keptBefore);
      }),
    );
  });

  test('law: same findings, nothing changed', () => {
    expect(findingChanges(before, before)).toEqual({ added: [], gone: [] });
  });
});
