/** Whether what was built last is what would be built now. */
import type { Stats } from 'node:fs';
import { readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const MADE_OF = ['core', 'plugin', 'build', 'package.json', 'package-lock.json', 'tsconfig.json', 'LICENSE'];
const MADE = [
  ...['bellhand', 'bellhand.js', 'bellhand-program.js', 'bellhand-worker.js'],
  ...['core', 'core.d.ts', 'core.js'],
];
/** Not made where the engraver is not installed. */
const PAGE = 'bellhand.html';

/** True when all that is shipped is in `dist`, and each file newer than any that may go into it. */
export async function isUpToDate(root = ROOT): Promise<boolean> {
  const sources = await Promise.all(MADE_OF.map((name) => at(join(root, name))));
  const made = await Promise.all([...MADE, PAGE].map((name) => at(join(root, 'dist', name))));
  if (made.some((entries, i) => entries.length === 0 && i < MADE.length)) return false;
  const files = made.flat().filter((entry) => entry.isFile());
  // A folder changes when a file in it comes or goes.
  const lastChange = Math.max(...sources.flat().map(({ mtimeMs }) => mtimeMs));
  return files.every(({ mtimeMs }) => mtimeMs > lastChange);
}

/** What lies at a path and below it. */
async function at(path: string): Promise<readonly Stats[]> {
  const own = await stat(path).catch(() => null);
  if (!own) return [];
  const below = own.isDirectory() ? await readdir(path, { recursive: true }) : [];
  return [own, ...(await Promise.all(below.map((name) => stat(join(path, name)))))];
}
