/**
 * Where a result goes, for every command: standard output, a new file, or one that may be replaced. A file that somebody
 * else made, or changed, is never lost: it is only replaced where the user says so.
 */
import { accessSync, constants, lstatSync, readlinkSync, realpathSync, type Stats, statSync } from 'node:fs';
import { lengthOf, openScoreFile, packedScore } from '../../musicxml/bytes/files.ts';
import { type SealKind, sealText } from '../../musicxml/bytes/seal.ts';
import { Failure, type Say, systemReason } from '../failure.ts';
import { readWhole } from '../files/input.ts';
import { type Content, holdingOf, refuseOtherEnding } from './ending.ts';
import { identityOf, whatIsAt } from './place.ts';
import { isSealedSound } from './soundSeal.ts';
import { isStandardOutput, printBytes } from './streams.ts';
import { createFile, type Loss, replaceFile, writeToDevice } from './wholeFile.ts';

/** The right to replace what is there. */
export interface Permission {
  /** What the result is; its name must not promise anything else. */
  readonly content: Content;
  /** What makes the result; a file that the same made before, and nobody changed since, may be replaced. */
  readonly kind: SealKind | 'clear' | 'sound';
  /** The user said that any file may be replaced. */
  readonly force: boolean;
  /** Files that are read in this run, and must not be replaced in any case. */
  readonly inputs: readonly string[];
}

/**
 * Writes a text of our own with its seal, or as it is to standard output.
 * @returns remarks for the user: what could not be kept of a file that was replaced
 * @throws {Failure} when it cannot be written, or something is there that must not be replaced; all is then as it was
 */
export function writeOwnText(path: string, text: string, permission: OwnPermission): readonly Say[] {
  const { kind, content } = permission;
  if (isStandardOutput(path)) return writeResult(path, [new TextEncoder().encode(text)], permission);
  const bytes =
    content === 'score' && holdingOf(path) === 'compressed'
      ? openScoreFile(packedScore(new TextEncoder().encode(text))).withText(text, { seal: kind })
      : sealText(kind, text);
  return writeResult(path, [bytes], permission);
}

interface OwnPermission extends Permission {
  readonly kind: SealKind;
}

/**
 * Writes a result, `-` for standard output.
 * @param pieces its bytes, one piece after the other
 * @returns remarks for the user: what could not be kept of a file that was replaced
 * @throws {Failure} when it cannot be written, or something is there that must not be replaced; all is then as it was
 */
export function writeResult(
  path: string,
  pieces: readonly Uint8Array[],
  permission: Permission,
): readonly Say[] {
  return written(path, () => {
    if (isStandardOutput(path)) return printBytes(pieces) ?? [];
    const known = whatIsAt(path);
    if (!known) {
      refuseLinkToNothing(path);
      refuseOtherEnding(path, permission.content, permission.inputs);
      return createFile(path, pieces) ?? [];
    }
    if (known.isDirectory()) throw Object.assign(new Error(), { code: 'EISDIR' });
    if (!known.isFile()) return writeToDevice(path, pieces) ?? [];
    if (permission.inputs.some((input) => identityOf(input) === identityOf(path))) throw overInput(path);
    refuseOtherEnding(path, permission.content, permission.inputs);
    if (isThere(path, known, pieces)) return [];
    if (!permission.force) {
      if (known.size > 0 && ownKindOf(path) !== permission.kind) throw notOurs(path);
      refuseReadOnly(path, known);
    }
    return replaceFile(realpathSync(path), pieces);
  });
}

/**
 * Writes a result onto the input it was made from.
 * @param pieces its bytes, one piece after the other
 * @param force write even where the file may only be read
 * @returns remarks for the user: what could not be kept of the file
 * @throws {Failure} when it cannot be written; the file is then as it was
 */
export function writeInPlace(path: string, pieces: readonly Uint8Array[], force: boolean): readonly Say[] {
  return written(path, () => {
    const known = statSync(path);
    if (!known.isFile()) throw new Failure(({ faults }) => faults.notPlain(path));
    if (isThere(path, known, pieces)) return [];
    if (!force) refuseReadOnly(path, known);
    return replaceFile(realpathSync(path), pieces);
  });
}

/** The failure of a command whose result would fall onto one of its inputs. */
export function overInput(path: string): Failure {
  return new Failure(({ faults }) => faults.ontoInput(path));
}

function written(path: string, write: () => readonly Loss[]): readonly Say[] {
  try {
    return write().map(
      (loss): Say =>
        ({ told }) =>
          told.notKept(path, told[loss]),
    );
  } catch (fault) {
    if (fault instanceof Failure) throw fault;
    const code = (fault as NodeJS.ErrnoException).code;
    throw new Failure((words) =>
      words.faults.notWritten(
        path,
        code === 'ENOENT' ? words.faults.folderMissing : systemReason(fault, words),
      ),
    );
  }
}

function notOurs(path: string): Failure {
  return new Failure(({ faults }) => faults.notOurs(path));
}

function refuseLinkToNothing(path: string): void {
  if (!lstatSync(path, { throwIfNoEntry: false })?.isSymbolicLink()) return;
  const target = readlinkSync(path);
  throw new Failure(({ faults }) => faults.linkToNothing(path, target));
}

function refuseReadOnly(path: string, { mode }: Stats): void {
  try {
    if ((mode & 0o222) === 0) throw new Error();
    accessSync(path, constants.W_OK);
  } catch {
    throw new Failure(({ faults }) => faults.readOnly(path));
  }
}

/** What made a file, if it carries a true seal; `null` for all others. */
function ownKindOf(path: string): string | null {
  try {
    const bytes = readWhole(path);
    return isSealedSound(bytes) ? 'sound' : openScoreFile(bytes).sealedAs;
  } catch {
    return null;
  }
}

function isThere(path: string, { size }: Stats, pieces: readonly Uint8Array[]): boolean {
  if (size !== lengthOf(pieces)) return false;
  const there = readWhole(path);
  let end = 0;
  return pieces.every((piece) => {
    end += piece.length;
    return Buffer.compare(there.subarray(end - piece.length, end), piece) === 0;
  });
}
