/** Samples as a sound file that every player knows. */
import { SAMPLE_RATE } from './playedTone.ts';

/** Bytes before the samples. */
const HEAD = 44;
/** One channel of 16 bits. */
const BYTES_A_SAMPLE = 2;

/**
 * The bytes of a WAV file: one channel, 16 bits, SAMPLE_RATE samples a second.
 * @param samples between −1 and 1; what lies beyond is cut off
 * @source the RIFF WAVE format (from memory): PCM is format 1, numbers stand with their low byte first
 */
export function waveFile(samples: Float32Array): Uint8Array {
  const dataBytes = samples.length * BYTES_A_SAMPLE;
  const view = new DataView(new ArrayBuffer(HEAD + dataBytes));
  tag(view, 0, 'RIFF');
  view.setUint32(4, HEAD - 8 + dataBytes, true);
  tag(view, 8, 'WAVE');
  tag(view, 12, 'fmt ');
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, SAMPLE_RATE, true);
  view.setUint32(28, SAMPLE_RATE * BYTES_A_SAMPLE, true);
  view.setUint16(32, BYTES_A_SAMPLE, true);
  view.setUint16(34, 8 * BYTES_A_SAMPLE, true);
  tag(view, 36, 'data');
  view.setUint32(40, dataBytes, true);
  for (let i = 0; i < samples.length; i++) {
    const sample = Math.max(-1, Math.min(1, samples[i]!));
    view.setInt16(HEAD + i * BYTES_A_SAMPLE, Math.round(sample * 32767), true);
  }
  return new Uint8Array(view.buffer);
}

function tag(view: DataView, at: number, name: string): void {
  for (let i = 0; i < 4; i++) view.setUint8(at + i, name.charCodeAt(i));
}
