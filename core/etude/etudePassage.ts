/** An étude's bars as the passage that a door would read from its score. */
import type { Join, Passage, PassageNote, PassageRest } from '../part/passage.ts';
import type { Transposition } from '../pitch/pitch.ts';
import type { Bar } from './bar.ts';

/**
 * The passage of some bars of one voice.
 * @param beatsPerMinute the tempo from the first note on, in the first bar's beats
 */
export function etudePassage(
  bars: readonly Bar[],
  transposition: Transposition,
  beatsPerMinute: number,
): Passage {
  const notes: PassageNote[] = [];
  const rests: PassageRest[] = [];
  let isUnderSlur = false;
  let onsetQuarters = 0;
  bars.forEach(({ notes: events, meter }, measureIndex) => {
    const barOnset = onsetQuarters;
    for (const { written, quarters, sign, slur, slides, ties } of events) {
      const index = notes.length;
      if (written) {
        const joins: Join[] = [];
        if (slur === 'start') isUnderSlur = true;
        if (slur === 'stop') isUnderSlur = false;
        // From note to note, as readers tell it.
        if (isUnderSlur) joins.push({ kind: 'slur', to: index + 1 });
        if (ties) joins.push({ kind: 'tie', to: index + 1 });
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
          fingering: null,
          userColour: false,
        });
      } else {
        rests.push({ onsetQuarters, durationQuarters: quarters, staff: 1, voice: '1' });
      }
      onsetQuarters += quarters;
    }
  });
  const quartersPerMinute = beatsPerMinute * (bars[0]?.meter.beatQuarters ?? 1);
  return { name: 'Horn', notes, words: [], tempos: [{ onsetQuarters: 0, quartersPerMinute }], rests };
}
