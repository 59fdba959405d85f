/** Fair timing: everything once to warm up, then turn about, so that a slow stretch of the machine hits all alike. */

type Things = readonly (() => unknown)[];

/**
 * How long each of several things takes: its quickest turn, since what others on the machine take away is no part of it.
 * @param rounds how often each is timed
 * @returns in milliseconds, in the order of `things`
 */
export function quickestMilliseconds(things: Things, rounds: number): number[] {
  return turnsOf(things, rounds).map((turns) => Math.min(...turns));
}

/**
 * How many times as long as another one thing takes: the median of what each turn says. For things so long that one turn
 * seldom meets quick moments of the machine alone.
 * @param rounds odd
 * @returns the ratio, and the quickest turn of the other in milliseconds
 */
export function medianRatio(
  thing: () => unknown,
  other: () => unknown,
  rounds: number,
): { readonly ratio: number; readonly other: number } {
  const [turns, others] = turnsOf([thing, other], rounds) as [number[], number[]];
  const ratios = turns.map((turn, i) => turn / others[i]!).sort((a, b) => a - b);
  return { ratio: ratios[Math.floor(rounds / 2)]!, other: Math.min(...others) };
}

/** Every turn of each thing, in milliseconds. */
function turnsOf(things: Things, rounds: number): number[][] {
  for (const thing of things) thing();
  const times = things.map((): number[] => []);
  for (let round = 0; round < rounds; round++) {
    things.forEach((thing, i) => {
      const start = performance.now();
      thing();
      times[i]!.push(performance.now() - start);
    });
  }
  return times;
}
