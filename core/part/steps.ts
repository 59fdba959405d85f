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

/** The steps of a player's line; step `i` leads to its note `i + 1`. */
export function stepsOf(
  line: Line,
  notes: readonly PassageNote[],
  onsetSeconds: readonly number[],
): readonly Step[] {
  const steps: Step[] = [];
  let slurredTo = -1;
  for (let at = 1; at < line.length; at++) {
    const from = notes[line[at - 1]!]!;
    const to = line[at]!;
    let joined: Step['joined'] = null;
    // A chord's slurs may be written on its first note alone.
    if (from.chordHead !== from.index) slurredTo = Math.max(slurredTo, lastSlurred(notes[from.chordHead]!));
    if (from.joins.length > 0) {
      slurredTo = Math.max(slurredTo, lastSlurred(from));
      for (const join of from.joins)
        if (join.to === to && join.kind !== 'slur') joined = join.kind === 'tie' ? 'tie' : 'glissando';
    }
    const seconds = onsetSeconds[to]! - onsetSeconds[from.index]!;
    steps.push({ from: from.index, to, seconds, joined, isSlurred: slurredTo >= notes[to]!.chordHead });
  }
  return steps;
}

/** The last note that a slur or tie from here reaches; −1 without one. */
function lastSlurred({ joins }: PassageNote): number {
  let last = -1;
  for (const { kind, to } of joins) if (kind === 'slur' || kind === 'tie') last = Math.max(last, to);
  return last;
}
