/**
 * Finds notes in the bass clef that may stand an octave too low, as was the habit until about 1900.
 * Why: in old notation the bass clef sounds a fourth above (in F) where it now sounds a fifth below; the wrong reading
 * puts every note on another harmonic. @source grove1879, p. 750
 */
import { printPitch } from '../pitch.ts';
import type { Finding, Rule } from './rule.ts';

export const whichOctave: Rule = {
  id: 'which-octave',
  check({ notes, sounding }) {
    return sounding.doubtful.map((noteIndex): Finding => {
      const written = printPitch(notes[noteIndex]!.note.written);
      return {
        id: this.id,
        severity: 'advice',
        noteIndex,
        brief: 'which octave',
        message:
          sounding.bassClef === 'old'
            ? `The bass clef is read in old notation from ${written} on, an octave higher than it stands: as it stands the part would go below the horn.`
            : `The bass clef is read as it stands from ${written} on, but the leaps into and out of it look like old notation, which sounds an octave higher.`,
        remedy: 'Say which is meant by setting the bass clef to old or new.',
      };
    });
  },
};
