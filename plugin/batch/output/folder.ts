/** Folders for results. */
import { mkdirSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { Failure, systemReason } from '../failure.ts';
import { whatIsAt } from './place.ts';

/**
 * Makes a folder, and those above it that are not there yet.
 * @throws {Failure} when it cannot be made, or a file stands in its place
 */
export function makeFolder(path: string): void {
  try {
    makeEach(resolve(path));
  } catch (fault) {
    throw new Failure((words) => words.faults.folderNotMade(path, systemReason(fault, words)));
  }
}

/** One by one: Node's own way of making several never ends where a system says that a folder's parent is not there. */
function makeEach(path: string): void {
  const known = whatIsAt(path);
  if (known?.isDirectory()) return;
  if (known) throw Object.assign(new Error(), { code: 'ENOTDIR' });
  const above = dirname(path);
  if (above !== path) makeEach(above);
  mkdirSync(path);
}
