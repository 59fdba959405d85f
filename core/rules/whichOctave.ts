/**
 * Finds where a player's bass clef begins, when it may stand an octave too low, as was the habit until about 1900.
 * Why: in old notation the bass clef sounds a fourth above (in F) where it now sounds a fifth below; the wrong reading
 * puts every note on another harmonic. @source grove1879, p. 750
 */
import { printPitch } from '../pitch/pitch.ts';
import type { Finding, Rule } from './rule.ts';

export const whichOctave: Rule = {
  id: 'which-octave',
  check({ notes, sounding: { bassClef, doubt } }) {
    if (!doubt) return [];
    const why =
      doubt.because === 'too-low'
        ? 'as it stands the part would go below the horn'
        : 'the leaps into and out of it look like old notation';
    return doubt.noteIndexes.map((noteIndex): Finding => {
      const written = printPitch(notes[noteIndex]!.note.written);
      return {
        id: this.id,
        severity: 'advice',
        noteIndex,
        brief: 'which octave',
        message:
          bassClef === 'old'
            ? `From ${written} on the bass clef is read in old notation, an octave higher than it stands: ${why}.`
            : `From ${written} on the bass clef is read as it stands, although ${why}, which sounds an octave higher.`,
        remedy: 'Say which is meant by setting the bass clef to old or new.',
      };
    });
  },
};
