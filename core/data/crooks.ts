/** Crooks of the natural horn, from the shortest. */

/** One crook. Its harmonics are written C2, C3, G3, C4, E4, … whatever it sounds. */
export interface Crook {
  /** For options and settings: `natural-eb`. */
  readonly id: string;
  /** `Eb`, `Bb basso`. */
  readonly name: string;
  /** Written to sounding, in semitones. @source grove1954 by way of ericson; A♭ and D♭ computed between their neighbours */
  readonly semitones: number;
  /** Length of the whole horn, in inches; null where the table has none. @source grove1954 by way of ericson */
  readonly lengthInches: number | null;
}

/** The crooks of the natural horn, from the shortest to the longest. */
export const CROOKS: readonly Crook[] = [
  { id: 'natural-c-alto', name: 'C alto', semitones: 0, lengthInches: 98.125 },
  { id: 'natural-bb-alto', name: 'Bb alto', semitones: -2, lengthInches: 110.5 },
  { id: 'natural-a', name: 'A', semitones: -3, lengthInches: 117 },
  { id: 'natural-ab', name: 'Ab', semitones: -4, lengthInches: null },
  { id: 'natural-g', name: 'G', semitones: -5, lengthInches: 131 },
  { id: 'natural-f', name: 'F', semitones: -7, lengthInches: 147.5 },
  { id: 'natural-e', name: 'E', semitones: -8, lengthInches: 156 },
  { id: 'natural-eb', name: 'Eb', semitones: -9, lengthInches: 165.25 },
  { id: 'natural-d', name: 'D', semitones: -10, lengthInches: 175.25 },
  { id: 'natural-db', name: 'Db', semitones: -11, lengthInches: null },
  { id: 'natural-c-basso', name: 'C basso', semitones: -12, lengthInches: 196.25 },
  { id: 'natural-bb-basso', name: 'Bb basso', semitones: -14, lengthInches: 221 },
];
