/**
 * Finds the first stopped note of each stretch whose transposition is not stated.
 * Why: the same written note is another fingering on another crook; a guess would be printed as a fact.
 * @source musicxml40, element transpose
 */

import { isHandState } from '../part/handStates.ts';
import type { Finding, Rule } from './rule.ts';

export const unknownKey: Rule = {
  id: 'unknown-key',
  check({ handNotes }) {
    const found: Finding[] = [];
    let isKnown = true;
    for (const { note, soundingCents, reading } of handNotes) {
      if (!isHandState(reading.state)) continue;
      if (soundingCents === null && isKnown)
        found.push({
          id: this.id,
          severity: 'advice',
          noteIndex: note.index,
          brief: 'which key',
          message: 'The part does not say how it transposes here, so its stopped notes have no fingering.',
          remedy: 'Give the part its transposition, or name the horn with its key, as in "Horn in F".',
        });
      isKnown = soundingCents !== null;
    }
    return found;
  },
};
