/**
 * ZIP archives, as far as replacing one entry needs: everything else in the archive is copied as it stands, compressed
 * bytes, times, order, comments and all. Needs fflate.
 * @source PKWARE, .ZIP File Format Specification (APPNOTE) 6.3, section 4.3
 */
import { deflateSync, inflateSync } from 'fflate';
import { crc32 } from './crc32.ts';
import { ScoreError } from './scoreError.ts';

/** Scores larger than this, in bytes, are refused: the largest symphonies stay under a tenth of it. */
export const LARGEST_ENTRY = 256 * 1024 * 1024;

const LOCAL = 0x04034b50;
const CENTRAL = 0x02014b50;
const END = 0x06054b50;
const END_LENGTH = 22;
const CENTRAL_LENGTH = 46;
const FETCH_AGAIN = 'fetch or export the file again';

export interface ZipEntry {
  readonly name: string;
  /** Offset of its record in the central directory. */
  readonly record: number;
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
  if (directory === 0xffffffff || count === 0xffff)
    throw new ScoreError('this is a ZIP64 archive', 'pack the score again as plain ZIP');
  const entries: ZipEntry[] = [];
  let record = directory;
  for (let i = 0; i < count; i++) {
    if (record + CENTRAL_LENGTH > end || view.getUint32(record, true) !== CENTRAL)
      throw damaged('its directory');
    const nameLength = view.getUint16(record + 28, true);
    const name = decodeName(bytes.subarray(record + CENTRAL_LENGTH, record + CENTRAL_LENGTH + nameLength));
    const offset = view.getUint32(record + 42, true);
    if (offset + 30 > directory || view.getUint32(offset, true) !== LOCAL) throw damaged(`"${name}"`);
    entries.push({ name, record, offset });
    record +=
      CENTRAL_LENGTH + nameLength + view.getUint16(record + 30, true) + view.getUint16(record + 32, true);
  }
  return { bytes, entries, directory, end };
}

/**
 * The content of an entry, checked against its size and checksum.
 * @throws {ScoreError} when it is damaged, encrypted, packed in an unusual way, or too large
 */
export function readEntry({ bytes }: ZipArchive, { name, record, offset }: ZipEntry): Uint8Array {
  const view = viewOf(bytes);
  const isEncrypted = (view.getUint16(record + 8, true) & 1) === 1;
  if (isEncrypted) throw new ScoreError(`"${name}" is encrypted`, 'pack the score again without a password');
  const method = view.getUint16(record + 10, true);
  const packedLength = view.getUint32(record + 20, true);
  const length = view.getUint32(record + 24, true);
  if (length > LARGEST_ENTRY) {
    const megabytes = Math.round(length / 1048576);
    throw new ScoreError(
      `"${name}" unpacks to ${megabytes} MB, more than any score needs`,
      'check where the file comes from',
    );
  }
  const start = offset + 30 + view.getUint16(offset + 26, true) + view.getUint16(offset + 28, true);
  const packed = bytes.subarray(start, start + packedLength);
  if (packed.length < packedLength) throw damaged(`"${name}"`);
  const content = method === 0 ? packed : method === 8 ? inflate(packed, length, name) : null;
  if (content === null)
    throw new ScoreError(`"${name}" is packed by method ${method}`, 'pack the score again as plain ZIP');
  if (content.length !== length || crc32(content) !== view.getUint32(record + 16, true))
    throw damaged(`"${name}"`);
  return content;
}

/** The archive with one entry's content replaced. Every other entry is copied untouched. */
export function replaceEntry(archive: ZipArchive, replaced: ZipEntry, content: Uint8Array): Uint8Array {
  const { bytes, entries, directory, end } = archive;
  const packed = deflateSync(content);
  const local = localRecord(archive, replaced, content, packed);
  const bounds = entries.map(({ offset }) => offset).concat(directory);
  bounds.sort((a, b) => a - b);
  const moved = new Map<number, number>();
  const pieces: Uint8Array[] = [bytes.subarray(0, bounds[0])];
  let length = bounds[0]!;
  for (let i = 0; i + 1 < bounds.length; i++) {
    const offset = bounds[i]!;
    moved.set(offset, length);
    const piece = offset === replaced.offset ? local : bytes.subarray(offset, bounds[i + 1]);
    pieces.push(piece);
    length += piece.length;
  }
  const tail = bytes.slice(directory);
  const view = viewOf(tail);
  for (const entry of entries) {
    const record = entry.record - directory;
    view.setUint32(record + 42, moved.get(entry.offset)!, true);
    if (entry.offset === replaced.offset) describe(view, record + 8, content, packed);
  }
  view.setUint32(end - directory + 16, length, true);
  return joined([...pieces, tail]);
}

/** A local header like the old one, with the new content behind it. */
function localRecord(
  archive: ZipArchive,
  { offset }: ZipEntry,
  content: Uint8Array,
  packed: Uint8Array,
): Uint8Array {
  const old = viewOf(archive.bytes);
  const headLength = 30 + old.getUint16(offset + 26, true) + old.getUint16(offset + 28, true);
  const head = archive.bytes.slice(offset, offset + headLength);
  describe(viewOf(head), 6, content, packed);
  return joined([head, packed]);
}

/** Writes flags, method, checksum and sizes, which stand in the same order in both kinds of header. */
function describe(view: DataView, at: number, content: Uint8Array, packed: Uint8Array): void {
  // Bit 3 announces sizes behind the data; here they stand in the header.
  view.setUint16(at, view.getUint16(at, true) & ~8, true);
  view.setUint16(at + 2, 8, true);
  view.setUint32(at + 8, crc32(content), true);
  view.setUint32(at + 12, packed.length, true);
  view.setUint32(at + 16, content.length, true);
}

function inflate(packed: Uint8Array, length: number, name: string): Uint8Array {
  try {
    return inflateSync(packed, { out: new Uint8Array(length) });
  } catch {
    throw damaged(`"${name}"`);
  }
}

function findEnd(view: DataView): number {
  const first = Math.max(0, view.byteLength - END_LENGTH - 0xffff);
  for (let at = view.byteLength - END_LENGTH; at >= first; at--)
    if (view.getUint32(at, true) === END) return at;
  throw new ScoreError('the ZIP archive has no end', `${FETCH_AGAIN}: it seems cut short`);
}

/** Names are UTF-8 in practice, whatever their flag says. */
function decodeName(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('latin1').decode(bytes);
  }
}

function damaged(what: string): ScoreError {
  return new ScoreError(`the ZIP archive is damaged: ${what} does not match its checks`, FETCH_AGAIN);
}

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
