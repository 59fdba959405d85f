/** The notes around a place, as a passage of their own: what a change there can be tried on without the whole part. */
import type { Passage, PassageNote } from '../part/passage.ts';
import type { Examination } from '../rules/examine.ts';

/** So many notes on either side: further off, one note's fingering does not reach another's. A choice. */
const NOTES_AROUND = 16;

/** A stretch of a passage. */
export interface Surroundings {
  readonly passage: Passage;
  /** The first note's place in the whole passage. */
  readonly firstIndex: number;
}

/**
 * Cuts out what surrounds some notes.
 * @returns `null` where a change may reach further than that: words hold on, and one bass clef decides on all
 */
export function surroundingsOf(
  { passage, notes, settings }: Examination,
  noteIndexes: readonly number[],
): Surroundings | null {
  let from = Math.max(0, Math.min(...noteIndexes) - NOTES_AROUND);
  let to = Math.min(notes.length, Math.max(...noteIndexes) + NOTES_AROUND + 1);
  from = notes[from]?.note.chordHead ?? 0;
  while (to < notes.length && notes[to]!.note.chordHead < to) to += 1;
  if (to - from === notes.length) return null;
  for (let i = from; i < to; i++) {
    const { note, reading } = notes[i]!;
    const hangsOnWords =
      reading.word !== null || reading.lapsed !== null || (reading.from === 'sign' && !note.sign);
    if (hangsOnWords || (note.clef === 'bass' && settings.bassClef === 'auto')) return null;
  }
  const cut = passage.notes.slice(from, to).map(
    (note): PassageNote => ({
      ...note,
      index: note.index - from,
      chordHead: note.chordHead - from,
      joins: note.joins.filter((join) => join.to < to).map((join) => ({ ...join, to: join.to - from })),
    }),
  );
  return { passage: { ...passage, notes: cut, words: [] }, firstIndex: from };
}
