/** Walks the parts of the host's score, measure by measure. */
import { type Purpose, walkBars } from './barWalk.ts';
import type { HostMeasure, HostPart, HostRoot, HostScore } from './hostApi.ts';
import type { BarWalk, ScoreMeasure } from './scoreBar.ts';

export interface PartWalk {
  readonly part: HostPart;
  readonly measures: readonly ScoreMeasure[];
  /** By measure. */
  readonly bars: readonly BarWalk[];
}

/**
 * Walks some parts, to change them. Reads only; the time goes with their measures and not with the size of the score.
 * @param isWanted leaves out what other measures hold
 */
export function walkParts(
  root: HostRoot,
  score: HostScore,
  parts: readonly HostPart[],
  isWanted: (measure: HostMeasure) => boolean = () => true,
): readonly PartWalk[] {
  const measures: ScoreMeasure[] = [];
  const bars: BarWalk[][] = parts.map(() => []);
  for (let measure = score.firstMeasure; measure; measure = measure.nextMeasure) {
    const here = isWanted(measure) ? walkBars(root, measure, measures.length, parts, 'change') : null;
    measures.push(measureOf(measure, 'change'));
    bars.forEach((ofPart, i) => {
      ofPart.push(here ? here[i]! : NOTHING);
    });
  }
  return parts.map((part, i) => ({ part, measures, bars: bars[i]! }));
}

const NOTHING: BarWalk = { chords: [], rests: [], texts: [] };

/** Where a measure begins and ends, and how it counts. */
export function measureOf(measure: HostMeasure, purpose: Purpose): ScoreMeasure {
  const tick = measure.firstSegment ? measure.firstSegment.tick : 0;
  const { numerator, denominator, ticks } = measure.timesigActual;
  const next = measure.nextMeasure?.firstSegment;
  return {
    tick,
    endTick: next ? next.tick : tick + ticks,
    numerator,
    denominator,
    isIrregular: measure.irregular === true,
    numberOffset: Number(measure.noOffset) || 0,
    element: purpose === 'change' ? measure : null,
  };
}
