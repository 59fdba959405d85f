/** The lines of a part: one for each player, of notes one after the other. */
import { lineNameOf, type Passage, type PassageNote } from './passage.ts';

/** A player's notes, as indexes into the passage, in playing order. */
export type Line = readonly number[];

/** All lines, in the order in which they begin. Every note stands in exactly one. */
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
    if (!before || !isSameLine(note, before)) {
      const name = lineNameOf(note);
      line = lines.get(name) ?? [];
      lines.set(name, line);
    }
    line.push(note.index);
    before = note;
  }
  return Array.from(lines.values());
}

function isSameLine(a: PassageNote, b: PassageNote): boolean {
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
