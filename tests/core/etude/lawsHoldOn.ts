/** The laws of études over many seeds: of every kind, at every level. Horns stand in test files of their own, which run side by side. */
import { describe, expect, test } from 'vitest';
import { composeEtude } from '../../../core/etude/compose.ts';
import type { Etude } from '../../../core/etude/etude.ts';
import { type Key, printKey } from '../../../core/etude/key.ts';
import { ETUDE_KINDS, type EtudeKind } from '../../../core/etude/kinds.ts';
import { brokenLaws } from '../../../core/etude/laws.ts';
import { keysOf, LEVELS, type Level } from '../../../core/etude/levels.ts';
import type { Horn } from '../../../core/horn/horn.ts';
import { DEFAULT_SETTINGS } from '../../../core/part/settings.ts';
import { caseOf } from './lawCase.ts';

export const SEEDS = 200;
const SEEDS_BY_CROOK = 20;
const BARS = [8, 12, 16] as const;
/** On this horn only these keys of the levels have notes enough that the hand makes surely. */
const KEYS_WITH_NOTES: { readonly [horn: string]: readonly string[] } = {
  'single-bflat': ['C major', 'G major', 'G minor', 'E♭ major', 'C minor', 'A♭ major'],
};

/** Every law, on each of some horns. @param seen is told of every étude */
export function lawsHoldOn(horns: readonly Horn[], seen?: (etude: Etude) => void): void {
  describe.each(horns.map((horn) => [horn.id, horn] as const))('%s', (_, horn) => {
    // Crooks differ only in how far the hand takes a harmonic down.
    const seeds = horn.natural && horn.id !== 'natural' ? SEEDS_BY_CROOK : SEEDS;

    test.each(ETUDE_KINDS.map((kind) => [kind.kind, kind] as const))(
      `${seeds} seeds of %s keep every law at every level`,
      (name, kind) => {
        const player = { ...DEFAULT_SETTINGS, horn };
        // These make so few notes by hand that they must leap and repeat themselves.
        const isScant = horn.id === 'single-bflat' || (horn.natural && 'isByPairs' in kind);
        const broken: string[] = [];
        let composed = 0;
        for (const level of LEVELS) {
          const keys = keysFor(horn, level, name);
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
            seen?.(made.etude);
            const it = caseOf(kind, key, level, made.etude.bars, made.etude.tempo, player);
            for (const { id } of brokenLaws({ ...it, isScant }))
              broken.push(`${id}: level ${level}, ${printKey(key)}, ${bars} bars, seed ${seed}`);
          }
        }
        expect(broken).toEqual([]);
        // A horn whose stopping valve is its only way down has no bends, and one with few tones no scale.
        if (hasAll(horn, name)) expect(composed).toBe(seeds * LEVELS.length);
      },
      60_000,
    );
  });
}

function hasAll(horn: Horn, kind: EtudeKind): boolean {
  return kind !== 'bend' && !(kind === 'scale' && horn.id in KEYS_WITH_NOTES);
}

function keysFor(horn: Horn, level: Level, kind: EtudeKind): readonly Key[] {
  const keys = keysOf(level, horn.natural);
  const named = KEYS_WITH_NOTES[horn.id];
  return named && kind !== 'bend' ? keys.filter((key) => named.includes(printKey(key))) : keys;
}
