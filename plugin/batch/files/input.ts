/** Files and standard input, read whole. */

import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import type { CommandLineWords } from '../../../core/index.ts';
import { Failure, systemReason } from '../failure.ts';
import { inputStream, isNotReady, pause, STANDARD } from '../output/streams.ts';

/** The largest file that is read, in bytes: the largest symphonies stay under a sixth of it. */
export const LARGEST_FILE = 128 * 1024 * 1024;

const PIECE = 65536;

/**
 * Reads a file, or standard input for `-`.
 * @throws {Failure} when it is missing, a folder, too large, or may not be read
 */
export function readWhole(path: string): Uint8Array {
  try {
    return path === STANDARD ? readAll(inputStream(), path) : readFrom(path);
  } catch (fault) {
    throw fault instanceof Failure
      ? fault
      : new Failure((words) => `${nameOf(path, words)}: ${systemReason(fault, words)}`);
  }
}

function readFrom(path: string): Uint8Array {
  const file = openSync(path, 'r');
  try {
    return readAll(file, path);
  } finally {
    closeSync(file);
  }
}

/** Reads to the end, however long a pipe lets it wait; never more than is allowed, however much there is. */
function readAll(file: number, path: string): Uint8Array {
  const about = fstatSync(file);
  if (about.isFile() && about.size > LARGEST_FILE) throw tooLarge(path);
  let bytes: Buffer = Buffer.allocUnsafe(about.isFile() ? about.size + 1 : PIECE);
  let length = 0;
  for (;;) {
    const count = readPiece(file, bytes, length);
    if (count === 0) return bytes.subarray(0, length);
    length += count;
    if (length > LARGEST_FILE) throw tooLarge(path);
    if (length === bytes.length) bytes = longer(bytes);
  }
}

/** The same bytes with as much room again behind them, if so much may be read. */
function longer(bytes: Buffer): Buffer {
  const roomy = Buffer.allocUnsafe(Math.min(2 * bytes.length, LARGEST_FILE + 1));
  bytes.copy(roomy);
  return roomy;
}

function readPiece(file: number, bytes: Buffer, at: number): number {
  for (;;) {
    try {
      return readSync(file, bytes, at, bytes.length - at, null);
    } catch (fault) {
      if (!isNotReady(fault)) throw fault;
      pause();
    }
  }
}

function tooLarge(path: string): Failure {
  const megabytes = LARGEST_FILE / 1048576;
  return new Failure((words) => words.faults.tooLarge(nameOf(path, words), megabytes));
}

function nameOf(path: string, { told }: CommandLineWords): string {
  return path === STANDARD ? told.standardInput : path;
}
