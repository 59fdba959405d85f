/**
 * Finds changes between open and closed that leave the hand too little time.
 * Why: the hand has to travel, seal and be still before the tone is asked for. Rests count as time: it moves in them.
 * From memory: a quarter of a second (a setting).
 */
import { movesHand } from '../handMotion.ts';
import { closedness } from '../handStates.ts';
import type { Line } from '../lines.ts';
import { printPitch } from '../pitch.ts';
import { isTempoStated } from '../tempo.ts';
import type { Finding, Rule, RuleContext } from './rule.ts';

export const handTooQuick: Rule = {
  id: 'hand-too-quick',
  check(context) {
    return ([] as Finding[]).concat(...context.lines.map((line) => changesIn(line, context)));
  },
};

/** Room for the rounding of sums of tuplets. */
const ROUNDING_SECONDS = 1e-6;

function changesIn(line: Line, { passage, notes, settings, onsetSeconds }: RuleContext): Finding[] {
  const found: Finding[] = [];
  for (let at = 1; at < line.length; at++) {
    const before = notes[line[at - 1]!]!;
    const after = notes[line[at]!]!;
    if (!movesHand(before.reading.state, after.reading.state)) continue;
    const seconds = onsetSeconds[after.note.index]! - onsetSeconds[before.note.index]!;
    if (seconds >= settings.handSeconds - ROUNDING_SECONDS) continue;
    const goesIn = closedness(after.reading.state) > closedness(before.reading.state);
    const tempo = isTempoStated(passage, after.note.onsetQuarters)
      ? ''
      : `, taking ♩ = ${settings.assumedQuartersPerMinute} since the part states no tempo`;
    found.push({
      id: handTooQuick.id,
      severity: 'risky',
      noteIndex: after.note.index,
      brief: 'hand too quick',
      message: `The hand has ${seconds.toFixed(2)} s to ${goesIn ? 'go in' : 'come out'} between ${printPitch(before.note.written)} and ${printPitch(after.note.written)}${tempo}; it needs about ${settings.handSeconds} s.`,
      remedy:
        'Put a rest or a longer note before the change, keep both notes open or both stopped, or share them between two players.',
    });
  }
  return found;
}
