/**
 * Sorts a list in place and keeps the order of equals, which the script engines' own sort does not. The build puts it in
 * the place of every `list.sort(compare)` of the plugin's script.
 */
export function stableSort<T>(list: T[], compare: (a: T, b: T) => number = byText): T[] {
  // Music comes nearly in order: what is in order already is one run.
  let starts = runStarts(list, compare);
  if (starts.length === 1) return list;
  let from = list.slice();
  let to = list.slice();
  while (starts.length > 1) {
    const merged: number[] = [];
    for (let run = 0; run < starts.length; run += 2) {
      const start = starts[run]!;
      const end = starts[run + 2] ?? list.length;
      merge(from, to, start, starts[run + 1] ?? end, end, compare);
      merged.push(start);
    }
    starts = merged;
    [from, to] = [to, from];
  }
  for (let i = 0; i < list.length; i++) list[i] = from[i]!;
  return list;
}

/** Where a new run begins: after each place where a lesser one follows. */
function runStarts<T>(list: readonly T[], compare: (a: T, b: T) => number): number[] {
  const starts = [0];
  for (let i = 1; i < list.length; i++) if (compare(list[i - 1]!, list[i]!) > 0) starts.push(i);
  return starts;
}

/** Merges the run from `start` with the one from `middle`, which ends before `end`. */
function merge<T>(
  from: readonly T[],
  to: T[],
  start: number,
  middle: number,
  end: number,
  compare: (a: T, b: T) => number,
): void {
  let left = start;
  let right = middle;
  for (let i = start; i < end; i++) {
    const isLeft = left < middle && (right >= end || compare(from[left]!, from[right]!) <= 0);
    to[i] = isLeft ? from[left++]! : from[right++]!;
  }
}

/** What a sort without a comparison compares. */
function byText(a: unknown, b: unknown): number {
  const one = String(a);
  const other = String(b);
  return one < other ? -1 : one > other ? 1 : 0;
}
