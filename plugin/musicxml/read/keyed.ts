/** Parts that do not say how they transpose, and the key a user gives them. */
import type { Passage, PassageNote, Transposition } from '../../../core/index.ts';
import type { HornPart } from './score.ts';

/** True when none of a part's notes has a known transposition. */
export function isWithoutKey({ passage, transpositionFrom }: HornPart): boolean {
  if (passage.notes.length === 0) return transpositionFrom === 'nowhere';
  return passage.notes.every(({ transposition }) => transposition === null);
}

/** The passage with a key for the notes that have none. */
export function inKey(passage: Passage, key: Transposition | null): Passage {
  if (!key) return passage;
  const keyed = (note: PassageNote) => (note.transposition ? note : { ...note, transposition: key });
  return { ...passage, notes: passage.notes.map(keyed) };
}
