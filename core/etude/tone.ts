/** What études are made of: tones of the key, and bends. */
import type { HandSign } from '../part/passage.ts';
import { type Pitch, pitchCents } from '../pitch/pitch.ts';
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

/** The widest way from one tone to the next that a line takes often, in cents: a fourth. */
const WIDEST_WAY = 500;
/** From here on the way to a neighbour is a gap, in cents: wider than any scale has. */
const GAP = 400;

/** The most tones that a line can reach without a wide leap, lowest first. @param tones lowest first */
export function reachable(tones: readonly Tone[]): readonly Tone[] {
  let best: readonly Tone[] = [];
  let from = 0;
  tones.forEach(({ written }, i) => {
    const next = tones[i + 1];
    if (next && pitchCents(next.written) - pitchCents(written) <= WIDEST_WAY) return;
    if (i + 1 - from > best.length) best = tones.slice(from, i + 1);
    from = i + 1;
  });
  return best;
}

/** Fewer tones than these have no way around a gap. */
const FEW = 7;

/** True where some of few tones lie further from their neighbours than those of a scale. @param tones lowest first */
export function isGapped(tones: readonly Tone[]): boolean {
  const hasGap = tones.some(
    ({ written }, i) => i > 0 && pitchCents(written) - pitchCents(tones[i - 1]!.written) >= GAP,
  );
  return hasGap && tones.length < FEW;
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
