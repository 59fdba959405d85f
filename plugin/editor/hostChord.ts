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
  if (all.length === 1)
    return isPlayers(root, chord, all[0]!, true)
      ? { notes: all, others: NONE }
      : { notes: NONE, others: all };
  all.sort((a, b) => a.line - b.line || b.pitch - a.pitch);
  const notes: HostNote[] = [];
  const others: HostNote[] = [];
  all.forEach((note, i) => {
    (isPlayers(root, chord, note, i === all.length - 1) ? notes : others).push(note);
  });
  return { notes, others };
}

const NONE: readonly HostNote[] = [];

function isPlayers(root: HostRoot, chord: HostChord, note: HostNote, isLowest: boolean): boolean {
  return note.visible && (!isCue(chord, note) || (isLowest && hasHandSign(root, chord)));
}

/** The host keeps a cue as a small note that does not sound, and writes it as such into a file. */
function isCue(chord: HostChord, note: HostNote): boolean {
  return note.play === false && (note.small === true || chord.small === true);
}

/** A sign for the hand says that a cue is meant for this player: a file has it at the chord's lowest note. */
function hasHandSign(root: HostRoot, { articulations }: HostChord): boolean {
  return articulations !== undefined && handSignsIn(root, articulations).length > 0;
}
