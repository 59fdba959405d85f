/** Note names for what a player fingers and what sounds open, always in the part's own written pitch. */

import { type Pitch, pitchCents, spellCents } from '../pitch/pitch.ts';
import type { Fingering } from './fingering.ts';

/** Black keys as horn charts name them: C♯, E♭, F♯, A♭, B♭. @source commonPractice, as in the usual open chart */
const SHARP_BLACK_KEYS: readonly number[] = [1, 6];

/** A named note with what the name leaves out. */
export interface NamedPitch {
  readonly pitch: Pitch;
  /** How far the real pitch lies from the named one, in cents. */
  readonly deviationCents: number;
}

/** The note a player thinks of when fingering `written` this way. */
export function fingeredPitch(written: Pitch, fingering: Fingering): Pitch {
  return nameNear(written, pitchCents(written) + 100 * fingering.fingeredSemitones);
}

/** The note that would sound, as the part would write it, if the hand opened. */
export function naturalPitch(written: Pitch, fingering: Fingering): NamedPitch {
  const cents = pitchCents(written) + fingering.deviationCents + fingering.dropCents;
  const pitch = nameNear(written, cents);
  return { pitch, deviationCents: cents - pitchCents(pitch) };
}

/**
 * Names the note nearest to a pitch, in cents above MIDI note 0 of the part's written pitch: `written` itself where that
 * is the one, else as horn charts name it.
 */
export function nameNear(written: Pitch, cents: number): Pitch {
  const semitone = Math.round(cents / 100);
  if (100 * semitone === pitchCents(written)) return written;
  const blackKey = ((semitone % 12) + 12) % 12;
  return spellCents(cents, SHARP_BLACK_KEYS.indexOf(blackKey) >= 0 ? 'sharp' : 'flat');
}
