/**
 * A horn part as it is read, door by door: notes in order with their signs, words, joins and time.
 * The doors (files, editor) fill this in; everything after it neither knows nor asks where the music came from.
 */
import type { Pitch, Transposition } from '../pitch/pitch.ts';

/** A sign printed at a note: + stopped, o open, ⊕ half-stopped. It rules that note (and its chord) alone. */
export type HandSign = (typeof HAND_SIGNS)[number];
/** Every sign. */
export const HAND_SIGNS = ['stopped', 'open', 'half-stopped'] as const;

/** What leads from one note to a later one. `glissando` also stands for slides; `bend` for a bend on one tube. */
export type JoinKind = (typeof JOIN_KINDS)[number];
/** Every kind of join. */
export const JOIN_KINDS = ['tie', 'slur', 'glissando', 'bend'] as const;

/** A join from the note that owns it to the note at index `to` in the same passage. */
export interface Join {
  readonly kind: JoinKind;
  /** Index in `Passage.notes`. */
  readonly to: number;
}

/** One note as the part prints it. */
export interface PassageNote {
  /** Position in `Passage.notes`, from 0. */
  readonly index: number;
  /** Position of the measure in the score, from 0. */
  readonly measureIndex: number;
  /** The measure number as printed, e.g. `12` or `X1`. */
  readonly measure: string;
  /** Where in the measure, in beats of the time signature's lower number, from 1. Grace notes share their main note's beat. */
  readonly beat: number;
  /** Onset in quarter notes from the start of the part. */
  readonly onsetQuarters: number;
  /** Length in quarter notes; 0 for a grace note. */
  readonly durationQuarters: number;
  readonly grace: boolean;
  /** The staff in its part, from 1. */
  readonly staff: number;
  /** The voice as its door names it; with `staff` and `chordRank` it tells one player from another. */
  readonly voice: string;
  /** 0 for a single note or the top note of a chord, 1 for the next below, … */
  readonly chordRank: number;
  /** Index of the first printed note of the chord this note belongs to; its own index when single. */
  readonly chordHead: number;
  /** As the part prints it, under octave lines too; `null` never occurs: unpitched notes are left out by the doors. */
  readonly written: Pitch;
  /** Written to sounding here; `null` when the part states none and no horn name tells. */
  readonly transposition: Transposition | null;
  readonly clef: 'treble' | 'bass' | 'other';
  readonly sign: HandSign | null;
  /** A fingering printed at the note, as it stands there: `12`, `T0`; whether the horn has it is asked later. `null` for none. */
  readonly fingering: string | null;
  /** Joins that start here; the last note of a slur is found at the end of the chain the slur spans. */
  readonly joins: readonly Join[];
  /** True when a colour other than black, and not one of ours, was already on the note. */
  readonly userColour: boolean;
}

/** A word of text over the staff: `gestopft`, `offen`, `con sord.`; anything else printed there too. */
export interface PassageWord {
  readonly text: string;
  readonly measureIndex: number;
  readonly measure: string;
  /** From 1, in beats of the time signature's lower number. */
  readonly beat: number;
  readonly onsetQuarters: number;
  /** The staff in its part, from 1. */
  readonly staff: number;
  /** The voice it is tied to, or `null` when it holds for every voice of its staff. */
  readonly voice: string | null;
}

/** A tempo from here on, in quarter notes a minute. */
export interface PassageTempo {
  readonly onsetQuarters: number;
  readonly quartersPerMinute: number;
}

/** A rest, kept because planning and the hand need time. */
export interface PassageRest {
  readonly onsetQuarters: number;
  readonly durationQuarters: number;
  /** The staff in its part, from 1. */
  readonly staff: number;
  readonly voice: string;
}

/** One horn part. Notes stand in playing order: by onset, graces before their note, voices and chords side by side. */
export interface Passage {
  readonly name: string;
  readonly notes: readonly PassageNote[];
  readonly words: readonly PassageWord[];
  readonly tempos: readonly PassageTempo[];
  readonly rests: readonly PassageRest[];
}

/** The name of the line that a note stands in: staff, voice and place in the chord. Each line is one player's. */
export function lineNameOf(note: PassageNote): string {
  return `${note.staff}/${note.voice}/${note.chordRank}`;
}
