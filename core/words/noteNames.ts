/**
 * The names of notes: English letters, German letters, or syllables. A German `B` is an English B♭, so that no name may
 * be printed without knowing who reads it.
 */
import { type Pitch, parsePitch, printPitch, printPitchClass, type Step } from '../pitch/pitch.ts';
import type { NamedPitch } from '../stopping/names.ts';
import type { Reader } from './language.ts';

/** The name of a note without its octave: `C♯`, `Cis`, `do♯`. */
export function noteClassName(pitch: Pitch, { noteNaming, words }: Reader): string {
  if (noteNaming === 'english') return printPitchClass(pitch);
  if (noteNaming === 'german') return GERMAN[pitch.step][pitch.alter] ?? printPitchClass(pitch);
  return words.syllables[pitch.step] + printPitchClass(pitch).slice(1);
}

/**
 * The name of a note in its octave. Numbers count as in `C4` for middle C, beside syllables too; German letters are
 * small or great and carry strokes: `cis″` for C♯5.
 * @source ellis: Helmholtz's own signs for the octaves
 */
export function noteName(pitch: Pitch, reader: Reader): string {
  const { noteNaming } = reader;
  if (noteNaming === 'english') return printPitch(pitch);
  const name = noteClassName(pitch, reader);
  if (noteNaming === 'solfege') return `${name}${pitch.octave}`;
  if (pitch.octave >= 3) return name.toLowerCase() + (STROKES[pitch.octave - 3] ?? `^${pitch.octave - 3}`);
  return pitch.octave === 2 ? name : `${name}${BELOW[1 - pitch.octave] ?? ''}`;
}

/** A natural pitch further than this from the note it is named after gets an arrow, in cents: about the 11th and 13th harmonics. */
const ARROW_CENTS = 38;

/** A natural pitch without its octave, with an arrow where it lies nearly between two notes: `C♯`, `F↑`. */
export function naturalName({ pitch, deviationCents }: NamedPitch, reader: Reader): string {
  return noteClassName(pitch, reader) + arrowOf(deviationCents);
}

/** `↑` or `↓` for a pitch that lies nearly between two notes, else nothing. */
export function arrowOf(deviationCents: number): string {
  return deviationCents >= ARROW_CENTS ? '↑' : deviationCents <= -ARROW_CENTS ? '↓' : '';
}

/** The key of a side or a crook, with what stands beside it. */
export interface NamedKey {
  /** `B♭`, `B`, `si♭`. */
  readonly key: string;
  /** `high F`; `C alto`, `C basso`. */
  readonly register: 'high' | 'alto' | 'basso' | null;
}

/** Reads the name of a side or a crook, such as `Bb`, `high F` or `C basso`; null for a name of the user's own. */
export function namedKey(name: string, reader: Reader): NamedKey | null {
  const parts = /^(high )?([A-G][b#]?)( alto| basso)?$/.exec(name);
  if (!parts) return null;
  const register = (parts[1] ?? parts[3] ?? '').trim();
  return {
    key: noteClassName(parsePitch(`${parts[2]}4`), reader),
    register: register === 'high' || register === 'alto' || register === 'basso' ? register : null,
  };
}

const STROKES = ['', '′', '″', '‴', '⁗'] as const;
const BELOW = ['₁', '₂'] as const;

/** By step and alteration. @source commonPractice */
const GERMAN: { readonly [step in Step]: { readonly [alter: number]: string } } = {
  C: { [-2]: 'Ceses', [-1]: 'Ces', '0': 'C', '1': 'Cis', '2': 'Cisis' },
  D: { [-2]: 'Deses', [-1]: 'Des', '0': 'D', '1': 'Dis', '2': 'Disis' },
  E: { [-2]: 'Eses', [-1]: 'Es', '0': 'E', '1': 'Eis', '2': 'Eisis' },
  F: { [-2]: 'Feses', [-1]: 'Fes', '0': 'F', '1': 'Fis', '2': 'Fisis' },
  G: { [-2]: 'Geses', [-1]: 'Ges', '0': 'G', '1': 'Gis', '2': 'Gisis' },
  A: { [-2]: 'Ases', [-1]: 'As', '0': 'A', '1': 'Ais', '2': 'Aisis' },
  B: { [-2]: 'Heses', [-1]: 'B', '0': 'H', '1': 'His', '2': 'Hisis' },
};
