/**
 * Finds fingerings printed in the part that do not give their note on this horn, as the hand is there.
 * Why: a fingering pencilled for an open note, another horn or another note sounds wrong, and a player trusts the page.
 * @source commonPractice
 */
import type { Horn } from '../horn/horn.ts';
import type { Pitch } from '../pitch/pitch.ts';
import type { Fingering, HandState } from '../stopping/fingering.ts';
import type { FoundBy, Rule } from './rule.ts';

/** The note, what is printed over it, and what gives it. */
export interface FingeringMisses {
  readonly written: Pitch;
  readonly state: HandState;
  readonly horn: Horn;
  /** The fingering as it is printed. */
  readonly text: string;
  readonly instead: Fingering;
}

export const fingeringMisses: Rule<'fingering-misses', FingeringMisses> = {
  id: 'fingering-misses',
  check({ notes }) {
    const found: FoundBy<'fingering-misses', FingeringMisses>[] = [];
    for (const { note, reading, player, own, fingering } of notes) {
      // What has no fingering at all is found by other rules.
      if (!own || own.fingering || !fingering) continue;
      const { written, index } = note;
      found.push({
        id: this.id,
        severity: 'advice',
        noteIndex: index,
        otherIndex: null,
        cause: { written, state: reading.state, horn: player.horn, text: own.text, instead: fingering },
      });
    }
    return found;
  },
};
