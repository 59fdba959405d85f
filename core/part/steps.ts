/** How a player gets from one note to the next: the time there is, and what the part asks to be joined. */
import type { Line } from './lines.ts';
import type { PassageNote } from './passage.ts';

/** From one note of a player to the next. */
export interface Step {
  /** Index of the first note in the passage. */
  readonly from: number;
  /** Index of the second. */
  readonly to: number;
  /** From onset to onset; a rest between them counts. */
  readonly seconds: number;
  /** What joins just these two: a glissando, slide or bend, or a tie. */
  readonly joined: 'glissando' | 'tie' | null;
  /** True under a slur (or tie) that begins at or before the first and reaches the second. */
  readonly isSlurred: boolean;
}

/**
 * The steps of a player's line that are asked for; of a long part few are.
 * @param isAsked tells by the indexes of a note and of the next one in the line
 */
export function stepsOf(
  line: Line,
  notes: readonly PassageNote[],
  onsetSeconds: readonly number[],
  isAsked: (from: number, to: number) => boolean,
): readonly Step[] {
  const steps: Step[] = [];
  let slurredTo = -1;
  for (let at = 1; at < line.length; at++) {
    const from = notes[line[at - 1]!]!;
    const to = line[at]!;
    // A chord's slurs may be written on its first note alone.
    if (from.chordHead !== from.index) slurredTo = Math.max(slurredTo, lastSlurred(notes[from.chordHead]!));
    if (from.joins.length > 0) slurredTo = Math.max(slurredTo, lastSlurred(from));
    if (!isAsked(from.index, to)) continue;
    const seconds = onsetSeconds[to]! - onsetSeconds[from.index]!;
    const isSlurred = slurredTo >= notes[to]!.chordHead;
    steps.push({ from: from.index, to, seconds, joined: joinBetween(from, to), isSlurred });
  }
  return steps;
}

/** What joins a note to the one at index `to`, and these two alone. */
export function joinBetween({ joins }: PassageNote, to: number): Step['joined'] {
  let joined: Step['joined'] = null;
  for (const join of joins)
    if (join.to === to && join.kind !== 'slur') joined = join.kind === 'tie' ? 'tie' : 'glissando';
  return joined;
}

/** The last note that a slur or tie from here reaches; −1 without one. */
function lastSlurred({ joins }: PassageNote): number {
  let last = -1;
  for (const { kind, to } of joins) if (kind === 'slur' || kind === 'tie') last = Math.max(last, to);
  return last;
}
