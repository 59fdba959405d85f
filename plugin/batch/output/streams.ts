/**
 * The one way out to standard output and standard error. What is written arrives whole, whatever stands at the other end:
 * a slow pipe is waited for, a reader who left is let go quietly, and a full disk is said in a sentence.
 */
import { fstatSync, statSync, writeSync } from 'node:fs';
import { isatty } from 'node:tty';
import { lengthOf } from '../../musicxml/bytes/files.ts';
import { Failure, systemReason } from '../failure.ts';
import { printable } from './printable.ts';

/** The path that stands for standard input or standard output. */
export const STANDARD = '-';

/** Where a run reads and prints, as the descriptors of open files. */
export interface Streams {
  readonly input: number;
  readonly output: number;
  readonly error: number;
}

/** @source POSIX.1-2017, `unistd.h`: STDIN_FILENO, STDOUT_FILENO, STDERR_FILENO */
export const STANDARD_STREAMS: Streams = { input: 0, output: 1, error: 2 };

let streams = STANDARD_STREAMS;
let isReaderGone = false;
let isMessageLost = false;

/** From here on a new run reads and prints there. */
export function useStreams(those: Streams): void {
  streams = those;
  isReaderGone = false;
  isMessageLost = false;
}

/** The descriptor that standard input is read from. */
export function inputStream(): number {
  return streams.input;
}

/** True once nobody reads standard output any more, so that more of it is in vain. */
export function hasReaderLeft(): boolean {
  return isReaderGone;
}

/** True when a line for standard error could not be written: its place is full, say. */
export function wasMessageLost(): boolean {
  return isMessageLost;
}

/**
 * Writes lines to standard output, each made printable and ended.
 * @throws {Failure} when they cannot be written
 */
export function printLines(lines: readonly string[]): void {
  printBytes([bytesOf(lines)]);
}

/**
 * Writes bytes to standard output as they are.
 * @param pieces the bytes, one piece after the other
 * @throws {Failure} when they cannot be written
 */
export function printBytes(pieces: readonly Uint8Array[]): void {
  if (isReaderGone) return;
  try {
    writeAll(streams.output, pieces);
  } catch (fault) {
    if (isLeaving(fault)) isReaderGone = true;
    else throw new Failure((words) => words.faults.outputNotWritten(systemReason(fault, words)));
  }
}

/** Writes messages to standard error, one a line, each under the program's name. Never throws: there is nowhere to tell. */
export function warnLines(messages: readonly string[]): void {
  sendToError(bytesOf(messages.map((message) => `bellhand: ${message}`)));
}

/** Writes to standard error as it is, for what draws on a terminal. */
export function drawOnError(text: string): void {
  sendToError(Buffer.from(text));
}

/** True when a person watches standard error. */
export function isErrorWatched(): boolean {
  return isatty(streams.error);
}

/** True for `-` and for any other name of the place where standard output goes, such as `/dev/stdout`. */
export function isStandardOutput(path: string): boolean {
  if (path === STANDARD) return true;
  try {
    const [there, here] = [statSync(path), fstatSync(streams.output)];
    return there.dev === here.dev && there.ino === here.ino;
  } catch {
    // Nothing there yet, or standard output is closed.
    return false;
  }
}

/** So many bytes of small pieces go out at a time. */
const BLOCK_BYTES = 262_144;

/**
 * Writes all of it, waiting where the other end is not ready.
 * @param pieces the bytes, one piece after the other
 */
export function writeAll(file: number, pieces: readonly Uint8Array[]): void {
  const block = Buffer.allocUnsafe(Math.min(BLOCK_BYTES, lengthOf(pieces)));
  let held = 0;
  for (const piece of pieces) {
    if (held + piece.length > block.length) {
      writePiece(file, block.subarray(0, held));
      held = 0;
    }
    if (piece.length > block.length) writePiece(file, piece);
    else {
      block.set(piece, held);
      held += piece.length;
    }
  }
  writePiece(file, block.subarray(0, held));
}

function writePiece(file: number, bytes: Uint8Array): void {
  for (let done = 0; done < bytes.length; ) {
    try {
      done += writeSync(file, bytes, done);
    } catch (fault) {
      if (!isNotReady(fault)) throw fault;
      pause();
    }
  }
}

/** True for a fault that only says "later": the other end of a pipe that somebody made not to wait. */
export function isNotReady(fault: unknown): boolean {
  const code = (fault as NodeJS.ErrnoException).code;
  return code === 'EAGAIN' || code === 'EINTR';
}

const PAUSE_MS = 2;
const clock = new Int32Array(new SharedArrayBuffer(4));

/** Sleeps a little, so that waiting costs nothing. */
export function pause(): void {
  Atomics.wait(clock, 0, 0, PAUSE_MS);
}

function sendToError(bytes: Uint8Array): void {
  try {
    writeAll(streams.error, [bytes]);
  } catch (fault) {
    if (!isLeaving(fault)) isMessageLost = true;
  }
}

function isLeaving(fault: unknown): boolean {
  return (fault as NodeJS.ErrnoException).code === 'EPIPE';
}

function bytesOf(lines: readonly string[]): Uint8Array {
  return Buffer.from(lines.map((line) => `${printable(line)}\n`).join(''));
}
