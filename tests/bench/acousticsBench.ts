/** A whole closing curve, 20 steps of 16 harmonics, for the open F horn and for the longest tube. */
import { closingCurve } from '../../core/acoustics/index.ts';
import { tubesOf } from '../../core/horn/horn.ts';
import { F_SIDE } from '../../core/horn/sides.ts';
import type { BenchRow } from './benchRow.ts';
import { quickestMilliseconds } from './timing.ts';

const MOST_MILLISECONDS = 300;
const STEPS = 20;
const ROUNDS = 9;

export function acousticsBench(): BenchRow[] {
  const tubes = tubesOf(F_SIDE);
  return [tubes[0]!, tubes[tubes.length - 1]!].map((tube) => {
    const [milliseconds] = quickestMilliseconds([() => closingCurve(tube, { steps: STEPS })], ROUNDS);
    return {
      name: `closing curve, ${STEPS} steps of 16 harmonics, F side ${tube.combination.valves}`,
      value: milliseconds!,
      unit: 'ms',
      baseline: '',
      limit: `at most ${MOST_MILLISECONDS} ms`,
      ok: milliseconds! <= MOST_MILLISECONDS,
    };
  });
}
