/**
 * Where a note stands, in numbers. The host's own note objects must not be kept from one moment to the next: once
 * their note is deleted, touching them ends the host.
 */
import { type HostChord, type HostNote, type HostRoot, type HostScore, listOf } from './hostApi.ts';
import type { NotePlace } from './readPassages.ts';
import { notesOf } from './scoreWalk.ts';

export interface NoteAddress {
  readonly tick: number;
  readonly track: number;
  /** Place among the graces of its chord, from 0; `null` for the chord's own notes. */
  readonly graceIndex: number | null;
  /** 0 for the top note of its chord. */
  readonly rank: number;
}

export function addressOf({ chord, note }: NotePlace): NoteAddress {
  const { tick, track, graceIndex } = chord;
  return { tick, track, graceIndex, rank: chord.notes.indexOf(note) };
}

/** The note at an address, or `null` when there is none any more. */
export function noteAt(
  root: HostRoot,
  score: HostScore,
  { tick, track, graceIndex, rank }: NoteAddress,
): HostNote | null {
  if (track >= score.ntracks) return null;
  const cursor = score.newCursor();
  cursor.track = track;
  cursor.rewind(0);
  while (cursor.segment && cursor.tick < tick) cursor.next();
  if (!cursor.segment || cursor.tick !== tick) return null;
  const element = cursor.segment.elementAt(track);
  if (element?.type !== root.Element.CHORD) return null;
  const main = element as HostChord;
  const chord = graceIndex === null ? main : listOf(main.graceNotes)[graceIndex];
  return (chord && notesOf(chord)[rank]) ?? null;
}
