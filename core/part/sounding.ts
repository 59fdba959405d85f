/** What each note of a passage sounds, with the two ways in which notes in the bass clef are meant. */
import { type Horn, openPitchCents, tubesOf } from '../horn/horn.ts';
import { soundingCents } from '../pitch/pitch.ts';
import type { Line } from './lines.ts';
import type { Passage, PassageNote } from './passage.ts';
import type { Settings } from './settings.ts';

/** The sounding notes of a passage. */
export interface Sounding {
  /** By note index, in cents above MIDI note 0; null where the transposition is not known. */
  readonly cents: readonly (number | null)[];
  /** How notes in the bass clef were read. */
  readonly bassClef: 'old' | 'new';
  /** Why that reading may be wrong, or was taken unasked; null where the settings or the notes leave no doubt. */
  readonly doubt: ClefDoubt | null;
}

/** A bass clef that is read by guess. */
export interface ClefDoubt {
  /** Each player's first note in the bass clef. */
  readonly noteIndexes: readonly number[];
  /** Notes that would lie below the horn; or leaps at changes of clef that another octave makes shorter. */
  readonly because: 'too-low' | 'leaps';
}

/** Old notation is written this much too low, in cents. @source grove1879, p. 750 */
const OLD_BASS_CLEF_CENTS = 1200;

/** Leaps at changes of clef that old notation makes shorter by this much on average, in semitones, decide for it. A choice: over half an octave. */
const DECIDING_SEMITONES = 7;
/** By this much they leave a doubt. A choice: more than a step. */
const DOUBTFUL_SEMITONES = 2;

/** Reads every note's pitch as the settings say. */
export function soundingOf(passage: Passage, lines: readonly Line[], settings: Settings): Sounding {
  const { notes } = passage;
  const asWritten = notes.map(({ written, transposition }) =>
    transposition ? soundingCents(written, transposition) : null,
  );
  if (settings.bassClef === 'new' || !notes.some(({ clef }) => clef === 'bass'))
    return { cents: asWritten, bassClef: 'new', doubt: null };
  if (settings.bassClef === 'old') return { cents: octaveUp(notes, asWritten), bassClef: 'old', doubt: null };

  const saved = semitonesSaved(notes, asWritten, lines);
  const lowest = lowestOpenCents(settings.horn);
  const isTooLow = notes.some(
    ({ clef }, i) => clef === 'bass' && asWritten[i] !== null && asWritten[i]! < lowest,
  );
  const because = isTooLow && (saved === null || saved >= 0) ? 'too-low' : 'leaps';
  const isOld = because === 'too-low' || (saved !== null && saved >= DECIDING_SEMITONES);
  const isDoubtful = isOld || (saved !== null && saved >= DOUBTFUL_SEMITONES);
  return {
    cents: isOld ? octaveUp(notes, asWritten) : asWritten,
    bassClef: isOld ? 'old' : 'new',
    doubt: isDoubtful ? { noteIndexes: firstBassNotes(notes, lines), because } : null,
  };
}

function octaveUp(notes: readonly PassageNote[], cents: readonly (number | null)[]): (number | null)[] {
  return cents.map((value, i) =>
    value !== null && notes[i]!.clef === 'bass' ? value + OLD_BASS_CLEF_CENTS : value,
  );
}

function firstBassNotes(notes: readonly PassageNote[], lines: readonly Line[]): number[] {
  const firsts: number[] = [];
  for (const line of lines) {
    const first = line.filter((i) => notes[i]!.clef === 'bass')[0];
    if (first !== undefined) firsts.push(first);
  }
  return firsts.sort((a, b) => a - b);
}

/** By how many semitones the leaps at changes of clef are shorter, on average, in the old reading; null without such leaps. */
function semitonesSaved(
  notes: readonly PassageNote[],
  cents: readonly (number | null)[],
  lines: readonly Line[],
): number | null {
  let saved = 0;
  let leaps = 0;
  for (const line of lines) {
    for (let at = 1; at < line.length; at++) {
      const before = cents[line[at - 1]!]!;
      const after = cents[line[at]!]!;
      const isBass = notes[line[at]!]!.clef === 'bass';
      if (before === null || after === null || isBass === (notes[line[at - 1]!]!.clef === 'bass')) continue;
      const rise = after - before;
      saved += Math.abs(rise) - Math.abs(rise + (isBass ? OLD_BASS_CLEF_CENTS : -OLD_BASS_CLEF_CENTS));
      leaps += 1;
    }
  }
  return leaps > 0 ? saved / leaps / 100 : null;
}

/** The 2nd harmonic of the longest tube: the 1st is hardly ever written. From memory. */
function lowestOpenCents(horn: Horn): number {
  let lowest = Number.POSITIVE_INFINITY;
  for (const side of horn.sides)
    for (const tube of tubesOf(side)) lowest = Math.min(lowest, openPitchCents(tube, 2));
  // A half tone of room, for tubes that stand sharp.
  return lowest - 50;
}
