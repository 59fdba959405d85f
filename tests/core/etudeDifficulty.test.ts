/** The measure of difficulty: its distribution over many seeds. */
import { describe, expect, test } from 'vitest';
import { composeEtude } from '../../core/etude/compose.ts';
import { ETUDE_KINDS, type EtudeKind } from '../../core/etude/kinds.ts';
import { keysOf, LEVEL_PLANS, LEVELS, type Level } from '../../core/etude/levels.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';

const SEEDS = 200;

/** How hard études of a kind and level are, from the easiest. */
function scoresOf(kind: EtudeKind, level: Level): readonly number[] {
  const keys = keysOf(level, false);
  const player = DEFAULT_SETTINGS;
  return Array.from({ length: SEEDS }, (_, seed) => {
    const key = keys[seed % keys.length]!;
    const made = composeEtude({
      kind,
      key,
      level,
      bars: 8,
      tempo: null,
      low: null,
      high: null,
      seed,
      player,
    });
    if (!made.ok) throw new Error(made.reason);
    return made.etude.difficulty.score;
  }).sort((a, b) => a - b);
}

describe('the measure of difficulty', () => {
  test.each(ETUDE_KINDS.map(({ kind }) => [kind]))('rises from level to level in %s', (kind) => {
    const [first, second, third] = LEVELS.map((level) => scoresOf(kind, level)) as [
      readonly number[],
      readonly number[],
      readonly number[],
    ];
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
