/**
 * Finds stopped notes that no fingering of this horn brings within the player's tolerance, or only just.
 * Why: a side that closes by three quarters of a tone misses most notes of the scale by a quarter tone.
 * @source ericson; smalley
 */

import { isHandState } from '../handStates.ts';
import { printPitch } from '../pitch.ts';
import { lowestStoppableCents } from '../reach.ts';
import { noteRule } from './rule.ts';

export const offPitch = noteRule(
  'off-pitch',
  ({ note, reading, fingering, nearest, soundingCents }, { settings }) => {
    if (soundingCents === null || !isHandState(reading.state)) return null;
    const written = printPitch(note.written);
    if (fingering) {
      if (fingering.reasons.indexOf('off-pitch') < 0) return null;
      return {
        severity: 'risky',
        brief: 'off pitch',
        message: `${written} on ${fingering.printed} comes out ${cents(fingering.deviationCents)}: the lip has to help.`,
        remedy: 'Tune it with the lip and a little more or less hand, or try one of the alternatives.',
      };
    }
    if (reading.state === 'stopped' && soundingCents < lowestStoppableCents(settings)) return null;
    return {
      severity: 'impossible',
      brief: 'no fingering',
      message: nearest
        ? `No fingering of a ${settings.horn.label} gives ${written} here; the nearest, ${nearest.printed}, is ${cents(nearest.deviationCents)}.`
        : `No fingering of a ${settings.horn.label} gives ${written} here.`,
      remedy: 'Stop it on an F side or with a stopping valve, or change the note.',
    };
  },
);

function cents(deviation: number): string {
  return `${Math.abs(Math.round(deviation))} cents ${deviation > 0 ? 'sharp' : 'flat'}`;
}
