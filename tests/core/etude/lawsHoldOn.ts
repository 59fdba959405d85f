/** The laws of études over many seeds: of every kind, at every level. Horns stand in test files of their own, which run side by side. */
import { describe, expect, test } from 'vitest';
import { composeEtude } from '../../../core/etude/compose.ts';
import { printKey } from '../../../core/etude/key.ts';
import { ETUDE_KINDS } from '../../../core/etude/kinds.ts';
import { brokenLaws } from '../../../core/etude/laws.ts';
import { keysOf, LEVELS } from '../../../core/etude/levels.ts';
import type { Horn } from '../../../core/horn/horn.ts';
import { DEFAULT_SETTINGS } from '../../../core/part/settings.ts';
import { caseOf } from './lawCase.ts';

const SEEDS = 200;
const SEEDS_BY_CROOK = 20;
const BARS = [8, 12, 16] as const;

/** Every law, on each of some horns. */
export function lawsHoldOn(horns: readonly Horn[]): void {
  describe.each(horns.map((horn) => [horn.id, horn] as const))('%s', (_, horn) => {
    const player = { ...DEFAULT_SETTINGS, horn };
    // These make so few notes by hand that they must leap and repeat themselves.
    const isScant = horn.natural || horn.id === 'single-bflat';

    // Crooks differ only in how far the hand takes a harmonic down.
    const seeds = horn.natural && horn.id !== 'natural' ? SEEDS_BY_CROOK : SEEDS;

    test.each(ETUDE_KINDS.map((kind) => [kind.kind, kind] as const))(
      `${seeds} seeds of %s keep every law at every level`,
      (name, kind) => {
        const broken: string[] = [];
        let composed = 0;
        for (const level of LEVELS) {
          const keys = keysOf(level, horn.natural);
          for (let seed = 0; seed < seeds; seed++) {
            const key = keys[seed % keys.length]!;
            const bars = BARS[seed % BARS.length]!;
            const made = composeEtude({
              kind: name,
              key,
              level,
              bars,
              tempo: null,
              low: null,
              high: null,
              seed,
              player,
            });
            if (!made.ok) {
              if (!/: choose /.test(made.reason)) broken.push(made.reason);
              continue;
            }
            composed += 1;
            const { etude } = made;
            const it = caseOf(kind, key, level, etude.bars, etude.tempo, player);
            for (const { id } of brokenLaws({ ...it, isScant }))
              broken.push(`${id}: level ${level}, ${printKey(key)}, ${bars} bars, seed ${seed}`);
          }
        }
        expect(broken).toEqual([]);
        // A horn with few tones in tune has no bends, or no tonic in some keys.
        if (!isScant && name !== 'bend') expect(composed).toBe(seeds * LEVELS.length);
        else if (name !== 'bend') expect(composed).toBeGreaterThan(0.5 * seeds * LEVELS.length);
      },
      60_000,
    );
  });
}
