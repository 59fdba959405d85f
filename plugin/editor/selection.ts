/** What the user has selected. */
import { type Host, type HostPart, type HostScore, listOf } from './hostApi.ts';
import { type NoteAddress, noteAt } from './noteAddress.ts';
import type { Scope } from './planMarks.ts';

/**
 * The selected notes as a scope; `null` when nothing is selected that could be meant: then the whole score is. A range
 * of nothing but rests is a choice all the same.
 * @param shown a note the panel selected to show it, which is no choice of the user's
 */
export function selectedNotes(host: Host, score: HostScore, shown: NoteAddress | null): Scope | null {
  const { NOTE, REST } = host.root.Element;
  const types = listOf(score.selection?.elements).map(({ type }) => type);
  const notes = types.filter((type) => type === NOTE).length;
  if (notes === 0) return types.filter((type) => type === REST).length > 1 ? isSelected : null;
  return notes === 1 && shown && noteAt(host.root, score, shown)?.selected ? null : isSelected;
}

const isSelected: Scope = ({ element }) => element?.selected === true;

/** Tells of a part whether anything of it is selected. */
export function isInSelection({ selection }: HostScore): (part: HostPart) => boolean {
  const tracks = new Set(listOf(selection?.elements).map(({ track }) => track));
  return ({ startTrack, endTrack }) => {
    for (let track = startTrack; track < endTrack; track++) if (tracks.has(track)) return true;
    return false;
  };
}
