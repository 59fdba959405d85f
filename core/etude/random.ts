/** Chance with a seed: the same seed always makes the same étude, on every machine. */

/** A number from 0 (included) to 1 (excluded), a new one at every call. */
export type Random = () => number;

/** The largest seed. */
export const HIGHEST_SEED = 4294967295;

/**
 * A source of chance that depends on the seed alone.
 * @param seed an integer from 0 to HIGHEST_SEED
 * @source from memory: the 32-bit mixing of the public-domain generator known as mulberry32
 */
export function seededRandom(seed: number): Random {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/**
 * A source for one piece of music: the first draws of neighbouring seeds lie close together, and are left out.
 * @param seed an integer from 0 to HIGHEST_SEED
 */
export function drawFrom(seed: number): Random {
  const random = seededRandom(seed);
  random();
  return random;
}

/** One of several things, each as likely as the others. */
export function pick<T>(random: Random, things: readonly T[]): T {
  return things[Math.floor(random() * things.length)]!;
}

/** The index of one of several weights, each as likely as it weighs; −1 when nothing weighs anything. */
export function pickWeighted(random: Random, weights: readonly number[]): number {
  let total = 0;
  for (let i = 0; i < weights.length; i++) total += weights[i]!;
  if (!(total > 0)) return -1;
  let left = random() * total;
  for (let i = 0; i < weights.length; i++) {
    left -= weights[i]!;
    if (left < 0) return i;
  }
  return weights.length - 1;
}
