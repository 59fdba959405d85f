/** What the plugin interface does not show at a part's notes themselves: signs and lines, however a version tells of them. */
import type { HandSign } from '../../core/index.ts';
import type { HostInterval } from './hostApi.ts';
import { NoteSet, PlaceMap } from './placeMap.ts';
import type { ScoreChord } from './scoreBar.ts';

/** From 4.6 chords and notes own their signs and glissandi: then those are empty. */
export interface PartEvidence {
  readonly signs: PlaceMap<HandSign>;
  /** Notes from which a glissando leads to the next note of their voice. */
  readonly glissandi: NoteSet;
  /** Notes that are tied to the next one, and those that are tied to the one before; `null` where the notes tell. */
  readonly ties: { readonly from: NoteSet; readonly into: NoteSet } | null;
  readonly slurs: readonly Slur[];
  readonly octaveLines: readonly OctaveLine[];
  /** From written to sounding pitch, with its octave; `null` where the notes tell, or nothing does. */
  readonly interval: HostInterval | null;
  /** Words that stand on a line. */
  readonly lineWords: readonly { readonly tick: number; readonly track: number; readonly text: string }[];
}

/** From the chord at one place to the chord at another. A grace is counted as in its chord's list; `null` for the chord itself. */
export interface Slur {
  readonly fromTick: number;
  readonly fromTrack: number;
  readonly fromGrace: number | null;
  readonly toTick: number;
  readonly toTrack: number;
  readonly toGrace: number | null;
}

/** A line over a staff under which notes sound octaves from where they are printed; `toTick` is excluded. */
export interface OctaveLine {
  readonly fromTick: number;
  readonly toTick: number;
  readonly track: number;
  /** 1 for 8va, −1 for 8vb, … */
  readonly octaves: number;
}

export const NO_EVIDENCE: PartEvidence = {
  signs: new PlaceMap(),
  glissandi: new NoteSet(),
  ties: null,
  slurs: [],
  octaveLines: [],
  interval: null,
  lineWords: [],
};

/** The sign over a chord. */
export function signAt(chord: ScoreChord, { signs }: PartEvidence): HandSign | null {
  return chord.sign !== undefined ? chord.sign : (signs.get(chord) ?? null);
}

/** True where a glissando begins that leads to the next note of the voice. */
export function startsGlissando(chord: ScoreChord, rank: number, { glissandi }: PartEvidence): boolean {
  return chord.notes[rank]!.startsGlissando ?? glissandi.has(chord, rank);
}

/** Whether a note is tied to the next one, and to the one before. */
export function tiesAt(
  chord: ScoreChord,
  rank: number,
  { ties }: PartEvidence,
): { from: boolean; into: boolean } {
  if (ties) return { from: ties.from.has(chord, rank), into: ties.into.has(chord, rank) };
  const { isTiedOn, isTiedBack } = chord.notes[rank]!;
  return { from: isTiedOn, into: isTiedBack };
}

/** True where nothing was written or taken away between two readings. */
export function isSameEvidence(one: PartEvidence, other: PartEvidence): boolean {
  return evidenceText(one) === evidenceText(other);
}

function evidenceText({ signs, glissandi, ties, ...rest }: PartEvidence): string {
  const tied = ties && [notesIn(ties.from), notesIn(ties.into)];
  return JSON.stringify([signsIn(signs), notesIn(glissandi), tied, rest]);
}

function signsIn(signs: PlaceMap<HandSign>): readonly unknown[] {
  const all: unknown[] = [];
  signs.forEach((sign, { tick, track, graceIndex }) => {
    all.push(tick, track, graceIndex, sign);
  });
  return all;
}

function notesIn(notes: NoteSet): readonly unknown[] {
  const all: unknown[] = [];
  notes.forEach(({ tick, track, graceIndex }, rank) => {
    all.push(tick, track, graceIndex, rank);
  });
  return all;
}
