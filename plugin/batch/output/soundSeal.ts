/**
 * The seal of a sound file: a chunk at its end that players pass over, with a checksum of all that stands before it. As
 * the comment at the end of a text, it tells a later run that a file is Bellhand's own and unchanged.
 */
import { crc32 } from '../../musicxml/bytes/crc32.ts';

const NAME = 'bell';
/** Name, length and checksum. */
const SEAL_BYTES = 12;

/** A WAV file with its seal. */
export function sealSound(wave: Uint8Array): Uint8Array {
  const sealed = new Uint8Array(wave.length + SEAL_BYTES);
  sealed.set(wave);
  const view = new DataView(sealed.buffer);
  // The length of a RIFF file counts all but its first eight bytes.
  view.setUint32(4, sealed.length - 8, true);
  for (let i = 0; i < NAME.length; i++) view.setUint8(wave.length + i, NAME.charCodeAt(i));
  view.setUint32(wave.length + 4, 4, true);
  view.setUint32(wave.length + 8, crc32(sealed.subarray(0, wave.length)), true);
  return sealed;
}

/** True for a sound file of ours that nobody changed. */
export function isSealedSound(bytes: Uint8Array): boolean {
  const at = bytes.length - SEAL_BYTES;
  if (at < 0) return false;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  for (let i = 0; i < NAME.length; i++) if (view.getUint8(at + i) !== NAME.charCodeAt(i)) return false;
  return view.getUint32(at + 8, true) === crc32(bytes.subarray(0, at));
}
