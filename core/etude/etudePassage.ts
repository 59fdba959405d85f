/** An étude's bars as the passage that a door would read from its score. */
import type { Join, Passage, PassageNote, PassageRest } from '../part/passage.ts';
import type { Transposition } from '../pitch/pitch.ts';
import type { EtudeNote, Meter } from './bar.ts';

/**
 * The passage of some bars of one voice.
 * @param beatsPerMinute the tempo from the first note on, in the meter's beats
 */
export function etudePassage(
  bars: readonly (readonly EtudeNote[])[],
  transposition: Transposition,
  meter: Meter,
  beatsPerMinute: number,
): Passage {
  const notes: PassageNote[] = [];
  const rests: PassageRest[] = [];
  const slurStops = slurEnds(bars);
  let onsetQuarters = 0;
  bars.forEach((bar, measureIndex) => {
    const barOnset = onsetQuarters;
    for (const { written, quarters, sign, slur, slides } of bar) {
      const index = notes.length;
      if (written) {
        const joins: Join[] = [];
        if (slur === 'start') joins.push({ kind: 'slur', to: slurStops[index]! });
        if (slides) joins.push({ kind: 'glissando', to: index + 1 });
        notes.push({
          index,
          measureIndex,
          measure: String(measureIndex + 1),
          beat: 1 + ((onsetQuarters - barOnset) * meter.beatType) / 4,
          onsetQuarters,
          durationQuarters: quarters,
          grace: false,
          staff: 1,
          voice: '1',
          chordRank: 0,
          chordHead: index,
          written,
          transposition,
          clef: 'treble',
          sign,
          joins,
          userColour: false,
        });
      } else {
        rests.push({ onsetQuarters, durationQuarters: quarters, staff: 1, voice: '1' });
      }
      onsetQuarters += quarters;
    }
  });
  const quartersPerMinute = beatsPerMinute * meter.beatQuarters;
  return { name: 'Horn', notes, words: [], tempos: [{ onsetQuarters: 0, quartersPerMinute }], rests };
}

/** By note index of each slur's first note, the index of its last. */
function slurEnds(bars: readonly (readonly EtudeNote[])[]): { readonly [from: number]: number } {
  const ends: { [from: number]: number } = {};
  let index = 0;
  let from = 0;
  for (const bar of bars) {
    for (const { written, slur } of bar) {
      if (!written) continue;
      if (slur === 'start') from = index;
      if (slur === 'stop') ends[from] = index;
      index += 1;
    }
  }
  return ends;
}
