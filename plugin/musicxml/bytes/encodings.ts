/** From the bytes of an XML text to characters and back, so that every byte that is not ours stays. Needs TextDecoder. */
import { ScoreError } from './scoreError.ts';

/** A text and the way it was held in bytes. */
export interface EncodedText {
  readonly text: string;
  /** The encoding as a user would call it: `UTF-8`, `UTF-16LE`, `ISO-8859-1`, … */
  readonly encoding: string;
  /**
   * Holds another text in bytes the same way. Characters that the encoding cannot hold become numeric character
   * references.
   */
  encode(text: string): Uint8Array;
  /** Tells where characters of the text begin in its bytes; to be asked for ever later ones. */
  byteOffsets(): ByteOffsets;
}

/** Where the character at an offset in a text begins in its bytes. */
export type ByteOffsets = (offset: number) => number;

interface Encoding {
  readonly name: string;
  decode(bytes: Uint8Array): string;
  encode(text: string): Uint8Array;
  byteOffsets(text: string, bytes: Uint8Array): ByteOffsets;
}

/**
 * Reads a text by its byte order mark, by the shape of its first characters, then by what its XML declaration says. A
 * declaration that cannot be true (UTF-16 in single bytes) is not believed.
 * @throws {ScoreError} when the encoding is not known, or could not be written back
 * @source W3C, XML 1.0 (Fifth Edition), appendix F
 */
export function decodeText(bytes: Uint8Array): EncodedText {
  const encoding = encodingOf(bytes);
  try {
    return decoded(bytes, encoding);
  } catch (error) {
    if (encoding !== UTF_8) throw error;
    // Bytes that are no UTF-8 after all are each taken for one character, so that they can be kept as they are.
    return decoded(bytes, LATIN_1);
  }
}

function decoded(bytes: Uint8Array, { name, decode, encode, byteOffsets }: Encoding): EncodedText {
  const text = decode(bytes);
  return { text, encoding: name, encode, byteOffsets: () => byteOffsets(text, bytes) };
}

function encodingOf(bytes: Uint8Array): Encoding {
  const [a, b, c, d] = [bytes[0], bytes[1], bytes[2], bytes[3]];
  if (a === 0xff && b === 0xfe && c === 0 && d === 0) throw unknown('UTF-32');
  if (a === 0 && b === 0 && c === 0xfe && d === 0xff) throw unknown('UTF-32');
  if ((a === 0xff && b === 0xfe) || (a === 0x3c && b === 0)) return utf16('UTF-16LE', false);
  if ((a === 0xfe && b === 0xff) || (a === 0 && b === 0x3c)) return utf16('UTF-16BE', true);
  const declared = declaredEncoding(bytes).toLowerCase();
  const hasMark = a === 0xef && b === 0xbb && c === 0xbf;
  if (hasMark || declared === '' || /^utf-?(?:8|16|16le|16be)$/.test(declared)) return UTF_8;
  return /^(?:iso-?8859-?1|latin-?1|l1)$/.test(declared) ? LATIN_1 : singleByte(declared);
}

const UTF_8: Encoding = {
  name: 'UTF-8',
  decode: (bytes) => new TextDecoder('utf-8', { ignoreBOM: true, fatal: true }).decode(bytes),
  encode: (text) => new TextEncoder().encode(text),
  byteOffsets: utf8Offsets,
};

const LATIN_1: Encoding = {
  name: 'ISO-8859-1',
  // The platform takes the name for Windows-1252, which differs from 0x80 to 0x9F.
  decode: (bytes) =>
    bytes.some((byte) => byte >= 0x80 && byte < 0xa0)
      ? fromCodes(Uint16Array.from(bytes))
      : new TextDecoder('windows-1252').decode(bytes),
  encode: (text) => encodeBy(text, (code) => (code < 256 ? code : -1)),
  byteOffsets: oneByteEach,
};

function oneByteEach(): ByteOffsets {
  return (offset) => offset;
}

/** Counts what takes more than a byte, from one character asked for to the next. */
function utf8Offsets(text: string, bytes: Uint8Array): ByteOffsets {
  if (bytes.length === text.length) return oneByteEach();
  const wide = /[\u0080-\uffff]+/g;
  let run = wide.exec(text);
  let more = 0;
  return (offset) => {
    for (; run && run.index < offset; run = wide.exec(text))
      more += new TextEncoder().encode(run[0]).length - run[0].length;
    return offset + more;
  };
}

/** Read and written by hand, since a decoder would not keep a half of a pair that stands alone. */
function utf16(name: string, isBigEndian: boolean): Encoding {
  const high = isBigEndian ? 0 : 1;
  return {
    name,
    decode(bytes) {
      if (bytes.length % 2 === 1) {
        throw new ScoreError(({ halfCharacter }) => halfCharacter(name));
      }
      const codes = new Uint16Array(bytes.length / 2);
      for (let i = 0; i < codes.length; i++) codes[i] = bytes[2 * i + high]! * 256 + bytes[2 * i + 1 - high]!;
      return fromCodes(codes);
    },
    encode(text) {
      const bytes = new Uint8Array(2 * text.length);
      for (let i = 0; i < text.length; i++) {
        const code = text.charCodeAt(i);
        bytes[2 * i + high] = code >> 8;
        bytes[2 * i + 1 - high] = code & 255;
      }
      return bytes;
    },
    byteOffsets: () => (offset) => 2 * offset,
  };
}

/** Any encoding of one byte a character that the platform can read: its table is learnt by reading all 256 bytes. */
function singleByte(label: string): Encoding {
  const decoder = decoderOf(label);
  const byteOf = new Map<number, number>();
  for (let byte = 0; byte < 256; byte++) {
    const character = decoder.decode(Uint8Array.of(byte));
    if (character.length !== 1 || byteOf.has(character.charCodeAt(0))) throw unknown(label);
    byteOf.set(character.charCodeAt(0), byte);
  }
  return {
    name: decoder.encoding,
    decode: (bytes) => decoder.decode(bytes),
    encode: (text) => encodeBy(text, (code) => byteOf.get(code) ?? -1),
    byteOffsets: oneByteEach,
  };
}

function decoderOf(label: string) {
  try {
    return new TextDecoder(label);
  } catch {
    throw unknown(label);
  }
}

function encodeBy(text: string, byteOf: (code: number) => number): Uint8Array {
  const held = withReferences(text, byteOf);
  const bytes = new Uint8Array(held.length);
  for (let i = 0; i < held.length; i++) bytes[i] = byteOf(held.charCodeAt(i));
  return bytes;
}

/** The same text with references for the characters that an encoding cannot hold. */
function withReferences(text: string, byteOf: (code: number) => number): string {
  let isHeld = true;
  for (let i = 0; i < text.length && isHeld; i++) isHeld = byteOf(text.charCodeAt(i)) >= 0;
  if (isHeld) return text;
  return Array.from(text, (character) => {
    const code = character.codePointAt(0)!;
    return code < 0x10000 && byteOf(code) >= 0 ? character : `&#x${code.toString(16).toUpperCase()};`;
  }).join('');
}

function fromCodes(codes: Uint16Array): string {
  const pieces: string[] = [];
  for (let i = 0; i < codes.length; i += 8192) {
    pieces.push(String.fromCharCode.apply(null, codes.subarray(i, i + 8192) as unknown as number[]));
  }
  return pieces.join('');
}

function declaredEncoding(bytes: Uint8Array): string {
  const head = fromCodes(Uint16Array.from(bytes.subarray(0, 256)));
  return (
    /^(?:\u00ef\u00bb\u00bf)?<\?xml[^>]*?\sencoding\s*=\s*["']([A-Za-z][\w.:-]*)["']/.exec(head)?.[1] ?? ''
  );
}

function unknown(label: string): ScoreError {
  return new ScoreError(({ unknownEncoding }) => unknownEncoding(label));
}
