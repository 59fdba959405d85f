/** The notes around a place, as a passage of their own: what a change there can be tried on without the whole part. */
import type { Passage, PassageNote } from '../part/passage.ts';
import type { Examination } from '../rules/examine.ts';

/** So many notes on either side: further off, one note's fingering does not reach another's. A choice. */
const NOTES_AROUND = 16;

/** So many where words rule, which hold on until others come: minutes of music. A choice. */
const NOTES_UNDER_WORDS = 250;

/** A stretch of a passage. */
export interface Surroundings {
  readonly passage: Passage;
  /** The first note's place in the whole passage. */
  readonly firstIndex: number;
}

/**
 * Cuts out what surrounds some notes, so far on either side that a change there can do nothing beyond.
 * @param addsWords true where the change puts words into the part
 * @returns `null` where only the whole part will do: a short one, or one where a bass clef decides on all
 */
export function surroundingsOf(
  examination: Examination,
  noteIndexes: readonly number[],
  addsWords: boolean,
): Surroundings | null {
  const near = addsWords ? null : stretchAround(examination, noteIndexes, NOTES_AROUND);
  if (near && !hangsOnWords(examination, near)) return cut(examination, near, []);
  const far = stretchAround(examination, noteIndexes, NOTES_UNDER_WORDS);
  return far && cut(examination, far, examination.passage.words);
}

interface Stretch {
  readonly from: number;
  /** Past its last note. */
  readonly to: number;
}

/** Whole chords, with so many notes around the places; `null` for the whole part. */
function stretchAround(
  { notes, settings }: Examination,
  noteIndexes: readonly number[],
  around: number,
): Stretch | null {
  let from = Math.max(0, Math.min(...noteIndexes) - around);
  let to = Math.min(notes.length, Math.max(...noteIndexes) + around + 1);
  from = notes[from]?.note.chordHead ?? 0;
  while (to < notes.length && notes[to]!.note.chordHead < to) to += 1;
  if (to - from === notes.length) return null;
  for (let i = from; i < to; i++)
    if (notes[i]!.note.clef === 'bass' && settings.bassClef === 'auto') return null;
  return { from, to };
}

function hangsOnWords({ notes }: Examination, { from, to }: Stretch): boolean {
  for (let i = from; i < to; i++) {
    const { note, reading, own } = notes[i]!;
    if (
      own?.isWord ||
      reading.word !== null ||
      reading.lapsed !== null ||
      (reading.from === 'sign' && !note.sign)
    )
      return true;
  }
  return false;
}

/** The stretch as a passage. Of the words those before it stay too: they may hold on into it. */
function cut({ passage }: Examination, { from, to }: Stretch, words: Passage['words']): Surroundings {
  const start = passage.notes[from]!.onsetQuarters;
  const end = passage.notes[to - 1]!.onsetQuarters;
  const notes = passage.notes.slice(from, to).map(
    (note): PassageNote => ({
      ...note,
      index: note.index - from,
      chordHead: note.chordHead - from,
      joins: note.joins.filter((join) => join.to < to).map((join) => ({ ...join, to: join.to - from })),
    }),
  );
  return {
    passage: {
      ...passage,
      notes,
      words: words.filter(({ onsetQuarters }) => onsetQuarters <= end),
      rests: passage.rests.filter(({ onsetQuarters }) => onsetQuarters >= start && onsetQuarters <= end),
    },
    firstIndex: from,
  };
}
