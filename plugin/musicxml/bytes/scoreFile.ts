/** A score file, plain or compressed, as bytes on the outside and text on the inside. */
import { type Keep, openContainer } from './container.ts';
import { decodeText } from './encodings.ts';
import { type SealKind, sealFor, unseal } from './seal.ts';
import { isZip } from './zip.ts';

export interface ScoreFile {
  /** The score's text, a byte order mark included, the seal of an earlier run left out. */
  readonly text: string;
  /** How the text is held in bytes, e.g. `UTF-8`. */
  readonly encoding: string;
  /** The score's path inside a compressed file, else `null`. */
  readonly entryName: string | null;
  /** What made the file, when it carries a true seal: nobody has changed it since; else `null`. */
  readonly sealedAs: string | null;
  /**
   * The file's bytes with another text, whole or in pieces, in place of this one. The same text gives the same bytes,
   * but for a seal that is put on or left out.
   */
  withText(text: string | readonly string[], finish?: Finish): Uint8Array;
}

/** How a file is finished. */
export interface Finish {
  /** The seal to put on; none by default. */
  readonly seal?: SealKind | null;
  /** What a compressed file keeps of the score that gives way; nothing by default. */
  readonly keep?: Keep;
}

/**
 * Opens the bytes of a .musicxml, .xml or .mxl file; which of them it is shows in the bytes, not in the name.
 * @throws {ScoreError} when the bytes cannot be read as text, or the archive is damaged or holds no score
 */
export function openScoreFile(bytes: Uint8Array): ScoreFile {
  const container = isZip(bytes) ? openContainer(bytes) : null;
  const content = container ? container.score : bytes;
  const beside = container?.beside ?? '';
  // What is kept of a plain file is its text alone: large scores need the room.
  const archive = container ? bytes : null;
  const { text: whole, encoding, encode } = decodeText(content);
  const { text, seal: found, kind } = unseal(whole);
  const unsealedLength = content.length - encode([found]).length;
  const isTrue =
    kind !== null && sealFor(kind as SealKind, content.subarray(0, unsealedLength), beside) === found;
  return {
    text,
    encoding,
    entryName: container ? container.scoreName : null,
    sealedAs: isTrue ? kind : null,
    withText(changed, { seal = null, keep = 'nothing' } = {}) {
      const pieces = typeof changed === 'string' ? [changed] : changed;
      const encoded = encode(pieces);
      const ending = seal === null ? '' : sealFor(seal, encoded, beside);
      // Packing anew would give another archive.
      if (archive && pieces.length === 1 && pieces[0] === text && ending === found)
        return new Uint8Array(archive);
      const finished = ending === '' ? encoded : joined(encoded, encode([ending]));
      return container ? container.withScore(finished, keep) : finished;
    },
  };
}

/** Encoding leaves room behind a large text, which is not copied for the sake of one line. */
function joined(bytes: Uint8Array, ending: Uint8Array): Uint8Array {
  const length = bytes.length + ending.length;
  if (bytes.byteOffset + length <= bytes.buffer.byteLength) {
    const longer = new Uint8Array(bytes.buffer, bytes.byteOffset, length);
    longer.set(ending, bytes.length);
    return longer;
  }
  const whole = new Uint8Array(length);
  whole.set(bytes);
  whole.set(ending, bytes.length);
  return whole;
}
