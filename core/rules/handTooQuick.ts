/**
 * Finds changes between open and closed that leave the hand too little time.
 * Why: the hand has to travel, seal and be still before the tone is asked for. Rests count as time: it moves in them.
 * From memory: a quarter of a second (a setting).
 */
import { closedness } from '../part/handStates.ts';
import { isTempoStated } from '../part/tempo.ts';
import type { Pitch } from '../pitch/pitch.ts';
import type { FoundBy, Rule } from './rule.ts';

/** The notes before and after the change, and the time between them. */
export interface HandTooQuick {
  readonly from: Pitch;
  readonly to: Pitch;
  /** True when the hand goes in, false when it comes out. */
  readonly goesIn: boolean;
  /** To two decimals, rounded down: too little never reads as enough. */
  readonly seconds: number;
  readonly neededSeconds: number;
  /** The tempo that was taken where the part states none, in quarter notes a minute; else null. */
  readonly assumedQuartersPerMinute: number | null;
}

/** Room for the rounding of sums of tuplets. */
const ROUNDING_SECONDS = 1e-6;

export const handTooQuick: Rule<'hand-too-quick', HandTooQuick> = {
  id: 'hand-too-quick',
  check({ passage, notes, settings, handSteps }) {
    const found: FoundBy<'hand-too-quick', HandTooQuick>[] = [];
    for (const { from, to, seconds } of handSteps) {
      if (seconds >= settings.handSeconds - ROUNDING_SECONDS) continue;
      const before = notes[from]!;
      const after = notes[to]!;
      found.push({
        id: this.id,
        severity: 'risky',
        noteIndex: to,
        otherIndex: from,
        cause: {
          from: before.note.written,
          to: after.note.written,
          goesIn: closedness(after.reading.state) > closedness(before.reading.state),
          seconds: Math.floor(seconds * 100) / 100,
          neededSeconds: settings.handSeconds,
          assumedQuartersPerMinute: isTempoStated(passage, after.note.onsetQuarters)
            ? null
            : settings.assumedQuartersPerMinute,
        },
      });
    }
    return found;
  },
};
