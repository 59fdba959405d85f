/** A score file, plain or compressed, as bytes on the outside and text on the inside. */
import { type Keep, openContainer } from './container.ts';
import { decodeText } from './encodings.ts';
import { joinedBytes } from './pieces.ts';
import { type SealKind, sealFor, unseal } from './seal.ts';
import { type Splice, splicedBytes } from './splices.ts';
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
   * The file's bytes with another text in place of this one. The same text gives the same bytes, but for a seal that is
   * put on or left out.
   */
  withText(text: string, finish?: Finish): Uint8Array;
  /**
   * The same for a text that is this one but for some places of its music. The bytes come in pieces, most of them
   * stretches of those that were opened: a large score need not lie there twice.
   * @param splices in the order of the text, none reaching into another
   */
  withSplices(splices: readonly Splice[], finish?: Finish): readonly Uint8Array[];
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
 * @param bytes must stay as they are as long as the file is used
 * @throws {ScoreError} when the bytes cannot be read as text, or the archive is damaged or holds no score
 */
export function openScoreFile(bytes: Uint8Array): ScoreFile {
  const container = isZip(bytes) ? openContainer(bytes) : null;
  const content = container ? container.score : bytes;
  const beside = container?.beside ?? '';
  const { text: whole, encoding, encode, byteOffsets } = decodeText(content);
  const { text, seal: found, behind, kind } = unseal(whole);
  const unsealed = content.subarray(0, content.length - encode(found).length);
  const isTrue = kind !== null && sealFor(kind as SealKind, [unsealed], beside) === found;
  const finished = (
    pieces: readonly Uint8Array[],
    isSame: boolean,
    finish: Finish,
  ): readonly Uint8Array[] => {
    const { seal = null, keep = 'nothing' } = finish;
    const ending = seal === null ? '' : sealFor(seal, pieces, beside);
    const sealed = ending === '' ? pieces : [...pieces, encode(ending)];
    if (!container) return sealed;
    // Packing anew would give another archive.
    return [
      isSame && ending === found ? new Uint8Array(bytes) : container.withScore(joinedBytes(sealed), keep),
    ];
  };
  return {
    text,
    encoding,
    entryName: container ? container.scoreName : null,
    sealedAs: isTrue ? kind : null,
    withText: (changed, finish = {}) => joinedBytes(finished([encode(changed)], changed === text, finish)),
    withSplices(splices, finish = {}) {
      const pieces = splicedBytes(unsealed, splices, byteOffsets(), encode);
      return finished([...pieces, encode(behind)], splices.length === 0, finish);
    },
  };
}
