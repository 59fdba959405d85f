/** The players of a part: each has a line of notes of their own, one after the other. */
import { type Passage, type PassageNote, playerOf } from './passage.ts';

/** One player's notes, as indexes into the passage, in playing order. */
export type Line = readonly number[];

/** The line of every player, in the order in which they first play. Every note stands in exactly one. */
export function linesOf(passage: Passage): readonly Line[] {
  const known = LINES.get(passage);
  if (known) return known;
  const lines = readLines(passage);
  LINES.set(passage, lines);
  return lines;
}

/** Passages do not change, and several readers ask for their lines. */
const LINES = new WeakMap<Passage, readonly Line[]>();

function readLines({ notes }: Passage): readonly Line[] {
  const lines = new Map<string, number[]>();
  let before: PassageNote | null = null;
  let line: number[] = [];
  for (const note of notes) {
    if (!before || !isSamePlayer(note, before)) {
      const player = playerOf(note);
      line = lines.get(player) ?? [];
      lines.set(player, line);
    }
    line.push(note.index);
    before = note;
  }
  return Array.from(lines.values());
}

function isSamePlayer(a: PassageNote, b: PassageNote): boolean {
  return a.voice === b.voice && a.staff === b.staff && a.chordRank === b.chordRank;
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
