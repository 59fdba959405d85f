/** An étude as its laws look at it, whoever wrote it. */
import type { Bar } from '../../../core/etude/bar.ts';
import { etudePassage } from '../../../core/etude/etudePassage.ts';
import type { Case } from '../../../core/etude/laws.ts';
import { type Level, planFor } from '../../../core/etude/levels.ts';
import { bendsBetween } from '../../../core/etude/palette.ts';
import { transpositionOf } from '../../../core/etude/transposition.ts';
import { DEFAULT_SETTINGS } from '../../../core/part/settings.ts';
import { examine } from '../../../core/rules/examine.ts';

/** Some bars, examined here and now: what the composer thought of them does not count. */
export function caseOf(
  kind: Case['kind'],
  key: Case['key'],
  level: Level,
  bars: readonly Bar[],
  tempo: number,
  player = DEFAULT_SETTINGS,
): Case {
  const isNatural = player.horn.natural;
  const plan = planFor(level, isNatural);
  const transposition = transpositionOf(player);
  return {
    kind,
    key,
    level,
    plan,
    bars,
    quarterSeconds: 60 / (tempo * bars[0]!.meter.beatQuarters),
    handSeconds: Math.max(plan.handSeconds, player.handSeconds),
    bends: bendsBetween(plan.low, plan.high, key, player, transposition),
    isScant: false,
    isNatural,
    isDaring: false,
    examination: examine(etudePassage(bars, transposition, tempo), player),
  };
}
