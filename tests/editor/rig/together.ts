/** What is asked for at the same time is done in one go: an editor takes longer to start than to do what tests ask of it. */

/** How long a call waits for others to go along with. Calls that come later go by themselves. */
const MOMENT_MS = 50;

/**
 * Makes a function that does one thing of one that does many: calls that follow one another within a moment are handed
 * over together, in their order.
 * @param doAll what became of each, in the same order; what it throws comes to all of them
 */
export function together<In, Out>(
  doAll: (all: readonly In[]) => Promise<readonly Promise<Out>[]>,
): (one: In) => Promise<Out> {
  let waiting: { one: In; resolve: (out: Promise<Out>) => void; reject: (error: unknown) => void }[] = [];
  let timer: NodeJS.Timeout | undefined;
  const go = async () => {
    const calls = waiting;
    waiting = [];
    try {
      const made = await doAll(calls.map(({ one }) => one));
      calls.forEach(({ resolve }, i) => {
        resolve(made[i]!);
      });
    } catch (error) {
      for (const { reject } of calls) reject(error);
    }
  };
  return (one) =>
    new Promise((resolve, reject) => {
      waiting.push({ one, resolve, reject });
      clearTimeout(timer);
      timer = setTimeout(go, MOMENT_MS);
    });
}
