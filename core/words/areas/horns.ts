/** What horns are called. */

/** Names of horns, without an article, to stand in a sentence. */
export interface HornWords {
  /** By the horn's id, but for natural horns on a crook of their own. English leaves them to the horn's label. */
  readonly names: { readonly [id: string]: string };
  /** @param key the crook's, as `keys` names it */
  onCrook(key: string): string;
}
