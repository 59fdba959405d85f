/** The notes of a fingering chart: every written note that a player can stop, from the lowest. */

import {
  type Examination,
  type ExaminedNote,
  examine,
  formatPitch,
  nameNear,
  parsePitch,
  passageOf,
  pitchCents,
  type Settings,
  transpositionOf,
} from '../../core/index.ts';

/** The written range a chart covers. From memory: what a player may meet in print. */
const LOWEST = parsePitch('F2');
const HIGHEST = parsePitch('C6');

/** Written G3: below, players read the bass clef, here at its real pitch. @source commonPractice */
const BASS_CLEF_BELOW_CENTS = 5500;

/** One note of a chart, examined on its own, so that no neighbour sways the fingering. */
export interface ChartNote {
  readonly examination: Examination;
  readonly examined: ExaminedNote;
}

/**
 * The notes that can be stopped, surely or with risk, from the lowest; empty for a horn that stops none. A natural horn
 * is shown with its open notes, between which the hand makes the others.
 */
export function chartNotes(player: Settings): readonly ChartNote[] {
  const notes: ChartNote[] = [];
  const transposition = transpositionOf(player);
  for (let cents = pitchCents(LOWEST); cents <= pitchCents(HIGHEST); cents += 100) {
    const written = nameNear(LOWEST, cents);
    const examinedAs = (sign: string) =>
      examine(passageOf(`${formatPitch(written)}${sign}/4`, { transposition }), player);
    const examination = examinedAs(player.horn.natural ? signFor(examinedAs('')) : '+');
    const examined = examination.notes[0]!;
    if (examined.fingering && examined.verdict !== 'impossible') notes.push({ examination, examined });
  }
  return notes;
}

/** The sign for what a natural horn's hand does at an unmarked note: none for part of the way, which a mark says. */
function signFor({ notes: [examined] }: Examination): string {
  const { state } = examined!.reading;
  return state === 'open' ? 'o' : state === 'stopped' ? '+' : '';
}

/** A chart's notes by how they are shown: those that players live on large, the others smaller beside them. */
export interface Registers {
  /** Below the rest, in the bass clef or hard to hold. */
  readonly low: readonly ChartNote[];
  /** From the lowest note of the treble clef that is sure to the highest that is. */
  readonly main: readonly ChartNote[];
  readonly high: readonly ChartNote[];
}

/** Shares the notes of a chart out. */
export function registersOf(notes: readonly ChartNote[]): Registers {
  const isMain = (note: ChartNote) => note.examined.verdict === 'sure' && clefOf(note) === 'treble';
  const first = notes.findIndex(isMain);
  const last = notes.length - 1 - notes.slice().reverse().findIndex(isMain);
  if (first < 0) return { low: [], main: notes, high: [] };
  return { low: notes.slice(0, first), main: notes.slice(first, last + 1), high: notes.slice(last + 1) };
}

/** The clef in which a note is written. */
export function clefOf({ examined }: ChartNote): 'treble' | 'bass' {
  return pitchCents(examined.note.written) < BASS_CLEF_BELOW_CENTS ? 'bass' : 'treble';
}
