/**
 * Finds stopped notes that no fingering of this horn brings within the player's tolerance, or only just.
 * Why: a side that closes by three quarters of a tone misses most notes of the scale by a quarter tone.
 * @source ericson; smalley
 */
import type { Horn } from '../horn/horn.ts';
import { isHandState } from '../part/handStates.ts';
import type { Pitch } from '../pitch/pitch.ts';
import { type Fingering, fingerings } from '../stopping/fingering.ts';
import type { Player } from '../stopping/player.ts';
import { lowestStoppableCents } from '../stopping/reach.ts';
import { noteRule } from './rule.ts';

/** The note, and what this horn has for it. */
export interface OffPitch {
  readonly written: Pitch;
  readonly horn: Horn;
  /** The fingering that is off but within the player's tolerance, or null when there is none. */
  readonly fingering: Fingering | null;
  /** What comes closest when there is no fingering. */
  readonly nearest: Fingering | null;
  /**
   * What would help: another crook on a natural horn, playing it open where a side stops in tune, else such a side; only
   * another note where the horn does not have this one open either.
   */
  readonly way: 'another-crook' | 'play-open' | 'another-side' | 'another-note';
}

export const offPitch = noteRule(
  'off-pitch',
  ({ note, reading, player, fingering, nearest, soundingCents }) => {
    if (soundingCents === null || !isHandState(reading.state)) return null;
    const { written } = note;
    const { horn } = player;
    if (fingering) {
      if (fingering.reasons.indexOf('off-pitch') < 0) return null;
      const cause: OffPitch = { written, horn, fingering, nearest: null, way: wayFor(soundingCents, player) };
      return { severity: 'risky', cause };
    }
    if (reading.state === 'stopped' && soundingCents < lowestStoppableCents(player)) return null;
    const cause: OffPitch = { written, horn, fingering: null, nearest, way: wayFor(soundingCents, player) };
    return { severity: 'impossible', cause };
  },
);

function wayFor(soundingCents: number, player: Player): OffPitch['way'] {
  const { natural, sides } = player.horn;
  if (natural) return 'another-crook';
  if (fingerings(soundingCents, 'open', player).length === 0) return 'another-note';
  return sides.some(({ fingeredNote }) => fingeredNote === 'lower-harmonic') ? 'play-open' : 'another-side';
}
