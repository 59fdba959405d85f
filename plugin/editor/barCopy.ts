/** The horn parts of one measure as plain data, which may be kept while the score changes. */

import { walkBars } from './barWalk.ts';
import type { HostMeasure, HostPart, HostRoot } from './hostApi.ts';
import { type BarWalk, isSameBar, isSameMeasure, type ScoreMeasure } from './scoreBar.ts';
import { measureOf } from './scoreWalk.ts';

export interface BarCopy {
  readonly measure: ScoreMeasure;
  /** Part by part. */
  readonly parts: readonly BarWalk[];
}

export function copyBar(
  root: HostRoot,
  measure: HostMeasure,
  measureIndex: number,
  parts: readonly HostPart[],
): BarCopy {
  return {
    measure: measureOf(measure, 'keep'),
    parts: walkBars(root, measure, measureIndex, parts, 'keep'),
  };
}

/** True where the user has written nothing in a part between two looks at a measure. @param part its place among the parts */
export function isSameCopy(one: BarCopy, other: BarCopy, part: number): boolean {
  return isSameMeasure(one.measure, other.measure) && isSameBar(one.parts[part]!, other.parts[part]!);
}
