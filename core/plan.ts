/** Chooses one fingering for every note of a passage. */
import { type Fingering, fingerings, type Player } from './fingering.ts';
import type { HandReading } from './handStates.ts';
import type { Passage } from './passage.ts';
import { soundingCents } from './pitch.ts';

/** The fingering chosen for a note, and why it is not the standard one. */
export interface Choice {
  readonly fingering: Fingering | null;
  /** A reason in the player's words, or null when the standard fingering was chosen. */
  readonly because: string | null;
}

/** One choice for every note, by note index. */
export function choose(
  passage: Passage,
  readings: readonly HandReading[],
  player: Player,
): readonly Choice[] {
  return passage.notes.map((note, i) => {
    if (!note.transposition) return { fingering: null, because: null };
    const ranked = fingerings(soundingCents(note.written, note.transposition), readings[i]!.state, player);
    return { fingering: ranked[0] ?? null, because: null };
  });
}
