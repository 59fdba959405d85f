/** Files read whole and written whole: a reader of the target sees the old file or the new one, never half of one. */
import { randomBytes } from 'node:crypto';
import {
  chmodSync,
  closeSync,
  fsyncSync,
  openSync,
  realpathSync,
  renameSync,
  statSync,
  unlinkSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { Failure, systemReason } from '../failure.ts';
import { isStandardOutput, printBytes, writeAll } from './streams.ts';

/**
 * Writes a file, or standard output for `-`, by way of a new one beside it that takes its name when complete. A file that is replaced keeps its
 * access rights, a link keeps pointing to it; what is no plain file (a device, a pipe) is written to directly.
 * @throws {Failure} when it cannot be written; the target is then as it was
 */
export function writeWhole(path: string, bytes: Uint8Array): void {
  if (isStandardOutput(path)) {
    printBytes(bytes);
    return;
  }
  try {
    const known = statSync(path, { throwIfNoEntry: false });
    if (known?.isDirectory()) throw Object.assign(new Error(), { code: 'EISDIR' });
    if (known && !known.isFile()) writeTo(openSync(path, 'w'), bytes);
    else replace(known ? realpathSync(path) : path, bytes, known ? known.mode & 0o7777 : null);
  } catch (fault) {
    const code = (fault as NodeJS.ErrnoException).code;
    const reason = code === 'ENOENT' ? 'its folder does not exist: make it first' : systemReason(fault);
    throw new Failure(`${path}: cannot be written: ${reason}`);
  }
}

function replace(path: string, bytes: Uint8Array, mode: number | null): void {
  // Same folder, so same disk: only there is a rename one step.
  const beside = join(
    dirname(path),
    `.${basename(path).slice(0, 200)}.${randomBytes(6).toString('hex')}.tmp`,
  );
  const file = openSync(beside, 'wx', 0o666);
  try {
    if (mode !== null) chmodSync(beside, mode);
    writeTo(file, bytes);
    renameSync(beside, path);
  } catch (fault) {
    unlinkSync(beside);
    throw fault;
  }
}

function writeTo(file: number, bytes: Uint8Array): void {
  try {
    writeAll(file, bytes);
    try {
      fsyncSync(file);
    } catch {
      // Pipes and devices have nothing to flush to a disk.
    }
  } finally {
    closeSync(file);
  }
}
