/** What the user has selected. */
import { type Host, type HostScore, listOf } from './hostApi.ts';
import { type NoteAddress, noteAt } from './noteAddress.ts';
import type { Scope } from './planMarks.ts';

/**
 * The selected notes as a scope; `null` when nothing is selected that could be meant: then the whole score is.
 * @param shown a note the panel selected to show it, which is no choice of the user's
 */
export function selectedNotes(host: Host, score: HostScore, shown: NoteAddress | null): Scope | null {
  if (hasRange(score)) return isSelected;
  const elements = listOf(score.selection?.elements);
  const notes = elements.filter(({ type }) => type === host.root.Element.NOTE);
  if (notes.length === 0) return null;
  return notes.length === 1 && shown && noteAt(host.root, score, shown)?.selected ? null : isSelected;
}

const isSelected: Scope = (note) => note.selected;

/** A cursor sent to the start of a selection finds nothing unless there is a range. */
function hasRange(score: HostScore): boolean {
  const cursor = score.newCursor();
  cursor.rewind(1);
  return cursor.segment !== null && cursor.segment !== undefined;
}
