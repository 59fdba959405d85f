/** Fair timing: everything once to warm up, then turn about, and the median of each. */

/**
 * Times several things against one another in the same run.
 * @param rounds how often each is timed, turn about, so that a slow stretch of the machine hits all alike; odd
 * @returns medians in milliseconds, in the order of `things`
 */
export function medianMilliseconds(things: readonly (() => unknown)[], rounds: number): number[] {
  for (const thing of things) thing();
  const times = things.map((): number[] => []);
  for (let round = 0; round < rounds; round++) {
    things.forEach((thing, i) => {
      const start = performance.now();
      thing();
      times[i]!.push(performance.now() - start);
    });
  }
  return times.map((list) => list.sort((a, b) => a - b)[Math.floor(list.length / 2)]!);
}
