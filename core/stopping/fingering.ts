/** Every way a horn can play a written note in a given hand state, ranked as players rank them. */

import { checkNumber, checkObject, checkOneOf } from '../guards/allowed.ts';
import { HARMONICS, type Horn, openPitchCents, tubesOf } from '../horn/horn.ts';
import { PLAYED } from './attempts.ts';
import { checkPlayer, type Fingering, HAND_STATES, type HandState, type Player } from './player.ts';
import { rank } from './ranking.ts';

export * from './player.ts';

/**
 * Natural horns play every harmonic as it comes, the 11th half way between two notes too.
 * @source berlioz (open F♯5, "a bit low"; open A♭5, "a bit high")
 */
const NATURAL_TOLERANCE_CENTS = 50;

/**
 * All fingerings of a note within the player's tolerance, first choice first; those that cannot be played come last.
 * @param soundingCents wanted sounding pitch, in cents above MIDI note 0
 * @returns the fingerings; empty when no tube reaches the note: ask `nearestFingering` what comes closest
 * @throws {TypeError} or {RangeError} when pitch, state or player are not what they may be; the message says what may
 * @example
 * // Written C5 on a horn in F sounds F4, MIDI note 65.
 * fingerings(6500, 'stopped', DEFAULT_SETTINGS)[0].printed // => '2'
 */
export function fingerings(soundingCents: number, state: HandState, player: Player): readonly Fingering[] {
  const cache = CACHES.get(player) ?? knownOf(player);
  const ofState = cache[state] ?? newState(cache, state);
  const known = ofState.get(soundingCents);
  if (known) return known;
  checkNumber('soundingCents', soundingCents);
  const toleranceCents = player.horn.natural
    ? Math.max(player.toleranceCents, NATURAL_TOLERANCE_CENTS)
    : player.toleranceCents;
  const ranked = rank(candidates(soundingCents, state, player, toleranceCents), soundingCents, state, player);
  ofState.set(soundingCents, ranked);
  return ranked;
}

function newState(cache: Known, state: HandState): Map<number, readonly Fingering[]> {
  checkOneOf('state', state, HAND_STATES);
  const ofState = new Map<number, readonly Fingering[]>();
  cache[state] = ofState;
  return ofState;
}

/** A part asks for the same few notes again and again; what a player can do with them does not change. */
type Known = { [state in HandState]?: Map<number, readonly Fingering[]> };
const CACHES = new WeakMap<Player, Known>();

/** Settings come and go as objects; what is known of a horn, an ear and a hand stays. */
const BY_HORN = new WeakMap<Horn, Map<string, Known>>();

function knownOf(player: Player): Known {
  checkObject('player', player, 'a player such as DEFAULT_SETTINGS');
  checkPlayer(player);
  const { horn, toleranceCents, handOffsetCents } = player;
  const ofHorn = BY_HORN.get(horn) ?? new Map<string, Known>();
  BY_HORN.set(horn, ofHorn);
  const key = `${toleranceCents} ${handOffsetCents}`;
  const known = ofHorn.get(key) ?? {};
  ofHorn.set(key, known);
  CACHES.set(player, known);
  return known;
}

/**
 * The fingering that comes closest when none is within tolerance, looking up to a semitone away.
 * @param soundingCents wanted sounding pitch, in cents above MIDI note 0
 * @returns the fingering, or null when there is none
 * @throws {TypeError} or {RangeError} as `fingerings`
 */
export function nearestFingering(soundingCents: number, state: HandState, player: Player): Fingering | null {
  checkNumber('soundingCents', soundingCents);
  checkOneOf('state', state, HAND_STATES);
  checkPlayer(player);
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
