/**
 * Finds words for echo, which some editions mean as stopped and others as echo horn; once for each word.
 * Why: echo horn sounds a semitone below its fingering and stopped a semitone above, so the two are fingered a whole
 * tone apart. Editions of one passage of Dukas, Villanelle, disagree. @source smalley, hand positions; pizka
 */
import { readHandText } from '../part/handWords.ts';
import type { Pitch } from '../pitch/pitch.ts';
import type { HandState } from '../stopping/fingering.ts';
import type { FoundBy, Rule } from './rule.ts';

/** The word, and how it is read from a note on. */
export interface EchoOrStopped {
  /** As printed. */
  readonly word: string;
  /** `echo`, or what it is taken for. */
  readonly state: HandState;
  readonly from: Pitch;
}

export const echoOrStopped: Rule<'echo-or-stopped', EchoOrStopped> = {
  id: 'echo-or-stopped',
  check({ handNotes }) {
    const found: FoundBy<'echo-or-stopped', EchoOrStopped>[] = [];
    const reported = new Set<number>();
    for (const { note, reading } of handNotes) {
      const { word } = reading;
      if (!word || reading.from !== 'word' || reported.has(word.wordIndex)) continue;
      if (!readHandText(word.text).namesEcho) continue;
      reported.add(word.wordIndex);
      found.push({
        id: this.id,
        severity: 'advice',
        noteIndex: note.index,
        otherIndex: null,
        cause: { word: word.text, state: word.state, from: note.written },
      });
    }
    return found;
  },
};
