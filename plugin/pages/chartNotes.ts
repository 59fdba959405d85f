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

/** One note of a chart, examined on its own, so that no neighbour sways the fingering. */
export interface ChartNote {
  readonly examination: Examination;
  readonly examined: ExaminedNote;
}

/** The notes that can be stopped, surely or with risk, from the lowest; empty for a horn that stops none. */
export function chartNotes(player: Settings): readonly ChartNote[] {
  const notes: ChartNote[] = [];
  const transposition = transpositionOf(player);
  for (let cents = pitchCents(LOWEST); cents <= pitchCents(HIGHEST); cents += 100) {
    const written = nameNear(LOWEST, cents);
    const examination = examine(passageOf(`${formatPitch(written)}+/4`, { transposition }), player);
    const examined = examination.notes[0]!;
    if (examined.verdict !== 'impossible') notes.push({ examination, examined });
  }
  return notes;
}
