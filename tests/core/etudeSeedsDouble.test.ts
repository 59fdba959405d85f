/** Études over many seeds on the usual horn: their laws, and how hard they are. */
import { describe, expect, test } from 'vitest';
import type { Etude } from '../../core/etude/etude.ts';
import { ETUDE_KINDS } from '../../core/etude/kinds.ts';
import { keysOf, LEVEL_PLANS, LEVELS } from '../../core/etude/levels.ts';
import { HORNS } from '../../core/horn/horns.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { lawsHoldOn, SEEDS } from './etude/lawsHoldOn.ts';

const composed: Etude[] = [];

lawsHoldOn(
  HORNS.filter(({ id }) => id === DEFAULT_SETTINGS.horn.id),
  (etude) => composed.push(etude),
);

describe('the measure of difficulty', () => {
  test.each(ETUDE_KINDS.map(({ kind }) => [kind]))('rises from level to level in %s', (kind) => {
    const [first, second, third] = LEVELS.map((level) => {
      const scores = composed
        .filter((etude) => etude.kind === kind && etude.level === level)
        .map(({ difficulty }) => difficulty.score);
      expect(scores).toHaveLength(SEEDS);
      return scores.sort((a, b) => a - b);
    }) as [number[], number[], number[]];
    for (const [lower, higher] of [
      [first, second],
      [second, third],
    ] as const) {
      // Nine of ten are harder than the middle one of the level before, and nine of ten of that are easier than this middle.
      expect(higher[Math.floor(SEEDS / 10)]!).toBeGreaterThan(lower[SEEDS / 2]!);
      expect(lower[Math.floor((9 * SEEDS) / 10)]!).toBeLessThan(higher[SEEDS / 2]!);
    }
  });

  test('levels hold what their table says', () => {
    for (const level of LEVELS)
      for (const key of keysOf(level, false))
        expect(Math.abs(key.fifths)).toBeLessThanOrEqual(LEVEL_PLANS[level].mostSigns);
  });
});
