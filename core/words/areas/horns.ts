/** What horns are called. */

/** Names of horns, without an article, to stand in a sentence. */
export interface HornWords {
  /** By the horn's id, but for natural horns on a crook of their own. English leaves them to the horn's label. */
  readonly names: ReadonlyMap<string, HornName>;
  /** @param key the crook's, as `keys` names it */
  onCrook(key: string): string;
}

/** @param key puts a key such as `Bb` or `high F` as `keys` names it */
export type HornName = (key: (name: string) => string) => string;
