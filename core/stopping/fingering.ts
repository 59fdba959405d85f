/** Every way a horn can play a written note in a given hand state, ranked as players rank them. */

import { HARMONICS, type Horn, openPitchCents, tubesOf } from '../horn/horn.ts';
import { PLAYED } from './attempts.ts';
import type { Fingering, HandState, Player } from './player.ts';
import { rank } from './ranking.ts';

export * from './player.ts';

/**
 * Natural horns play every harmonic as it comes, the 11th half way between two notes too.
 * @source berlioz (open F♯5, "a bit low"; open A♭5, "a bit high")
 */
const NATURAL_TOLERANCE_CENTS = 50;

/**
 * All fingerings of a note within the player's tolerance, first choice first; those that cannot be played come last.
 * Empty when no tube reaches the note: ask `nearestFingering` what comes closest.
 * @param soundingCents wanted sounding pitch, in cents above MIDI note 0
 */
export function fingerings(soundingCents: number, state: HandState, player: Player): readonly Fingering[] {
  const cache = CACHES.get(player) ?? knownOf(player);
  const ofState = cache[state] ?? new Map<number, readonly Fingering[]>();
  cache[state] = ofState;
  const known = ofState.get(soundingCents);
  if (known) return known;
  const toleranceCents = player.horn.natural
    ? Math.max(player.toleranceCents, NATURAL_TOLERANCE_CENTS)
    : player.toleranceCents;
  const ranked = rank(candidates(soundingCents, state, player, toleranceCents), soundingCents, state, player);
  ofState.set(soundingCents, ranked);
  return ranked;
}

/** A part asks for the same few notes again and again; what a player can do with them does not change. */
type Known = { [state in HandState]?: Map<number, readonly Fingering[]> };
const CACHES = new WeakMap<Player, Known>();

/** Settings come and go as objects; what is known of a horn, an ear and a hand stays. */
const BY_HORN = new WeakMap<Horn, { [earAndHand: string]: Known }>();

function knownOf(player: Player): Known {
  const { horn, toleranceCents, handOffsetCents } = player;
  const ofHorn = BY_HORN.get(horn) ?? {};
  BY_HORN.set(horn, ofHorn);
  const key = `${toleranceCents} ${handOffsetCents}`;
  const known = ofHorn[key] ?? {};
  ofHorn[key] = known;
  CACHES.set(player, known);
  return known;
}

/** The fingering that comes closest when none is within tolerance, looking up to a semitone away; null when there is none. */
export function nearestFingering(soundingCents: number, state: HandState, player: Player): Fingering | null {
  const within = candidates(soundingCents, state, player, 100);
  within.sort(
    (a, b) => Math.abs(a.deviationCents) - Math.abs(b.deviationCents) || a.tube.order - b.tube.order,
  );
  return within[0] ?? null;
}

function candidates(
  soundingCents: number,
  state: HandState,
  player: Player,
  toleranceCents: number,
): Fingering[] {
  const found: Fingering[] = [];
  for (const side of player.horn.sides) {
    if (!side.stoppable && (state === 'stopped' || state === 'half-stopped')) continue;
    for (const tube of tubesOf(side)) {
      for (const harmonic of HARMONICS) {
        // Neighbouring harmonics lie less than an octave apart from the 2nd up, so anything further off cannot be it.
        const distance = openPitchCents(tube, harmonic) - soundingCents;
        if (distance < -toleranceCents - 100 || distance > 1200) continue;
        const fingering = PLAYED[state](tube, harmonic, soundingCents, player);
        if (fingering && Math.abs(fingering.deviationCents) <= toleranceCents + ROUNDING_CENTS)
          found.push(fingering);
      }
    }
  }
  return found;
}

/** Floating-point room at the edge of the tolerance. */
const ROUNDING_CENTS = 1e-6;
