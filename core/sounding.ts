/** What each note of a passage sounds, with the two ways in which notes in the bass clef are meant. */
import { type Horn, openPitchCents, tubesOf } from './horn.ts';
import type { Line } from './lines.ts';
import type { Passage, PassageNote } from './passage.ts';
import { soundingCents } from './pitch.ts';
import type { Settings } from './settings.ts';

/** The sounding notes of a passage. */
export interface Sounding {
  /** By note index, in cents above MIDI note 0; null where the transposition is not known. */
  readonly cents: readonly (number | null)[];
  /** How notes in the bass clef were read. */
  readonly bassClef: 'old' | 'new';
  /** The first note of each stretch in the bass clef that may be meant the other way, or was read as old unasked. */
  readonly doubtful: readonly number[];
}

/** Old notation is written this much too low, in cents. @source grove1879, p. 750 */
const OLD_BASS_CLEF_CENTS = 1200;

/** Leaps at changes of clef that are shorter by this much on average, in semitones, speak for the other reading. A choice: over half an octave. */
const TELLING_SEMITONES = 7;

/** Reads every note's pitch as the settings say. */
export function soundingOf(passage: Passage, lines: readonly Line[], settings: Settings): Sounding {
  const { notes } = passage;
  const asWritten = notes.map(({ written, transposition }) =>
    transposition ? soundingCents(written, transposition) : null,
  );
  if (settings.bassClef === 'new' || !notes.some(({ clef }) => clef === 'bass'))
    return { cents: asWritten, bassClef: 'new', doubtful: [] };
  if (settings.bassClef === 'old')
    return { cents: octaveUp(notes, asWritten), bassClef: 'old', doubtful: [] };

  const stretches = bassStretches(notes, lines);
  const saved = semitonesSaved(notes, asWritten, lines);
  const lowest = lowestOpenCents(settings.horn);
  const isTooLow = (i: number): boolean => asWritten[i] !== null && asWritten[i]! < lowest;
  const tooLow = stretches.filter((stretch) => stretch.some(isTooLow));
  const isOld = tooLow.length > 0 && (saved === null || saved >= 0);
  const isSuspected = saved !== null && saved >= TELLING_SEMITONES;
  return {
    cents: isOld ? octaveUp(notes, asWritten) : asWritten,
    bassClef: isOld ? 'old' : 'new',
    doubtful: (isOld || isSuspected ? stretches : []).map((stretch) => stretch[0]!),
  };
}

function octaveUp(notes: readonly PassageNote[], cents: readonly (number | null)[]): (number | null)[] {
  return cents.map((value, i) =>
    value !== null && notes[i]!.clef === 'bass' ? value + OLD_BASS_CLEF_CENTS : value,
  );
}

/** Each player's unbroken runs of notes in the bass clef. */
function bassStretches(notes: readonly PassageNote[], lines: readonly Line[]): number[][] {
  const stretches: number[][] = [];
  for (const line of lines) {
    let isInside = false;
    for (const i of line) {
      const isBass = notes[i]!.clef === 'bass';
      if (isBass && isInside) stretches[stretches.length - 1]!.push(i);
      else if (isBass) stretches.push([i]);
      isInside = isBass;
    }
  }
  return stretches;
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
