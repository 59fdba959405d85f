/**
 * ZIP archives, read: their directory, and entries by need. Needs fflate.
 * @source PKWARE, .ZIP File Format Specification (APPNOTE) 6.3, section 4.3
 */
import { inflateSync } from 'fflate';
import { crc32 } from './crc32.ts';
import { ScoreError } from './scoreError.ts';

/** The largest entry that is unpacked, in bytes: the largest symphonies stay under a sixth of it. */
export const LARGEST_ENTRY = 128 * 1024 * 1024;
/** The most an entry may grow when unpacked. Real scores grow up to 25 times; what grows more is made to fill memory. */
const MOST_GROWTH = 150;
/** Below this size, in bytes, growth does no harm. */
const HARMLESS = 16 * 1024 * 1024;

const LOCAL = 0x04034b50;
const CENTRAL = 0x02014b50;
export const END = 0x06054b50;
export const END_LENGTH = 22;
const CENTRAL_LENGTH = 46;

export interface ZipEntry {
  readonly name: string;
  /** Offset of its record in the central directory. */
  readonly record: number;
  readonly recordLength: number;
  /** The checksum of its content. */
  readonly crc: number;
  /** Offset of its local header. */
  readonly offset: number;
}

export interface ZipArchive {
  readonly bytes: Uint8Array;
  readonly entries: readonly ZipEntry[];
  /** Offset of the central directory. */
  readonly directory: number;
  /** Offset of the end record. */
  readonly end: number;
}

/** True for bytes that begin as a ZIP archive does. */
export function isZip(bytes: Uint8Array): boolean {
  return bytes[0] === 0x50 && bytes[1] === 0x4b && (bytes[2] === 3 || bytes[2] === 5);
}

/**
 * Reads an archive's directory.
 * @throws {ScoreError} when the archive is damaged or of a kind that no score comes in
 */
export function openZip(input: Uint8Array): ZipArchive {
  // A plain array over the same bytes: other kinds of it copy nothing when sliced.
  const bytes = new Uint8Array(input.buffer, input.byteOffset, input.byteLength);
  const view = viewOf(bytes);
  const end = findEnd(view);
  const count = view.getUint16(end + 10, true);
  const directory = view.getUint32(end + 16, true);
  if (directory === 0xffffffff || count === 0xffff) throw new ScoreError(({ zip64 }) => zip64);
  const entries: ZipEntry[] = [];
  let record = directory;
  for (let i = 0; i < count; i++) {
    if (record + CENTRAL_LENGTH > end || view.getUint32(record, true) !== CENTRAL)
      throw new ScoreError(({ directoryDamaged }) => directoryDamaged);
    const nameLength = view.getUint16(record + 28, true);
    const name = decodeName(bytes.subarray(record + CENTRAL_LENGTH, record + CENTRAL_LENGTH + nameLength));
    const offset = view.getUint32(record + 42, true);
    if (offset + 30 > directory || view.getUint32(offset, true) !== LOCAL) throw damaged(name);
    const recordLength =
      CENTRAL_LENGTH + nameLength + view.getUint16(record + 30, true) + view.getUint16(record + 32, true);
    entries.push({ name, record, recordLength, crc: view.getUint32(record + 16, true), offset });
    record += recordLength;
    if (record > end) throw new ScoreError(({ directoryDamaged }) => directoryDamaged);
  }
  return { bytes, entries, directory, end };
}

/**
 * The content of an entry, checked against its size and checksum.
 * @param mostBytes the most it may hold; what a score may by default
 * @throws {ScoreError} when it is damaged, encrypted, packed in an unusual way, or too large
 */
export function readEntry(
  { bytes }: ZipArchive,
  { name, record, offset }: ZipEntry,
  mostBytes = LARGEST_ENTRY,
): Uint8Array {
  const view = viewOf(bytes);
  const isEncrypted = (view.getUint16(record + 8, true) & 1) === 1;
  if (isEncrypted) throw new ScoreError(({ encrypted }) => encrypted(name));
  const method = view.getUint16(record + 10, true);
  const packedLength = view.getUint32(record + 20, true);
  const length = view.getUint32(record + 24, true);
  if (length > mostBytes) {
    throw new ScoreError(({ unpacksTo }) => unpacksTo(name, megabytes(length), megabytes(mostBytes)));
  }
  if (length > HARMLESS && length > MOST_GROWTH * packedLength) {
    const growth = Math.round(length / Math.max(1, packedLength));
    throw new ScoreError(({ growsTo }) => growsTo(name, growth, MOST_GROWTH));
  }
  const start = offset + 30 + view.getUint16(offset + 26, true) + view.getUint16(offset + 28, true);
  const packed = bytes.subarray(start, start + packedLength);
  if (packed.length < packedLength) throw damaged(name);
  const content = method === 0 ? packed : method === 8 ? inflate(packed, length, name) : null;
  if (content === null) throw new ScoreError(({ packedBy }) => packedBy(name, method));
  if (content.length !== length || crc32(content) !== view.getUint32(record + 16, true)) throw damaged(name);
  return content;
}

function inflate(packed: Uint8Array, length: number, name: string): Uint8Array {
  try {
    return inflateSync(packed, { out: new Uint8Array(length) });
  } catch {
    throw damaged(name);
  }
}

function megabytes(bytes: number): number {
  return Math.ceil(bytes / 1048576);
}

function findEnd(view: DataView): number {
  const first = Math.max(0, view.byteLength - END_LENGTH - 0xffff);
  for (let at = view.byteLength - END_LENGTH; at >= first; at--)
    if (view.getUint32(at, true) === END) return at;
  throw new ScoreError(({ archiveCutShort }) => archiveCutShort);
}

/** Names are UTF-8 in practice, whatever their flag says. */
function decodeName(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('latin1').decode(bytes);
  }
}

function damaged(name: string): ScoreError {
  return new ScoreError(({ entryDamaged }) => entryDamaged(name));
}

/** The archive's bytes by fields. */
export function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}
