/** How a natural horn is played: the crook its part asks for, and the hand that makes what the harmonics leave out. */

import { HARMONICS, openPitchCents, type Tube, tubesOf } from '../horn/horn.ts';
import { naturalHorn } from '../horn/horns/natural.ts';
import { type Transposition, transpositionCents } from '../pitch/pitch.ts';
import type { HandState, Player } from './fingering.ts';
import { closingBand, closingDegree, stop } from './stopping.ts';

/**
 * The player with the horn in hand at a note: the same throughout, except that a natural horn which follows its part
 * takes the crook of the note's transposition.
 */
export function playerAt<P extends Player>(player: P, transposition: Transposition | null): P {
  if (!player.horn.crookFollowsPart || !transposition) return player;
  const semitones = transpositionCents(transposition) / 100;
  const crooked = CROOKED.get(player) ?? new Map<number, Player>();
  CROOKED.set(player, crooked);
  const at = crooked.get(semitones) ?? {
    ...player,
    horn: naturalHorn({ id: player.horn.id, name: crookName(transposition), semitones }),
  };
  crooked.set(semitones, at);
  return at as P;
}

/** Changing crooks makes another player of the same one; each is made once, so that what is known about it is kept. */
const CROOKED = new WeakMap<Player, Map<number, Player>>();

/**
 * A harmonic this much sharp is taken down by the hand, in cents; a flat one has to stay as it is, since the hand
 * cannot raise it. @source berlioz (the 13th, open "a bit high", listed among the good stopped notes)
 */
const LEFT_OPEN_SHARP_CENTS = 25;
/** A harmonic this much flat is still played open: the 11th. @source berlioz */
const LEFT_OPEN_FLAT_CENTS = 50;

/**
 * What the hand does for a note that its part leaves unmarked, as natural horn parts do.
 * @param soundingCents wanted sounding pitch, in cents above MIDI note 0
 * @returns `open` too for a note that no degree of closing reaches
 */
export function unmarkedHandState(soundingCents: number, { horn, handOffsetCents }: Player): HandState {
  const tube = tubesOf(horn.sides[0]!)[0]!;
  let isOpen = false;
  for (const harmonic of HARMONICS) {
    const deviation = openPitchCents(tube, harmonic) - soundingCents;
    if (deviation >= -LEFT_OPEN_FLAT_CENTS && deviation <= LEFT_OPEN_SHARP_CENTS) isOpen = true;
    else if (deviation > 0)
      return isOpen || harmonic === 1 ? 'open' : closedState(tube, harmonic, soundingCents, handOffsetCents);
  }
  return 'open';
}

function closedState(
  tube: Tube,
  harmonic: number,
  soundingCents: number,
  handOffsetCents: number,
): HandState {
  const degree = closingDegree(stop(tube, harmonic, handOffsetCents), soundingCents);
  return Number.isNaN(degree) ? 'open' : closingBand(degree) === 'full' ? 'stopped' : 'half-stopped';
}

const KEYS = ['C', 'Db', 'D', 'Eb', 'E', 'F', 'F#', 'G', 'Ab', 'A', 'Bb', 'B'] as const;

/** The name of the crook that transposes so: `Eb`, `Bb basso`. */
function crookName({ chromatic, octaveChange }: Transposition): string {
  const semitones = chromatic + 12 * octaveChange;
  const key = KEYS[((semitones % 12) + 12) % 12]!;
  // Only these keys have a crook in either octave.
  const isHigh = key === 'C' ? semitones >= 0 : semitones > -12;
  return key === 'C' || key === 'Bb' ? `${key} ${isHigh ? 'alto' : 'basso'}` : key;
}
