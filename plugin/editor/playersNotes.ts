/** Which notes of a part are its player's, and when the player rests. */
import type { PassageRest } from '../../core/index.ts';
import { TICKS_PER_QUARTER } from './hostApi.ts';
import type { PartEvidence } from './partEvidence.ts';
import { type Length, staffOf } from './placesInPart.ts';
import type { ScoreChord, ScoreNote, ScoreRest } from './scoreBar.ts';
import type { PartWalk } from './scoreWalk.ts';

/**
 * Before 3.5 a cue is a small chord that sounds like any other, and whether it has a sign, which says that it is meant
 * for this player, is seen in the score as it is written.
 */
export function withoutCue(chord: ScoreChord, evidence: PartEvidence): ScoreChord {
  if (!evidence.ties || !chord.isSmall || chord.graceIndex !== null) return chord;
  const isMeant = evidence.signs.has(chord);
  return { ...chord, notes: isMeant ? chord.notes.slice(-1) : [] };
}

export function isPlayers({ notes }: ScoreChord): boolean {
  return notes.length > 0;
}

/** Rests, and chords of which nothing is the player's. */
export function restsOf(walk: PartWalk, lengthOf: Length, evidence: PartEvidence): PassageRest[] {
  const all: PassageRest[] = [];
  for (const { chords, rests } of walk.bars) {
    const silent = chords.filter(
      (chord) => chord.graceIndex === null && !isPlayers(withoutCue(chord, evidence)),
    );
    const here =
      silent.length === 0
        ? rests
        : (rests as readonly ScoreRest[]).concat(silent).sort((a, b) => a.tick - b.tick || a.track - b.track);
    for (const rest of here)
      all.push({
        onsetQuarters: rest.tick / TICKS_PER_QUARTER,
        durationQuarters: lengthOf(rest),
        staff: staffOf(walk, rest.track),
        voice: String((rest.track % 4) + 1),
      });
  }
  return all;
}

/** The notes of a chord in the order in which a file lists them, and the editor itself. */
export function fromBottom({ notes }: ScoreChord): readonly ScoreNote[] {
  return notes.length === 1 ? notes : notes.slice().reverse();
}
