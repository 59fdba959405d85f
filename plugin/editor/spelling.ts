/** Spelled pitches, transposition and clef from the host's numbers: a MIDI pitch, places on the line of fifths, a staff line. */

import {
  crookFromName,
  type Pitch,
  pitchAt,
  pitchCents,
  STEPS,
  type Transposition,
  transpositionCents,
} from '../../core/index.ts';
import type { HostInterval, HostNote } from './hostApi.ts';

/** The host's number for C natural. */
const C_NATURAL = 14;

/** The pitch at a MIDI number when it is spelled at a place on the host's line of fifths. */
export function spelledPitch(midi: number, tpc: number): Pitch {
  return pitchAt(midi, tpc - C_NATURAL);
}

/**
 * The transposition of a note's instrument. The host tells it without its octave: the part's name does, where it tells
 * a key, and a horn without one sounds below its written note by less than an octave. Where the host transposes
 * nothing the name alone counts; `null` when that is silent too.
 */
export function transpositionOf({ tpc1, tpc2 }: HostNote, partName: string): Transposition | null {
  const named = crookFromName(partName);
  const fifths = tpc2 - tpc1;
  if (fifths === 0) return named.ok ? named.transposition : null;
  const chromatic = -modulo(7 * fifths, 12);
  if (named.ok && modulo(transpositionCents(named.transposition) / 100, 12) === modulo(chromatic, 12)) {
    return named.transposition;
  }
  return { chromatic, diatonic: -modulo(4 * fifths, 7), octaveChange: 0 };
}

/** A transposition as the host itself states it, written to sounding; `null` where it transposes nothing. */
export function statedTransposition(interval: HostInterval): Transposition | null {
  const { chromatic, diatonic } = interval;
  if (chromatic === 0 && diatonic === 0) return null;
  // Octaves are told apart from the rest, as MusicXML does.
  const octaveChange = Math.ceil(diatonic / 7) + 0;
  return { chromatic: chromatic - 12 * octaveChange, diatonic: diatonic - 7 * octaveChange, octaveChange };
}

/** True where an interval from written to sounding pitch may be that of a note's instrument: up to octaves its spellings tell. */
export function isIntervalOf({ tpc1, tpc2 }: HostNote, { chromatic }: HostInterval): boolean {
  return modulo(7 * (tpc1 - tpc2), 12) === modulo(chromatic, 12);
}

/**
 * From written to sounding pitch with its octave, as far as the notes' places on the staff show it.
 * @returns `null` where nothing is transposed, where notes differ, and with Concert Pitch on
 */
export function intervalShown(notes: readonly HostNote[]): HostInterval | null {
  let shown: HostInterval | null = null;
  for (const note of notes) {
    const { pitch, tpc, tpc1, tpc2, line } = note;
    const topLine = TOP_LINES[clefOf(note)];
    if (topLine === null) continue;
    if (tpc !== tpc2) return null;
    const { step, alter } = spelledPitch(60, tpc2);
    const stepsUp = topLine - line;
    const written = { step, alter, octave: Math.floor(stepsUp / STEPS.length) };
    const sounding = spelledPitch(pitch, tpc1);
    const interval = {
      chromatic: pitch - pitchCents(written) / 100,
      diatonic: STEPS.length * sounding.octave + STEPS.indexOf(sounding.step) - stepsUp,
    };
    if (shown && (shown.chromatic !== interval.chromatic || shown.diatonic !== interval.diatonic))
      return null;
    shown = interval;
  }
  return shown && (shown.chromatic !== 0 || shown.diatonic !== 0) ? shown : null;
}

/** Steps from the lowest C to the top line: F5 and A3. */
const TOP_LINES = { treble: 38, bass: 26, other: null } as const;

/** The pitch as the part prints it. @param stated what the host states, where it does */
export function notatedPitch(note: HostNote, partName: string, stated: Transposition | null): Pitch {
  const hostTransposes = note.tpc2 !== note.tpc1;
  const transposition = stated ?? (hostTransposes ? transpositionOf(note, partName) : null);
  const semitones = transposition ? transpositionCents(transposition) / 100 : 0;
  return spelledPitch(note.pitch - semitones, note.tpc2);
}

/** The clef, from the step that its top line carries, whatever octave line is in force. */
export function clefOf({ tpc, line }: HostNote): 'treble' | 'bass' | 'other' {
  const { step } = spelledPitch(60, tpc);
  const topLine = STEPS[modulo(STEPS.indexOf(step) + line, 7)];
  if (topLine === 'F') return 'treble';
  return topLine === 'A' ? 'bass' : 'other';
}

function modulo(value: number, by: number): number {
  return ((value % by) + by) % by;
}
