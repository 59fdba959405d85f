/** Keys as a horn part is written in them, and the notes of their scales. */
import {
  fifthsOf,
  movePitch,
  type Pitch,
  parsePitch,
  pitchCents,
  printPitchClass,
  signatureAlter,
  spellCents,
} from '../pitch/pitch.ts';

/** A key of the written part. */
export interface Key {
  /** The tonic, in octave 4. */
  readonly tonic: Pitch;
  readonly mode: 'major' | 'minor';
  /** Sharps of the signature; flats are negative; −7 to 7. */
  readonly fifths: number;
}

/** A note of a key and its place in the scale, the tonic being degree 0 and the leading note 6. */
export interface Degree {
  readonly written: Pitch;
  /** 0 for the tonic … 6 for the leading note. */
  readonly degree: number;
}

const STEPS_UP = {
  major: [0, 2, 4, 5, 7, 9, 11],
  // The raised seventh leads home, so that a phrase in minor can close.
  minor: [0, 2, 3, 5, 7, 8, 11],
} as const;

const MOST_SIGNS = 7;

/**
 * Reads a key such as `F`, `Bb`, `E♭ major`, `Dm` or `C# minor`.
 * @throws {RangeError} when the text is no key, or one with more than seven signs
 */
export function parseKey(text: string): Key {
  const match = /^\s*([A-Ga-g])\s*(#|b|♯|♭)?\s*[- ]?\s*(m|min|minor|maj|major)?\s*$/.exec(text);
  if (!match)
    throw new RangeError(
      `"${text}" is not a key: write a tonic and, for minor, an m, as in F, Bb, Dm or C# minor`,
    );
  const tonic = parsePitch(`${match[1]}${match[2] ?? ''}4`);
  const mode = match[3] !== undefined && /^mi|^m$/.test(match[3]) ? 'minor' : 'major';
  const fifths = fifthsOf(tonic) - (mode === 'minor' ? 3 : 0);
  if (Math.abs(fifths) > MOST_SIGNS)
    throw new RangeError(
      `"${text}" needs ${Math.abs(fifths)} signs: choose a key with at most ${MOST_SIGNS}`,
    );
  return { tonic, mode, fifths };
}

/** A key in words, as print has it: `E♭ major`. */
export function printKey({ tonic, mode }: Key): string {
  return `${printPitchClass(tonic)} ${mode}`;
}

/** The notes of a key from `low` to `high`, both included, lowest first. */
export function scaleBetween(key: Key, low: Pitch, high: Pitch): readonly Degree[] {
  const from = pitchCents(low);
  const to = pitchCents(high);
  const notes = NOTES.get(key) ?? notesOf(key);
  NOTES.set(key, notes);
  return notes.filter(({ written }) => {
    const cents = pitchCents(written);
    return cents >= from && cents <= to;
  });
}

/** Every note of a key that was asked for; an étude asks again and again. */
const NOTES = new WeakMap<Key, readonly Degree[]>();

function notesOf(key: Key): readonly Degree[] {
  const notes: Degree[] = [];
  for (let octave = -5; octave <= 5; octave++)
    STEPS_UP[key.mode].forEach((semitones, degree) => {
      notes.push({ written: movePitch(key.tonic, 7 * octave + degree, 12 * octave + semitones), degree });
    });
  return notes;
}

/** A note as a key has it: the same place on the staff, with the key's own sign. */
export function asIn(key: Key, { step, octave }: Pitch): Pitch {
  const leading = movePitch(key.tonic, -1, -1);
  return { step, octave, alter: leading.step === step ? leading.alter : signatureAlter(step, key.fifths) };
}

/**
 * Where a piece in this key goes and comes back from: the dominant and the relative minor of a major key, the relative
 * major and the subdominant of a minor one; only keys that can be written.
 */
export function neighbourKeys({ tonic, mode, fifths }: Key): readonly Key[] {
  const neighbours: readonly Key[] =
    mode === 'major'
      ? [
          { tonic: inOctave4(movePitch(tonic, 4, 7)), mode: 'major', fifths: fifths + 1 },
          { tonic: inOctave4(movePitch(tonic, -2, -3)), mode: 'minor', fifths },
        ]
      : [
          { tonic: inOctave4(movePitch(tonic, 2, 3)), mode: 'major', fifths },
          { tonic: inOctave4(movePitch(tonic, 3, 5)), mode: 'minor', fifths: fifths - 1 },
        ];
  return neighbours.filter((each) => Math.abs(each.fifths) <= MOST_SIGNS);
}

/** The tonic of another key as a degree of this one. */
export function degreeOfTonic(home: Key, other: Key): number {
  return (LETTERS.indexOf(other.tonic.step) - LETTERS.indexOf(home.tonic.step) + 7) % 7;
}

const LETTERS = 'CDEFGAB';

function inOctave4(pitch: Pitch): Pitch {
  return { ...pitch, octave: 4 };
}

/** Black keys outside the key as horn charts name them: C♯, E♭, F♯, A♭, B♭. @source commonPractice */
const SHARP_BLACK_KEYS: readonly number[] = [1, 6];

/** Spells the note nearest to `cents` above MIDI note 0: as the key has it, else as horn charts do. */
export function spellInKey(key: Key, cents: number): Pitch {
  const semitone = Math.round(cents / 100);
  const chart = spellCents(
    cents,
    SHARP_BLACK_KEYS.indexOf(((semitone % 12) + 12) % 12) >= 0 ? 'sharp' : 'flat',
  );
  return scaleBetween(key, chart, chart)[0]?.written ?? chart;
}
