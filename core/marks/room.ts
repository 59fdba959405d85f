/** How much of a mark has room where it stands. */
import type { PassageNote } from '../part/passage.ts';

/** `line`: without the natural pitch; `valves`: nothing but them. */
export type MarkForm = 'whole' | 'line' | 'valves';

/** Marks closer than this push one another up into a staircase. In quarter notes; a choice, from pages of real parts. */
const ROOM_QUARTERS = 1;
const ROUNDING_QUARTERS = 1e-4;

/**
 * @param notes that have marks, in playing order
 * @param narrowBars by their places in the score: bars in which whole marks have no room, however slow their notes are
 * @returns the form of a note's mark: all marks of a bar of single notes have one form
 */
export function formsOf(
  notes: readonly PassageNote[],
  narrowBars: readonly number[],
): (note: PassageNote) => MarkForm {
  const quick = quickBars(notes);
  const narrow = new Set(narrowBars);
  const inChord = new Map<number, number>();
  for (const { chordHead } of notes) inChord.set(chordHead, (inChord.get(chordHead) ?? 0) + 1);
  return (note) =>
    narrow.has(note.measureIndex) || quick.has(barOf(note))
      ? 'valves'
      : inChord.get(note.chordHead)! > 1
        ? 'line'
        : 'whole';
}

/** The bars of a staff in which whole marks have no room side by side. */
function quickBars(notes: readonly PassageNote[]): ReadonlySet<string> {
  const bars = new Set<string>();
  const last = new Map<string, PassageNote>();
  for (const note of notes) {
    const voice = `${note.staff}/${note.voice}`;
    const before = last.get(voice);
    last.set(voice, note);
    const gap = before ? note.onsetQuarters - before.onsetQuarters : 0;
    // The notes of a chord share their place. So do a note and its graces, which would make a tower of it.
    const isChord = gap < ROUNDING_QUARTERS && !before?.grace;
    if (before && !isChord && gap < ROOM_QUARTERS - ROUNDING_QUARTERS) bars.add(barOf(before));
  }
  return bars;
}

function barOf({ staff, measureIndex }: PassageNote): string {
  return `${staff}/${measureIndex}`;
}
