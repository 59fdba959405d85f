/** Places on the disk, told apart by what is there and not by name: a file has many names. */
import { realpathSync, type Stats, statSync } from 'node:fs';
import { resolve } from 'node:path';

/** What is at a path; `null` when there is nothing, or when using it will say better why not. */
export function whatIsAt(path: string): Stats | null {
  try {
    return statSync(path);
  } catch {
    return null;
  }
}

/** One name for one place, however it is reached. */
export function identityOf(path: string): string {
  const known = whatIsAt(path);
  if (known?.isFile()) return `${known.dev}/${known.ino}`;
  try {
    return realpathSync(path);
  } catch {
    return resolve(path);
  }
}
