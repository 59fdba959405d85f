/**
 * Finds words for echo, which some editions mean as stopped and others as echo horn; once for each word.
 * Why: echo horn sounds a semitone below its fingering and stopped a semitone above, so the two are fingered a whole
 * tone apart. Editions of one passage of Dukas, Villanelle, disagree. @source smalley, hand positions; pizka
 */
import { readHandText } from '../part/handWords.ts';
import { printPitch } from '../pitch/pitch.ts';
import type { Finding, Rule } from './rule.ts';

export const echoOrStopped: Rule = {
  id: 'echo-or-stopped',
  check({ handNotes }) {
    const found: Finding[] = [];
    const reported = new Set<number>();
    for (const { note, reading } of handNotes) {
      const { word } = reading;
      if (!word || reading.from !== 'word' || reported.has(word.wordIndex)) continue;
      if (!readHandText(word.text).namesEcho) continue;
      reported.add(word.wordIndex);
      const other = word.state === 'echo' ? 'stopped' : 'echo horn';
      found.push({
        id: this.id,
        severity: 'advice',
        noteIndex: note.index,
        brief: 'echo or stopped',
        message: `"${word.text}" is read as ${word.state} from ${printPitch(note.written)} on; other editions would mean ${other}, which is fingered a whole tone ${word.state === 'echo' ? 'lower' : 'higher'}.`,
        remedy: 'Write + over the notes if the bell is to be stopped, or "echo horn" if it is not.',
      });
    }
    return found;
  },
};
