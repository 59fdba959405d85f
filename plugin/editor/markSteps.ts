/**
 * Valves that step onto a row of their own: where a bar stays as narrow as others make it, a 23 and a 1 beside one another
 * would be a 231.
 */
import { timesAsWide, type WidthOf } from './barWidths.ts';
import type { MarkRoom } from './markRoom.ts';
import type { ScoreChord } from './scoreBar.ts';

/** Valves nearer to one another than this, in staff spaces, might be read as one number. */
const APART = 0.6;

/** Tells of a chord whether its valves stand on the next row. @param widthOf how much wider bars are made */
export function stepsFor(room: MarkRoom, widthOf: WidthOf): (chord: ScoreChord) => boolean {
  const byMeasure = new Map<number, Set<ScoreChord>>();
  return (chord) => {
    const { measureIndex } = chord;
    const known = byMeasure.get(measureIndex);
    if (known) return known.has(chord);
    const raised = new Set<ScoreChord>();
    byMeasure.set(measureIndex, raised);
    const widened = timesAsWide(widthOf(measureIndex)) * room.stretched;
    for (const two of room.neighboursIn(measureIndex))
      if (two.areValves && !raised.has(two.before) && room.between(two, widened) < APART)
        raised.add(two.after);
    return raised.has(chord);
  };
}
