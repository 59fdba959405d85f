/**
 * Finds where a player's bass clef begins, when it may stand an octave too low, as was the habit until about 1900.
 * Why: in old notation the bass clef sounds a fourth above (in F) where it now sounds a fifth below; the wrong reading
 * puts every note on another harmonic. @source grove1879, p. 750
 */
import type { Sounding } from '../part/sounding.ts';
import type { Pitch } from '../pitch/pitch.ts';
import type { FoundBy, Rule } from './rule.ts';

/** Where the bass clef begins, how it was read, and what speaks for old notation. */
export interface WhichOctave {
  readonly from: Pitch;
  readonly bassClef: Sounding['bassClef'];
  readonly because: NonNullable<Sounding['doubt']>['because'];
}

export const whichOctave: Rule<'which-octave', WhichOctave> = {
  id: 'which-octave',
  check({ notes, sounding: { bassClef, doubt } }) {
    if (!doubt) return [];
    const { because } = doubt;
    return doubt.noteIndexes.map(
      (noteIndex): FoundBy<'which-octave', WhichOctave> => ({
        id: this.id,
        severity: 'advice',
        noteIndex,
        otherIndex: null,
        cause: { from: notes[noteIndex]!.note.written, bassClef, because },
      }),
    );
  },
};
