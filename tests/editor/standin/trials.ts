/** What the script engines get wrong in plain scripts and must get right in ours. */

/** The script engine has it always. */
declare function gc(): void;

interface A {
  a: number;
}
interface B {
  b: number;
}

/** The first of several destructured parameters, captured. */
function captured({ a }: A, { b }: B, c: number): number[] {
  return [1].map(() => a).concat(b, c);
}
const arrow = (z: number, { a }: A, y: number, { b }: B) => [0].map((x) => [x, z, a, y, b]);

/** Keys that nobody holds any more, with values that a collected key used to take down the engine with. */
function weakKeys(): number {
  const map = new WeakMap<object, number>();
  for (let i = 0; i < 400; i++) {
    map.set({ i }, i);
    if (i % 40 === 0) gc();
    const key = { j: i };
    if (map.get(key) !== undefined) return -1;
    map.set(key, i);
    if (map.get(key) !== i) return -1;
  }
  return 400;
}

/** Many equals, in the order they came. */
function equalsInOrder(): boolean {
  const items = Array.from({ length: 500 }, (_, i) => ({ key: i % 3, i }));
  items.sort((one, other) => one.key - other.key);
  return items.every((item, i) => i === 0 || item.key > items[i - 1]!.key || item.i > items[i - 1]!.i);
}

export function trials(): unknown {
  return {
    captured: captured({ a: 1 }, { b: 2 }, 3),
    arrow: arrow(1, { a: 2 }, 3, { b: 4 }),
    weakKeys: weakKeys(),
    equalsInOrder: equalsInOrder(),
  };
}
