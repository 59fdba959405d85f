/** Small parts of a bar of an étude. */
import type { HandSign } from '../part/passage.ts';
import type { Pitch } from '../pitch/pitch.ts';

/** A note or a rest, in order of time. */
export interface EtudeNote {
  /** The written pitch, or null for a rest. */
  readonly written: Pitch | null;
  readonly quarters: number;
  /** The sign printed at it; every note has one where its hand differs from the note before. */
  readonly sign: HandSign | null;
  /** Where a slur begins or ends here. */
  readonly slur: 'start' | 'stop' | null;
  /** True when the hand slides from this note to the next on one fingering. */
  readonly slides: boolean;
  /** True when a breath is taken after it. */
  readonly breath: boolean;
  /** A dynamic that begins here, or null. */
  readonly dynamic: 'p' | 'mf' | null;
}

/** The bar lengths that études use. */
export interface Meter {
  /** The upper number of the time signature. */
  readonly beats: number;
  /** The lower number of the time signature: 4 for quarters. */
  readonly beatType: number;
  /** Quarters in the beat that the tempo counts: 1, or 1.5 in 6/8. */
  readonly beatQuarters: number;
}

/** Common time. */
export const FOUR_FOUR: Meter = { beats: 4, beatType: 4, beatQuarters: 1 };
/** Three quarters. */
export const THREE_FOUR: Meter = { beats: 3, beatType: 4, beatQuarters: 1 };
/** Six eighths, counted in two. */
export const SIX_EIGHT: Meter = { beats: 6, beatType: 8, beatQuarters: 1.5 };

/** A note with the sign for the hand at it. */
export function note(written: Pitch, quarters: number, sign: HandSign | null): EtudeNote {
  return { written, quarters, sign, slur: null, slides: false, breath: false, dynamic: null };
}

export function open(written: Pitch, quarters: number): EtudeNote {
  return note(written, quarters, 'open');
}

export function stopped(written: Pitch, quarters: number): EtudeNote {
  return note(written, quarters, 'stopped');
}

export function rest(quarters: number): EtudeNote {
  return { written: null, quarters, sign: null, slur: null, slides: false, breath: false, dynamic: null };
}

/** The same bar with a breath after its last note. */
export function withBreath(bar: readonly EtudeNote[]): readonly EtudeNote[] {
  return bar.map((each, i) => (i === bar.length - 1 && each.written ? { ...each, breath: true } : each));
}

/** The same bar with a dynamic at its first note. */
export function withDynamic(bar: readonly EtudeNote[], dynamic: 'p' | 'mf'): readonly EtudeNote[] {
  return bar.map((each, i) => (i === 0 ? { ...each, dynamic } : each));
}
