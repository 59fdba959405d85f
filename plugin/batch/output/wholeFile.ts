/** Bytes, in pieces, into a file, whole: a reader of the target sees the old file or the new one, never half of one. */
import { randomBytes } from 'node:crypto';
import {
  chmodSync,
  chownSync,
  closeSync,
  fsyncSync,
  ftruncateSync,
  openSync,
  readFileSync,
  renameSync,
  type Stats,
  statSync,
  unlinkSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { lengthOf } from '../../musicxml/bytes/files.ts';
import { Failure } from '../failure.ts';
import { writeAll } from './streams.ts';

/** What a file loses when it gives way to a new one that could not be given it. */
export type Loss = 'owner' | 'group' | 'hardLinks';

/** Writes a file that is not there yet, by way of one beside it that takes its name when complete. */
export function createFile(path: string, pieces: readonly Uint8Array[]): void {
  const beside = writeBeside(path, pieces);
  renameOrRemove(beside, path);
}

/** Writes to what is no plain file: a device, a pipe. */
export function writeToDevice(path: string, pieces: readonly Uint8Array[]): void {
  writeTo(openSync(path, 'w'), pieces);
}

/**
 * Replaces a file. Its access rights stay, and its owner and hard links, for which it is written into where it stands if
 * a new file could not have them.
 * @param path the file itself, not a link to it
 * @returns what could not be kept
 */
export function replaceFile(path: string, pieces: readonly Uint8Array[]): readonly Loss[] {
  const known = statSync(path);
  const beside = writeBeside(path, pieces);
  let losses: readonly Loss[];
  try {
    losses = lossesOf(beside, known);
    chmodSync(beside, known.mode & 0o7777);
  } catch (fault) {
    unlinkSync(beside);
    throw fault;
  }
  if (losses.length > 0 && mayWrite(path)) {
    unlinkSync(beside);
    overwrite(path, pieces);
    return [];
  }
  renameOrRemove(beside, path);
  return losses;
}

/** Gives a new file the owner of a known one, and says what it cannot have. */
function lossesOf(beside: string, { uid, gid, nlink }: Stats): readonly Loss[] {
  const losses: Loss[] = nlink > 1 ? ['hardLinks'] : [];
  const made = statSync(beside);
  if (made.gid !== gid && !isGiven(() => chownSync(beside, made.uid, gid))) losses.push('group');
  if (made.uid !== uid && !isGiven(() => chownSync(beside, uid, gid))) losses.push('owner');
  return losses;
}

function isGiven(give: () => void): boolean {
  try {
    give();
    return true;
  } catch {
    return false;
  }
}

function mayWrite(path: string): boolean {
  return isGiven(() => closeSync(openSync(path, 'r+')));
}

/** Writes into a file where it stands; a copy of what it held lies beside it until that has come to a good end. */
function overwrite(path: string, pieces: readonly Uint8Array[]): void {
  const before = readFileSync(path);
  const copy = writeBeside(path, [before]);
  try {
    fill(path, pieces);
  } catch (fault) {
    try {
      fill(path, [before]);
    } catch {
      throw new Failure(({ faults }) => faults.notPutBack(path, copy));
    }
    unlinkSync(copy);
    throw fault;
  }
  unlinkSync(copy);
}

/** Shortens last, so that putting the old content back needs no more room than there was. */
function fill(path: string, pieces: readonly Uint8Array[]): void {
  const file = openSync(path, 'r+');
  try {
    writeAll(file, pieces);
    ftruncateSync(file, lengthOf(pieces));
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** A new file in the same folder, so on the same disk: only there is a rename one step. */
function writeBeside(path: string, pieces: readonly Uint8Array[]): string {
  const beside = join(dirname(path), `.bellhand-${randomBytes(6).toString('hex')}.tmp`);
  const file = openSync(beside, 'wx', 0o666);
  try {
    writeTo(file, pieces);
  } catch (fault) {
    unlinkSync(beside);
    throw fault;
  }
  return beside;
}

function renameOrRemove(beside: string, path: string): void {
  try {
    renameSync(beside, path);
  } catch (fault) {
    unlinkSync(beside);
    throw fault;
  }
}

function writeTo(file: number, pieces: readonly Uint8Array[]): void {
  try {
    writeAll(file, pieces);
    try {
      fsyncSync(file);
    } catch {
      // Pipes and devices have nothing to flush to a disk.
    }
  } finally {
    closeSync(file);
  }
}
