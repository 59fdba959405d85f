/** Small parts of a bar of an étude. */
import type { HandSign } from '../part/passage.ts';
import type { Pitch } from '../pitch/pitch.ts';
import type { EtudeNote } from './etude.ts';

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
