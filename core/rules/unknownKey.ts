/**
 * Finds the first stopped note of each stretch whose transposition is not stated.
 * Why: the same written note is another fingering on another crook; a guess would be printed as a fact.
 * @source musicxml40, element transpose
 */

import { isHandState } from '../part/handStates.ts';
import type { FoundBy, Rule } from './rule.ts';

/** The part says nothing, and so does the cause. */
export type UnknownKey = { readonly [field: string]: never };

export const unknownKey: Rule<'unknown-key', UnknownKey> = {
  id: 'unknown-key',
  check({ handNotes }) {
    const found: FoundBy<'unknown-key', UnknownKey>[] = [];
    let isKnown = true;
    for (const { note, soundingCents, reading } of handNotes) {
      if (!isHandState(reading.state)) continue;
      if (soundingCents === null && isKnown)
        found.push({
          id: this.id,
          severity: 'advice',
          noteIndex: note.index,
          otherIndex: null,
          cause: {},
        });
      isKnown = soundingCents !== null;
    }
    return found;
  },
};
