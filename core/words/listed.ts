/** `a`, `a and b`, `a, b and c`. @param last the word before the last: `and`, `or` */
export function listed(items: readonly string[], last: string): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${last} ${items[items.length - 1]}`;
}
