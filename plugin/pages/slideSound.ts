/** A tone while the hand moves, as a sound file: what the curve draws, to be heard. */
import {
  CLOSING_HAND,
  type Fingering,
  type HandMoment,
  HIGHEST_CURVE_HARMONIC,
  OPENING_HAND,
  playedTone,
  toneCurve,
  waveFile,
} from '../../core/index.ts';

/** True where the tone of a fingering can be worked out. */
export function hasSound({ harmonic }: Fingering): boolean {
  return harmonic >= 2 && harmonic <= HIGHEST_CURVE_HARMONIC;
}

/**
 * The tone of a fingering, open, on its way, and sealed; or the way back.
 * @returns the bytes of a WAV file
 * @throws {RangeError} when the fingering's harmonic has no sound
 */
export function slideSound({ tube, harmonic }: Fingering, move: 'closing' | 'opening'): Uint8Array {
  // A stopping valve is down as long as the hand is in.
  const fundamentalCents = tube.fundamentalCents - tube.side.stoppingValveCents;
  const hand: readonly HandMoment[] = move === 'closing' ? CLOSING_HAND : OPENING_HAND;
  return waveFile(playedTone(toneCurve({ fundamentalCents }, harmonic), hand));
}
