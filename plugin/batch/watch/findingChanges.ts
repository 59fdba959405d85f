/** What is new and what is gone between two checks of the same score. */
import type { FindingResult } from '../../../core/index.ts';

export interface FindingChanges {
  readonly added: readonly FindingResult[];
  readonly gone: readonly FindingResult[];
}

/**
 * Compares findings in score order. A finding that only moved because bars were put in or taken out before it is the
 * same finding: what counts is what it says of which note, and in which order.
 */
export function findingChanges(
  before: readonly FindingResult[],
  after: readonly FindingResult[],
): FindingChanges {
  const [a, b] = [before.map(identity), after.map(identity)];
  let start = 0;
  while (start < a.length && start < b.length && a[start] === b[start]) start += 1;
  let [endA, endB] = [a.length, b.length];
  while (endA > start && endB > start && a[endA - 1] === b[endB - 1]) {
    endA -= 1;
    endB -= 1;
  }
  const kept = commonOrder(a.slice(start, endA), b.slice(start, endB));
  const keptA = new Set(kept.map(([i]) => i + start));
  const keptB = new Set(kept.map(([, j]) => j + start));
  const isKept = (i: number, end: number, those: ReadonlySet<number>) =>
    i < start || i >= end || those.has(i);
  return {
    added: after.filter((_, j) => !isKept(j, endB, keptB)),
    gone: before.filter((_, i) => !isKept(i, endA, keptA)),
  };
}

/** Everything but the bar. */
function identity({ id, severity, part, beat, written, message }: FindingResult): string {
  return [id, severity, part, beat, written, message].join('\n');
}

/** More pairs than this are not worth comparing one by one: the score has become another. */
const MOST_PAIRS = 4_000_000;

/** The longest run of equal entries in the same order in both lists, as pairs of indexes. */
function commonOrder(a: readonly string[], b: readonly string[]): readonly (readonly [number, number])[] {
  if (a.length * b.length > MOST_PAIRS) return [];
  const lengths = Array.from({ length: a.length + 1 }, () => new Uint32Array(b.length + 1));
  for (let i = a.length - 1; i >= 0; i--) {
    for (let j = b.length - 1; j >= 0; j--) {
      lengths[i]![j] =
        a[i] === b[j] ? lengths[i + 1]![j + 1]! + 1 : Math.max(lengths[i + 1]![j]!, lengths[i]![j + 1]!);
    }
  }
  const pairs: [number, number][] = [];
  for (let i = 0, j = 0; i < a.length && j < b.length; ) {
    if (a[i] === b[j]) pairs.push([i++, j++]);
    else if (lengths[i + 1]![j]! >= lengths[i]![j + 1]!) i += 1;
    else j += 1;
  }
  return pairs;
}
