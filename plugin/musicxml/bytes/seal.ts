/**
 * A seal: the comment that ends every file Bellhand makes. It holds a checksum of all that stands before it, so that a
 * later run knows its own work again, and knows that nobody has changed it since.
 */
import { crc32 } from './crc32.ts';

/** What made a file. */
export type SealKind = 'annotate' | 'etude' | 'chart' | 'report' | 'curve';

/** A text without its seal, and what the seal says. */
export interface Unsealed {
  readonly text: string;
  /** The seal as it stands in the text; empty where there is none. */
  readonly seal: string;
  /** The white space at the end of it, which is no part of ours. */
  readonly behind: string;
  /** What made the file; `null` where there is no seal. */
  readonly kind: string | null;
}

const SEAL = /<!-- bellhand ([a-z]+) [0-9a-f]{8} -->\n?(\s*)$/;
/** No seal with its white space is longer; a search from here on does not walk through a whole symphony. */
const TAIL = 200;

/**
 * The seal for these bytes.
 * @param pieces the bytes, one piece after the other
 * @param beside what else belongs to the file: the other entries of an archive
 */
export function sealFor(kind: SealKind, pieces: readonly Uint8Array[], beside = ''): string {
  const besides = Uint8Array.from(Array.from(beside, (character) => character.codePointAt(0)! & 255));
  const sum = [...pieces, besides].reduce((before, piece) => crc32(piece, before), 0);
  return `<!-- bellhand ${kind} ${sum.toString(16).padStart(8, '0')} -->\n`;
}

/** Takes the seal off a text, be it true or not; white space that an editor put behind it stays. */
export function unseal(text: string): Unsealed {
  const tailAt = Math.max(0, text.length - TAIL);
  const found = SEAL.exec(text.slice(tailAt));
  if (!found) return { text, seal: '', behind: '', kind: null };
  const at = tailAt + found.index;
  const [, kind, behind] = found;
  return { text: text.slice(0, at) + behind!, seal: text.slice(at), behind: behind!, kind: kind! };
}

/** A text in UTF-8 with its seal. */
export function sealText(kind: SealKind, text: string): Uint8Array {
  const bytes = new TextEncoder().encode(text);
  return new TextEncoder().encode(text + sealFor(kind, [bytes]));
}
