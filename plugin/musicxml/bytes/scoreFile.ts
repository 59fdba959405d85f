/** A score file, plain or compressed, as bytes on the outside and text on the inside. */
import { openContainer } from './container.ts';
import { decodeText } from './encodings.ts';
import { isZip } from './zip.ts';

export interface ScoreFile {
  /** The score's text, a byte order mark included. */
  readonly text: string;
  /** How the text is held in bytes, e.g. `UTF-8`. */
  readonly encoding: string;
  /** The score's path inside a compressed file, else `null`. */
  readonly entryName: string | null;
  /** The file's bytes with another text, whole or in pieces, in place of this one. The same text gives the same bytes. */
  withText(text: string | readonly string[]): Uint8Array;
}

/**
 * Opens the bytes of a .musicxml, .xml or .mxl file; which of them it is shows in the bytes, not in the name.
 * @throws {ScoreError} when the bytes cannot be read as text, or the archive is damaged or holds no score
 */
export function openScoreFile(bytes: Uint8Array): ScoreFile {
  const container = isZip(bytes) ? openContainer(bytes) : null;
  const { text, encoding, encode } = decodeText(container ? container.score : bytes);
  return {
    text,
    encoding,
    entryName: container ? container.scoreName : null,
    withText(changed) {
      const pieces = typeof changed === 'string' ? [changed] : changed;
      if (pieces.length === 1 && pieces[0] === text) return new Uint8Array(bytes);
      const encoded = encode(pieces);
      return container ? container.withScore(encoded) : encoded;
    },
  };
}
