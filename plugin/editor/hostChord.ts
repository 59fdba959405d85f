/** Which notes of a chord of the host's are its player's. */
import { handSignsIn } from './handSigns.ts';
import { type HostChord, type HostNote, type HostRoot, listOf } from './hostApi.ts';

/** The player's notes of a chord from the top down. */
export function notesOf(root: HostRoot, chord: HostChord): readonly HostNote[] {
  return sortedNotes(root, chord).notes;
}

/** All of its notes from the top down, those that are the player's and the others. */
export function sortedNotes(
  root: HostRoot,
  chord: HostChord,
): { readonly notes: readonly HostNote[]; readonly others: readonly HostNote[] } {
  const all = listOf(chord.notes);
  if (all.length > 1) all.sort((a, b) => a.line - b.line || b.pitch - a.pitch);
  const lowest = all[all.length - 1];
  const isPlayers = (note: HostNote) =>
    note.visible && (!isCue(chord, note) || (note === lowest && hasHandSign(root, chord)));
  const notes = all.filter(isPlayers);
  return { notes, others: notes.length === all.length ? [] : all.filter((note) => !isPlayers(note)) };
}

/** The host keeps a cue as a small note that does not sound, and writes it as such into a file. */
function isCue(chord: HostChord, note: HostNote): boolean {
  return note.play === false && (note.small === true || chord.small === true);
}

/** A sign for the hand says that a cue is meant for this player: a file has it at the chord's lowest note. */
function hasHandSign(root: HostRoot, { articulations }: HostChord): boolean {
  return articulations !== undefined && handSignsIn(root, articulations).length > 0;
}
