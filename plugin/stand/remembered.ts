/// <reference lib="dom" />
/** Choices that survive a reload, kept in the reader's own browser. */
import { effect, type Signal, signal } from '@preact/signals';

/**
 * A signal whose value is kept under a name.
 * @param allows says whether a kept value is still one; anything else gives way to the default
 */
export function remembered<T>(name: string, usual: T, allows: (value: unknown) => boolean): Signal<T> {
  const kept = signal(read(name, usual, allows));
  effect(() => {
    try {
      localStorage.setItem(`bellhand.${name}`, JSON.stringify(kept.value));
    } catch {
      // A browser that keeps nothing still works until it is closed.
    }
  });
  return kept;
}

function read<T>(name: string, usual: T, allows: (value: unknown) => boolean): T {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(`bellhand.${name}`) ?? 'null');
    return value !== null && allows(value) ? (value as T) : usual;
  } catch {
    return usual;
  }
}
