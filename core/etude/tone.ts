/** What études are made of: tones of the key, and bends. */
import type { HandSign } from '../part/passage.ts';
import type { Pitch } from '../pitch/pitch.ts';
import type { Degree } from './key.ts';

/** A note of the key as it is practised: closed, and with the open note that it is held against. */
export interface Tone extends Degree {
  /** The open note beside it: with valves the same pitch, on a natural horn the nearest that needs no hand. */
  readonly open: Pitch;
  /** Its place in the scale. */
  readonly openDegree: number;
  /** What the hand does at it: it closes, on a natural horn only as far as the note asks, and at some not at all. */
  readonly hand: HandSign;
  readonly isRisky: boolean;
}

/** A tone that the hand takes down and lets up again on one fingering. */
export interface Bend {
  readonly open: Pitch;
  readonly stopped: Pitch;
  /** What the hand does at its end: a full stop, or on a natural horn as much of one as the note asks. */
  readonly hand: HandSign;
  /** The harmonic number, so that neighbours on the same harmonic can follow each other. */
  readonly harmonic: number;
  /** The side of the horn it is on. */
  readonly side: string;
  /** The valves as printed, and how much tube they add, in semitones. */
  readonly valves: string;
  readonly semitones: number;
  /** How far the hand takes it down, in cents. */
  readonly dropCents: number;
}

/**
 * The tones at which the hand closes, by the degree on which a pair of open and closed comes to rest: that of the
 * tone, or, where a natural horn has its tonic open, that of the open note.
 */
export function pairsOf(tones: readonly Tone[]): {
  readonly pairs: readonly Tone[];
  readonly restsOpen: boolean;
} {
  const pairs = tones.filter(({ hand }) => hand !== 'open');
  const restsOpen = !pairs.some(({ degree }) => degree === 0);
  return {
    pairs: restsOpen ? pairs.map((tone) => ({ ...tone, degree: tone.openDegree })) : pairs,
    restsOpen,
  };
}
