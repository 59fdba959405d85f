/**
 * A list of what can be gone through. The build puts it in the place of what goes through an iterator in the plugin's
 * script: the script engines are slow at that.
 */
export function asList<T>(items: Iterable<T>): readonly T[] {
  return Array.isArray(items) ? items : Array.from(items);
}
