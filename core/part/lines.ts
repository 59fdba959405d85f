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
  const lines = new ByLine((): number[] => []);
  for (const note of notes) lines.at(note).push(note.index);
  return lines.values();
}

/** Something kept for each line while the notes of a passage are gone through. */
export class ByLine<T> {
  private readonly make: () => T;
  private readonly kept = new Map<string, T>();
  private before: PassageNote | null = null;
  private latest: T | null = null;

  /** @param make what is kept of a line at its first note */
  constructor(make: () => T) {
    this.make = make;
  }

  /** What is kept of a note's line. */
  at(note: PassageNote): T {
    // Most notes follow one of their own line, and need no name to be made.
    if (this.latest === null || !isSameLine(note, this.before!)) {
      const name = lineNameOf(note);
      this.latest = this.kept.get(name) ?? this.make();
      this.kept.set(name, this.latest);
    }
    this.before = note;
    return this.latest;
  }

  /** All that is kept, in the order in which the lines begin. */
  values(): readonly T[] {
    return Array.from(this.kept.values());
  }
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
