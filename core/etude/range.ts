/** Which notes an étude moves among where nobody says: those of its level, or, on a horn that stops few, where they lie. */
import { type Pitch, pitchCents, spellCents } from '../pitch/pitch.ts';
import { LEVEL_PLANS, type Level } from './levels.ts';

/** Written G3 and A5: below, few notes can be stopped at all; above, closing hardly changes anything. */
const LOWEST_CENTS = 5500;
const HIGHEST_CENTS = 8100;

/** A range of written notes, both ends included. */
export interface Range {
  readonly low: Pitch;
  readonly high: Pitch;
}

/**
 * The lowest and highest written note of an étude.
 * @param isEnough true when a range holds what the étude needs
 */
export function rangeOf(
  level: Level,
  asked: { readonly low: Pitch | null; readonly high: Pitch | null },
  isEnough: (range: Range) => boolean,
): Range {
  const plan = LEVEL_PLANS[level];
  let range: Range = { low: asked.low ?? plan.low, high: asked.high ?? plan.high };
  if (asked.low || asked.high) return range;
  while (!isEnough(range)) {
    const low = Math.max(LOWEST_CENTS, pitchCents(range.low) - 200);
    const high = Math.min(HIGHEST_CENTS, pitchCents(range.high) + 200);
    const wider = { low: spellCents(low, 'flat'), high: spellCents(high, 'flat') };
    if (low === pitchCents(range.low) && high === pitchCents(range.high)) return range;
    range = wider;
  }
  return range;
}
