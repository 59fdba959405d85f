/**
 * Finds the first note of a stretch whose transposition is not stated.
 * Why: the same written note is another fingering on another crook; a guess would be printed as a fact.
 */

import { isHandState } from '../handStates.ts';
import type { Finding, Rule } from './rule.ts';

export const unknownKey: Rule = {
  id: 'unknown-key',
  check({ notes }) {
    const first = notes.filter(
      ({ soundingCents, reading }) => soundingCents === null && isHandState(reading.state),
    )[0];
    if (!first) return [];
    const finding: Finding = {
      id: 'unknown-key',
      severity: 'advice',
      noteIndex: first.note.index,
      brief: 'which key',
      message: 'The part does not say how it transposes, so its stopped notes have no fingering.',
      remedy: 'Give the part its transposition, or name the horn with its key, as in "Horn in F".',
    };
    return [finding];
  },
};
