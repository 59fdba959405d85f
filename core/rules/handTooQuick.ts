/**
 * Finds changes between open and closed that leave the hand too little time.
 * Why: the hand has to travel, seal and be still before the tone is asked for. Rests count as time: it moves in them.
 * From memory: a quarter of a second (a setting).
 */
import { closedness } from '../part/handStates.ts';
import { isTempoStated } from '../part/tempo.ts';
import { printPitch } from '../pitch/pitch.ts';
import type { Finding, Rule } from './rule.ts';

/** Room for the rounding of sums of tuplets. */
const ROUNDING_SECONDS = 1e-6;

export const handTooQuick: Rule = {
  id: 'hand-too-quick',
  check({ passage, notes, settings, handSteps }) {
    const found: Finding[] = [];
    for (const { from, to, seconds } of handSteps) {
      if (seconds >= settings.handSeconds - ROUNDING_SECONDS) continue;
      const before = notes[from]!;
      const after = notes[to]!;
      const goesIn = closedness(after.reading.state) > closedness(before.reading.state);
      const tempo = isTempoStated(passage, after.note.onsetQuarters)
        ? ''
        : `, taking ♩ = ${settings.assumedQuartersPerMinute} since the part states no tempo`;
      found.push({
        id: this.id,
        severity: 'risky',
        noteIndex: to,
        brief: 'hand too quick',
        message: `The hand has ${(Math.floor(seconds * 100) / 100).toFixed(2)} s to ${goesIn ? 'go in' : 'come out'} between ${printPitch(before.note.written)} and ${printPitch(after.note.written)}${tempo}; it needs about ${settings.handSeconds} s.`,
        remedy:
          'Put a rest or a longer note before the change, keep both notes open or both stopped, or share them between two players.',
      });
    }
    return found;
  },
};
