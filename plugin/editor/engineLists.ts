/**
 * What the build puts in the place of what goes through an iterator in the plugin's script: the script engines are slow at
 * that.
 */

/** A list of what can be gone through. */
export function asList(items: Iterable<unknown>): readonly unknown[] {
  if (Array.isArray(items)) return items;
  // The engines' own `from` makes two of a character beyond 16 bits.
  if (typeof items === 'string') return items.match(/[\uD800-\uDBFF][\uDC00-\uDFFF]|[\s\S]/g) || [];
  return Array.from(items);
}

/** The same list, put together of others: what no entry was ever put at is an entry, as in `[...a, ...b]`. */
export function gapless(list: unknown[]): unknown[] {
  for (let i = 0; i < list.length; i++) if (list[i] === undefined) list[i] = undefined;
  return list;
}
