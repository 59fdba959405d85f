/**
 * Takes WeakMap's place in the plugin's script. The script engines of Qt 5.15 and Qt 6 touch a key after it was
 * collected and end the whole editor; a test shows it in both. Here a key carries its values itself, so they go with it.
 */
class KeyedWeakMap<K extends object, V> {
  private readonly slot = Symbol('weak');

  get(key: K): V | undefined {
    return (key as Slots<V>)[this.slot];
  }

  has(key: K): boolean {
    return this.slot in key;
  }

  set(key: K, value: V): this {
    // Not enumerable, so that a copy of the key does not take the value along.
    Object.defineProperty(key, this.slot, { value, configurable: true, writable: true });
    return this;
  }

  delete(key: K): boolean {
    return delete (key as Slots<V>)[this.slot];
  }
}

interface Slots<V> {
  [slot: symbol]: V | undefined;
}

export { KeyedWeakMap as WeakMap };
