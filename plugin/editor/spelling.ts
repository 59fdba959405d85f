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
import type { HostInterval } from './hostApi.ts';
import { isSameInterval } from './scoreBar.ts';
import type { PartWalk } from './scoreWalk.ts';

/** What the host says of a note's pitch, as `HostNote` explains it. */
export interface NumberedNote {
  readonly pitch: number;
  readonly tpc: number;
  readonly tpc1: number;
  readonly tpc2: number;
  readonly line: number;
}

/** A note as its part prints it. */
export interface SpelledNote {
  readonly written: Pitch;
  /** Written to sounding; `null` where nothing tells. */
  readonly transposition: Transposition | null;
  readonly clef: Clef;
}

export type Clef = 'treble' | 'bass' | 'other';

/** What a note was spelled from, and how. */
interface Spelled {
  readonly note: StatedNote;
  readonly spelled: SpelledNote;
}

type StatedNote = NumberedNote & { readonly interval: HostInterval | null };

/** How the notes of a part are printed. The same notes come again and again: each is reckoned once. */
export class Spelling {
  private readonly partName: string;
  private readonly partInterval: HostInterval | null;
  /** By pitch: few notes share one, and a name for each would take longer to make than it takes to look through them. */
  private readonly known: Spelled[][] = [];

  /** @param partInterval from written to sounding pitch, as far as it is known of the whole part */
  constructor(partName: string, partInterval: HostInterval | null) {
    this.partName = partName;
    this.partInterval = partInterval;
  }

  of(note: StatedNote): SpelledNote {
    let ofPitch = this.known[note.pitch];
    if (!ofPitch) {
      ofPitch = [];
      this.known[note.pitch] = ofPitch;
    }
    for (const { note: other, spelled } of ofPitch) if (isSpelledAlike(note, other)) return spelled;
    const stated = this.statedFor(note, note.interval);
    const spelled = {
      written: notatedPitch(note, this.partName, stated),
      transposition: stated ?? transpositionOf(note, this.partName),
      clef: clefOf(note),
    };
    ofPitch.push({ note, spelled });
    return spelled;
  }

  /** Written to sounding, where the host states it with its octave. */
  private statedFor(note: NumberedNote, interval: HostInterval | null): Transposition | null {
    if (interval) return statedTransposition(interval);
    const { partInterval } = this;
    // A player may have changed instruments.
    return partInterval && isIntervalOf(note, partInterval) ? statedTransposition(partInterval) : null;
  }
}

/** True where two notes of one pitch are printed alike. */
function isSpelledAlike(one: StatedNote, other: StatedNote): boolean {
  return (
    one.tpc === other.tpc &&
    one.tpc1 === other.tpc1 &&
    one.tpc2 === other.tpc2 &&
    one.line === other.line &&
    isSameInterval(one.interval, other.interval)
  );
}

/** The host's number for C natural. */
const C_NATURAL = 14;

/** The pitch at a MIDI number when it is spelled at a place on the host's line of fifths. */
function spelledPitch(midi: number, tpc: number): Pitch {
  return pitchAt(midi, tpc - C_NATURAL);
}

/**
 * The transposition of a note's instrument. The host tells it without its octave: the part's name does, where it tells
 * a key, and a horn without one sounds below its written note by less than an octave. Where the host transposes
 * nothing the name alone counts; `null` when that is silent too.
 */
export function transpositionOf({ tpc1, tpc2 }: NumberedNote, partName: string): Transposition | null {
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
function isIntervalOf({ tpc1, tpc2 }: NumberedNote, { chromatic }: HostInterval): boolean {
  return modulo(7 * (tpc1 - tpc2), 12) === modulo(chromatic, 12);
}

/**
 * From written to sounding pitch with its octave, as far as the notes' places on the staff show it.
 * @returns `null` where nothing is transposed, where notes differ, and with Concert Pitch on
 */
export function intervalShown({ bars }: PartWalk): HostInterval | null {
  let shown: HostInterval | null = null;
  for (const { chords } of bars)
    for (const { notes } of chords)
      for (const note of notes) {
        if (TOP_LINES[clefOf(note)] === null) continue;
        const interval = intervalAt(note);
        if (!interval || (shown && !isSameInterval(shown, interval))) return null;
        shown = interval;
      }
  return shown && (shown.chromatic !== 0 || shown.diatonic !== 0) ? shown : null;
}

/** `null` with Concert Pitch on. */
function intervalAt(note: NumberedNote): HostInterval | null {
  const { pitch, tpc, tpc1, tpc2, line } = note;
  if (tpc !== tpc2) return null;
  const { step, alter } = spelledPitch(60, tpc2);
  const stepsUp = TOP_LINES[clefOf(note)]! - line;
  const written = { step, alter, octave: Math.floor(stepsUp / STEPS.length) };
  const sounding = spelledPitch(pitch, tpc1);
  return {
    chromatic: pitch - pitchCents(written) / 100,
    diatonic: STEPS.length * sounding.octave + STEPS.indexOf(sounding.step) - stepsUp,
  };
}

/** Steps from the lowest C to the top line: F5 and A3. */
const TOP_LINES = { treble: 38, bass: 26, other: null } as const;

/** The pitch as the part prints it. @param stated what the host states, where it does */
export function notatedPitch(note: NumberedNote, partName: string, stated: Transposition | null): Pitch {
  const hostTransposes = note.tpc2 !== note.tpc1;
  const transposition = stated ?? (hostTransposes ? transpositionOf(note, partName) : null);
  const semitones = transposition ? transpositionCents(transposition) / 100 : 0;
  return spelledPitch(note.pitch - semitones, note.tpc2);
}

/** The clef, from the step that its top line carries, whatever octave line is in force. */
export function clefOf({ tpc, line }: NumberedNote): Clef {
  const { step } = spelledPitch(60, tpc);
  const topLine = STEPS[modulo(STEPS.indexOf(step) + line, 7)];
  if (topLine === 'F') return 'treble';
  return topLine === 'A' ? 'bass' : 'other';
}

function modulo(value: number, by: number): number {
  return ((value % by) + by) % by;
}
