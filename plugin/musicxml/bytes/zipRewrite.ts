/**
 * ZIP archives, changed: one entry gets another content, one may come or go, and everything else is copied as it stands,
 * compressed bytes, times, order, comments and all. Needs fflate.
 * @source PKWARE, .ZIP File Format Specification (APPNOTE) 6.3, section 4.3
 */
import { deflateSync } from 'fflate';
import { crc32 } from './crc32.ts';
import { END, END_LENGTH, openZip, viewOf, type ZipArchive, type ZipEntry } from './zip.ts';

/** An entry as an archive holds it. */
export interface PackedEntry {
  /** Its local header, its packed bytes and whatever follows them up to the next entry. */
  readonly local: Uint8Array;
  /** Its record in the directory. */
  readonly record: Uint8Array;
}

/** What becomes of an archive's entries; those that are not named stay. */
export interface ZipChanges {
  /** Entries that are held otherwise, or, for `null`, taken out. */
  readonly entries: ReadonlyMap<ZipEntry, PackedEntry | null>;
  /** An entry to put behind all others. */
  readonly added?: PackedEntry;
}

/** An entry just as it stands. */
export function packedAsItIs(archive: ZipArchive, { record, recordLength, offset }: ZipEntry): PackedEntry {
  const { bytes } = archive;
  return {
    local: bytes.slice(offset, endOf(archive, offset)),
    record: bytes.slice(record, record + recordLength),
  };
}

/** An entry with another content, and otherwise described as before. */
export function packedAnew(archive: ZipArchive, entry: ZipEntry, content: Uint8Array): PackedEntry {
  const { bytes } = archive;
  const { offset, record, recordLength } = entry;
  const view = viewOf(bytes);
  const headLength = 30 + view.getUint16(offset + 26, true) + view.getUint16(offset + 28, true);
  const head = bytes.slice(offset, offset + headLength);
  const packed = deflateSync(content);
  const sums = { crc: crc32(content), packedLength: packed.length, length: content.length };
  const changed = bytes.slice(record, record + recordLength);
  describe(viewOf(head), 6, sums);
  describe(viewOf(changed), 8, sums);
  return { local: joined([head, packed]), record: changed };
}

/** An entry of this name, stored unpacked, with the date 1 January 1980: the earliest there is, and the same every time. */
export function packedStored(name: string, content: Uint8Array): PackedEntry {
  const nameBytes = new TextEncoder().encode(name);
  const local = new Uint8Array(30 + nameBytes.length);
  const record = new Uint8Array(46 + nameBytes.length);
  const sums = [crc32(content), content.length, content.length];
  for (const { bytes, signature, from } of [
    { bytes: local, signature: 0x04034b50, from: 4 },
    { bytes: record, signature: 0x02014b50, from: 6 },
  ]) {
    const view = viewOf(bytes);
    view.setUint32(0, signature, true);
    view.setUint16(from, 20, true);
    view.setUint16(from + 8, 0x21, true);
    for (const [i, sum] of sums.entries()) view.setUint32(from + 10 + 4 * i, sum, true);
    view.setUint16(from + 22, nameBytes.length, true);
  }
  viewOf(record).setUint16(4, 20, true);
  local.set(nameBytes, 30);
  record.set(nameBytes, 46);
  return { local: joined([local, content]), record };
}

/** An archive of this entry alone. */
export function zipOf({ local, record }: PackedEntry): Uint8Array {
  const alone = record.slice();
  viewOf(alone).setUint32(42, 0, true);
  const end = new Uint8Array(END_LENGTH);
  const view = viewOf(end);
  view.setUint32(0, END, true);
  view.setUint16(8, 1, true);
  view.setUint16(10, 1, true);
  view.setUint32(12, alone.length, true);
  view.setUint32(16, local.length, true);
  return joined([local, alone, end]);
}

/** The only entry of such an archive, with the archive it can be read from; `null` when it is none. */
export function onlyEntryOf(bytes: Uint8Array): { archive: ZipArchive; entry: ZipEntry } | null {
  try {
    const archive = openZip(bytes);
    return archive.entries.length === 1 ? { archive, entry: archive.entries[0]! } : null;
  } catch {
    return null;
  }
}

/** The archive with these changes. */
export function rewriteZip(archive: ZipArchive, { entries: changed, added }: ZipChanges): Uint8Array {
  const { bytes, entries, directory, end } = archive;
  const byOffset = [...entries].sort((a, b) => a.offset - b.offset);
  const moved = new Map<number, number>();
  const pieces: Uint8Array[] = [bytes.subarray(0, byOffset[0]?.offset ?? directory)];
  let length = pieces[0]!.length;
  const put = (piece: Uint8Array): void => {
    pieces.push(piece);
    length += piece.length;
  };
  for (const entry of byOffset) {
    // Two records may name the same bytes.
    if (moved.has(entry.offset)) continue;
    moved.set(entry.offset, length);
    const change = changed.get(entry);
    if (change !== null) put(change?.local ?? bytes.subarray(entry.offset, endOf(archive, entry.offset)));
  }
  const addedAt = length;
  if (added) put(added.local);
  const directoryAt = length;
  const records = entries.flatMap((entry) => {
    const change = changed.get(entry);
    if (change === null) return [];
    const record = change?.record ?? bytes.slice(entry.record, entry.record + entry.recordLength);
    return [placed(record, moved.get(entry.offset)!)];
  });
  if (added) records.push(placed(added.record, addedAt));
  const last = entries[entries.length - 1];
  const recordsEnd = last ? last.record + last.recordLength : directory;
  const tail = bytes.slice(recordsEnd);
  const view = viewOf(tail);
  const at = end - recordsEnd;
  const growth = records.reduce((sum, record) => sum + record.length, 0) - (recordsEnd - directory);
  view.setUint16(at + 8, records.length, true);
  view.setUint16(at + 10, records.length, true);
  view.setUint32(at + 12, view.getUint32(at + 12, true) + growth, true);
  view.setUint32(at + 16, directoryAt, true);
  return joined([...pieces, ...records, tail]);
}

/** Where the bytes of the entry at an offset end: at the next one, or at the directory. */
function endOf({ entries, directory }: ZipArchive, offset: number): number {
  return entries.reduce(
    (end, entry) => (entry.offset > offset ? Math.min(end, entry.offset) : end),
    directory,
  );
}

function placed(record: Uint8Array, offset: number): Uint8Array {
  const copy = record.slice();
  viewOf(copy).setUint32(42, offset, true);
  return copy;
}

interface Sums {
  readonly crc: number;
  readonly packedLength: number;
  readonly length: number;
}

/** Writes flags, method, checksum and sizes, which stand in the same order in both kinds of header. */
function describe(view: DataView, at: number, { crc, packedLength, length }: Sums): void {
  // Bit 3 announces sizes behind the data; here they stand in the header.
  view.setUint16(at, view.getUint16(at, true) & ~8, true);
  view.setUint16(at + 2, 8, true);
  view.setUint32(at + 8, crc, true);
  view.setUint32(at + 12, packedLength, true);
  view.setUint32(at + 16, length, true);
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
