/** The players of a part: each has a line of notes of their own, one after the other. */
import { type Passage, type PassageNote, playerOf } from './passage.ts';

/** One player's notes, as indexes into the passage, in playing order. */
export type Line = readonly number[];

/** The line of every player, in the order in which they first play. Every note stands in exactly one. */
export function linesOf(passage: Passage): readonly Line[] {
  const lines = new Map<string, number[]>();
  for (const note of passage.notes) {
    const player = playerOf(note);
    const line = lines.get(player);
    if (line) line.push(note.index);
    else lines.set(player, [note.index]);
  }
  return Array.from(lines.values());
}

/** Compares two lines of a staff from the top: lower voice names first, then the higher note of a chord. */
export function fromTheTop(a: PassageNote, b: PassageNote): number {
  return a.staff - b.staff || compareVoices(a.voice, b.voice) || a.chordRank - b.chordRank;
}

function compareVoices(a: string, b: string): number {
  const difference = Number(a) - Number(b);
  if (difference) return difference;
  return a < b ? -1 : a > b ? 1 : 0;
}
