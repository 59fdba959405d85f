/**
 * Before 3.3 the editor lays out a score from beginning to end for each text that a plugin adds, half a second in a symphony,
 * and less than a hundredth for a text that is taken off. So where only some bars change, it is told so: a step of the undo
 * history that is begun a second time, while it is open, forgets what was to be laid out, and what is then taken off at
 * both ends of the change says it anew.
 */
import { type Host, type HostScore, type HostText, isAtLeast } from './hostApi.ts';
import { cursorOn, moveTo } from './place.ts';
import type { UndoStep } from './undoStep.ts';

/** Prints nothing. */
const BLANK = '\u2060';

/**
 * Has the editor lay out no more than from the first of these places to the last. To be called inside a step of the undo
 * history, after everything that adds texts; what was changed before stands at these places or between them.
 */
export function layOutOnly(
  host: Host,
  score: HostScore,
  places: readonly { readonly tick: number; readonly track: number }[],
  step: UndoStep,
): void {
  const { root } = host;
  // Without a way to take them off the texts would stay.
  if (isAtLeast(host, 3, 3) || !root.removeElement || places.length === 0) return;
  let [first, last] = [places[0]!, places[0]!];
  for (const place of places) {
    if (place.tick < first.tick) first = place;
    if (place.tick > last.tick) last = place;
  }
  const ends = [first, last].map(({ tick, track }): HostText => {
    const cursor = cursorOn(score, track);
    moveTo(cursor, tick);
    const text = root.newElement(root.Element.STAFF_TEXT);
    text.text = BLANK;
    cursor.add(text);
    step.changes += 1;
    return text;
  });
  score.startCmd();
  for (const text of ends) root.removeElement(text);
}
