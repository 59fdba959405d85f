/**
 * Pitches as a part spells them, and the arithmetic between spelling, cents and transposition.
 * Absolute pitch is counted in cents above MIDI note 0, so that 6900 is A4.
 */

import { checkNumber, checkOneOf } from '../guards/allowed.ts';

/** A letter of the scale. */
export type Step = 'C' | 'D' | 'E' | 'F' | 'G' | 'A' | 'B';

/** A spelled pitch. */
export interface Pitch {
  readonly step: Step;
  /** In semitones: 1 for a sharp, −1 for a flat; a fraction for quarter tones. */
  readonly alter: number;
  /** Octave 4 starts at middle C. */
  readonly octave: number;
}

/**
 * How a part sounds against what it prints: sounding = written + this.
 * @source MusicXML 4.0, element transpose
 */
export interface Transposition {
  /** In semitones. */
  readonly chromatic: number;
  /** In staff steps. */
  readonly diatonic: number;
  /** Whole octaves added to both. */
  readonly octaveChange: number;
}

/** No transposition: what is printed sounds. */
export const CONCERT_PITCH: Transposition = { chromatic: 0, diatonic: 0, octaveChange: 0 };

/** Horn in F: sounding a fifth below what is written. */
export const HORN_IN_F: Transposition = { chromatic: -7, diatonic: -4, octaveChange: 0 };

/** The steps of the staff, from C up. */
export const STEPS: readonly Step[] = ['C', 'D', 'E', 'F', 'G', 'A', 'B'];
const STEP_SEMITONES = [0, 2, 4, 5, 7, 9, 11] as const;
/** Position of each staff step on the line of fifths, C at 0. */
const STEP_FIFTHS = [0, 2, 4, -1, 1, 3, 5] as const;

/**
 * Pitch in cents above MIDI note 0.
 * @throws {RangeError} when the step is no letter from A to G
 * @example
 * pitchCents(parsePitch('C4')) // => 6000
 */
export function pitchCents(pitch: Pitch): number {
  return 100 * (12 * (pitch.octave + 1) + stepSemitones(pitch.step) + pitch.alter);
}

/**
 * Semitones from C up to a natural step of the same octave, 0 to 11.
 * @throws {RangeError} when the step is no letter from A to G
 */
export function stepSemitones(step: Step): number {
  const semitones = STEP_SEMITONES[STEPS.indexOf(step)];
  if (semitones === undefined) checkOneOf('step', step, STEPS);
  return semitones!;
}

/**
 * Frequency of a pitch given in cents above MIDI note 0.
 * @returns hertz
 * @source ISO 16:1975, A4 = 440 Hz
 */
export function frequencyHz(cents: number): number {
  return 440 * 2 ** ((cents - 6900) / 1200);
}

/** Cents that a part's transposition adds to a written pitch to make it sound. */
export function transpositionCents(transposition: Transposition): number {
  return 100 * (transposition.chromatic + 12 * transposition.octaveChange);
}

/** The sounding pitch, in cents above MIDI note 0, of a written pitch. */
export function soundingCents(written: Pitch, transposition: Transposition): number {
  return pitchCents(written) + transpositionCents(transposition);
}

/**
 * Moves a spelled pitch, so that the spelling follows.
 * @param steps staff steps, whole
 * @param semitones how far the sound moves
 */
export function movePitch(pitch: Pitch, steps: number, semitones: number): Pitch {
  const position = STEPS.indexOf(pitch.step) + steps;
  const octaves = Math.floor(position / 7);
  const moved: Pitch = { step: STEPS[position - 7 * octaves]!, alter: 0, octave: pitch.octave + octaves };
  return { ...moved, alter: (pitchCents(pitch) - pitchCents(moved)) / 100 + semitones };
}

/** The written pitch of a part that sounds like `sounding`, spelled through the part's transposition. */
export function writtenPitch(sounding: Pitch, transposition: Transposition): Pitch {
  return movePitch(
    sounding,
    -(transposition.diatonic + 7 * transposition.octaveChange),
    -(transposition.chromatic + 12 * transposition.octaveChange),
  );
}

/** The sounding pitch, spelled, of a part's written pitch. */
export function soundingPitch(written: Pitch, transposition: Transposition): Pitch {
  return movePitch(
    written,
    transposition.diatonic + 7 * transposition.octaveChange,
    transposition.chromatic + 12 * transposition.octaveChange,
  );
}

/**
 * The plainer of the spellings of one sound: keeps what is given unless it is a double accidental or a white key
 * in disguise (E♯, B♯, F♭, C♭).
 */
export function plainSpelling(pitch: Pitch): Pitch {
  const disguised =
    (pitch.alter === 1 && (pitch.step === 'E' || pitch.step === 'B')) ||
    (pitch.alter === -1 && (pitch.step === 'F' || pitch.step === 'C'));
  if (Math.abs(pitch.alter) <= 1 && !disguised) return pitch;
  return spellCents(pitchCents(pitch), pitch.alter > 0 ? 'sharp' : 'flat');
}

/**
 * Spells the equal-tempered note nearest to a pitch, black keys with the sign asked for.
 * @param cents above MIDI note 0
 * @throws {TypeError} when `cents` is no number
 */
export function spellCents(cents: number, prefer: 'sharp' | 'flat'): Pitch {
  checkNumber('cents', cents);
  const midi = Math.round(cents / 100);
  const octave = Math.floor(midi / 12) - 1;
  const semitone = midi - 12 * (octave + 1);
  const natural = (STEP_SEMITONES as readonly number[]).indexOf(semitone);
  if (natural >= 0) return { step: STEPS[natural]!, alter: 0, octave };
  const below = (STEP_SEMITONES as readonly number[]).indexOf(semitone - 1);
  return prefer === 'sharp'
    ? { step: STEPS[below]!, alter: 1, octave }
    : { step: STEPS[below + 1]!, alter: -1, octave };
}

/** Place on the line of fifths: C 0, G 1, F −1, B♭ −2, F♯ 6. */
export function fifthsOf(pitch: Pitch): number {
  return STEP_FIFTHS[STEPS.indexOf(pitch.step)]! + 7 * pitch.alter;
}

/**
 * A pitch by its key on the keyboard and its place on the line of fifths, as `fifthsOf` counts.
 * @param midi MIDI note number
 * @param fifths place on the line of fifths, C at 0; whole
 * @example
 * printPitch(pitchAt(70, -2)) // => 'B♭4'
 */
export function pitchAt(midi: number, fifths: number): Pitch {
  // F, a place before C, is the first of seven naturals in a row.
  const alter = Math.floor((fifths + 1) / 7);
  const step = STEPS[(STEP_FIFTHS as readonly number[]).indexOf(fifths - 7 * alter)]!;
  return { step, alter, octave: Math.round((midi - stepSemitones(step) - alter) / 12) - 1 };
}

/**
 * What a key signature does to a step: 1 for sharp, −1 for flat, else 0.
 * @param fifths sharps of the signature; flats are negative
 */
export function signatureAlter(step: Step, fifths: number): number {
  const place = STEP_FIFTHS[STEPS.indexOf(step)]!;
  // Sharps come from F on up the line of fifths, flats from B on down it.
  return fifths > 0 && place + 1 < fifths ? 1 : fifths < 0 && 5 - place < -fifths ? -1 : 0;
}

const PITCH_PATTERN = /^([A-Ga-g])(##|x|bb|#|b|♯♯|𝄪|♭♭|𝄫|♯|♭|♮)?(-?\d{1,2})$/;
const ALTERS = new Map<string, number>([
  ['##', 2],
  ['x', 2],
  ['bb', -2],
  ['#', 1],
  ['b', -1],
  ['♯♯', 2],
  ['𝄪', 2],
  ['♭♭', -2],
  ['𝄫', -2],
  ['♯', 1],
  ['♭', -1],
  ['♮', 0],
]);

/**
 * Reads a note name such as `C5`, `F#4`, `Bb3` or `E♭4`.
 * @throws {RangeError} when the text is not a note name with an octave
 */
export function parsePitch(text: string): Pitch {
  const match = PITCH_PATTERN.exec(String(text).trim());
  if (!match) {
    throw new RangeError(
      `"${text}" is not a note name: write a letter A–G, # or b if needed, and the octave, as in C#5 or Bb4`,
    );
  }
  return {
    step: match[1]!.toUpperCase() as Step,
    alter: ALTERS.get(match[2] ?? '♮')!,
    octave: Number(match[3]),
  };
}

const PLAIN_SIGNS: { readonly [alter: number]: string } = {
  [-2]: 'bb',
  [-1]: 'b',
  '0': '',
  '1': '#',
  '2': '##',
};
const PRINTED_SIGNS: { readonly [alter: number]: string } = {
  [-2]: '♭♭',
  [-1]: '♭',
  '0': '',
  '1': '♯',
  '2': '♯♯',
};

/** A note name in plain letters, as data carries it: `C#5`, `Bb4`; quarter tones as `C+0.5,5`. */
export function formatPitch(pitch: Pitch): string {
  const sign = PLAIN_SIGNS[pitch.alter];
  if (sign === undefined) return `${pitch.step}${pitch.alter > 0 ? '+' : ''}${pitch.alter},${pitch.octave}`;
  return `${pitch.step}${sign}${pitch.octave}`;
}

/** A note name as print has it, without the octave: `C♯`, `B♭`. */
export function printPitchClass(pitch: Pitch): string {
  return (
    pitch.step + (PRINTED_SIGNS[pitch.alter] ?? (pitch.alter > 0 ? `+${pitch.alter}` : `${pitch.alter}`))
  );
}

/** A note name as print has it, with the octave: `C♯5`. */
export function printPitch(pitch: Pitch): string {
  return `${printPitchClass(pitch)}${pitch.octave}`;
}
