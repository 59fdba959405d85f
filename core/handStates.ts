/** From signs and words to what the hand does at each note. */
import type { HandState } from './fingering.ts';
import type { Passage } from './passage.ts';

/** What the hand does at one note, and what in the part says so. */
export interface HandReading {
  readonly state: HandState;
  readonly from: 'sign' | 'word' | 'nothing';
}

/** The hand state of every note of a passage, by note index. */
export function readHandStates(passage: Passage): readonly HandReading[] {
  return passage.notes.map((note) =>
    note.sign ? { state: note.sign, from: 'sign' } : { state: 'open', from: 'nothing' },
  );
}

/** True for the states that are the hand's work, which are the ones Bellhand writes about. */
export function isHandState(state: HandState): boolean {
  return state !== 'open' && state !== 'straight-mute';
}
