/** The same items by onset; items with one onset stay in their order, which the script engine's own sort does not promise. */
export function inPlayingOrder<T>(items: T[], onset: (item: T) => number): T[] {
  let isSorted = true;
  for (let i = 1; i < items.length && isSorted; i++) isSorted = onset(items[i - 1]!) <= onset(items[i]!);
  if (isSorted) return items;
  return items
    .map((item, order) => ({ item, order, onset: onset(item) }))
    .sort((a, b) => a.onset - b.onset || a.order - b.order)
    .map(({ item }) => item);
}
