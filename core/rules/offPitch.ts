/**
 * Finds stopped notes that no fingering of this horn brings within the player's tolerance, or only just.
 * Why: a side that closes by three quarters of a tone misses most notes of the scale by a quarter tone.
 * @source ericson; smalley
 */

import type { Horn } from '../horn/horn.ts';
import { isHandState } from '../part/handStates.ts';
import { printPitch } from '../pitch/pitch.ts';
import { lowestStoppableCents } from '../stopping/reach.ts';
import { deviationText } from '../words/wording.ts';
import { noteRule } from './rule.ts';

export const offPitch = noteRule(
  'off-pitch',
  ({ note, reading, player, fingering, nearest, soundingCents }) => {
    if (soundingCents === null || !isHandState(reading.state)) return null;
    const written = printPitch(note.written);
    if (fingering) {
      if (fingering.reasons.indexOf('off-pitch') < 0) return null;
      return {
        severity: 'risky',
        brief: 'off pitch',
        message: `${written} on ${fingering.printed || `harmonic ${fingering.harmonic}`} comes out ${deviationText(fingering.deviationCents)}: the lip has to help.`,
        remedy: 'Tune it with the lip and a little more or less hand, or try one of the alternatives.',
      };
    }
    if (reading.state === 'stopped' && soundingCents < lowestStoppableCents(player)) return null;
    return {
      severity: 'impossible',
      brief: 'no fingering',
      message: nearest
        ? `No fingering of a ${player.horn.label} gives ${written} here; the nearest, ${nearest.printed || `harmonic ${nearest.harmonic}`}, is ${deviationText(nearest.deviationCents)}.`
        : `No fingering of a ${player.horn.label} gives ${written} here.`,
      remedy: remedyOn(player.horn),
    };
  },
);

function remedyOn({ natural, sides }: Horn): string {
  if (natural) return 'Choose another crook, or change the note.';
  if (sides.some(({ fingeredNote }) => fingeredNote === 'lower-harmonic'))
    return 'Change the note, or play it open.';
  return 'Stop it on an F side or with a stopping valve, or change the note.';
}
