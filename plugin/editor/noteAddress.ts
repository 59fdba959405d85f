/**
 * Where a note stands, in numbers. The host's own note objects must not be kept from one moment to the next: once
 * their note is deleted, touching them ends the host.
 */
import { type HostChord, type HostNote, type HostRoot, type HostScore, listOf } from './hostApi.ts';
import { notesOf } from './hostChord.ts';
import type { ChordNote } from './readPart.ts';

export interface NoteAddress {
  readonly tick: number;
  readonly track: number;
  /** Place among the graces of its chord, from 0; `null` for the chord's own notes. */
  readonly graceIndex: number | null;
  /** 0 for the top note of its chord. */
  readonly rank: number;
}

export function addressOf({ chord, note }: ChordNote): NoteAddress {
  const { tick, track, graceIndex } = chord;
  return { tick, track, graceIndex, rank: chord.notes.indexOf(note) };
}

/** The note at an address, or `null` when there is none any more. */
export function noteAt(root: HostRoot, score: HostScore, address: NoteAddress): HostNote | null {
  const { tick, track, graceIndex, rank } = address;
  if (track >= score.ntracks) return null;
  const main = chordAt(root, score, tick, track);
  const chord = main && graceIndex !== null ? listOf(main.graceNotes)[graceIndex] : main;
  return (chord && notesOf(root, chord)[rank]) ?? null;
}

function chordAt({ Element }: HostRoot, score: HostScore, tick: number, track: number): HostChord | null {
  for (let measure = score.firstMeasure; measure; measure = measure.nextMeasure) {
    const next = measure.nextMeasure?.firstSegment;
    if (next && next.tick <= tick) continue;
    for (let segment = measure.firstSegment; segment; segment = segment.nextInMeasure) {
      if (segment.tick > tick) return null;
      const element = segment.tick === tick ? segment.elementAt(track) : null;
      if (element?.type === Element.CHORD) return element as HostChord;
    }
  }
  return null;
}
