/**
 * Sorts a list in place and keeps the order of equals, which the script engines' own sort does not. The build puts it in
 * the place of every `list.sort(compare)` of the plugin's script.
 */
export function stableSort<T>(list: T[], compare: (a: T, b: T) => number = byText): T[] {
  let from = list.slice();
  let to = list.slice();
  // Runs of twice the length are merged from pairs of runs, until one run is left.
  for (let run = 1; run < list.length; run *= 2) {
    for (let start = 0; start < list.length; start += 2 * run) merge(from, to, start, run, compare);
    [from, to] = [to, from];
  }
  for (let i = 0; i < list.length; i++) list[i] = from[i]!;
  return list;
}

function merge<T>(
  from: readonly T[],
  to: T[],
  start: number,
  run: number,
  compare: (a: T, b: T) => number,
): void {
  const middle = Math.min(start + run, from.length);
  const end = Math.min(middle + run, from.length);
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
