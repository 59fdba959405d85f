/** Marks over several bars: hairpins and slurs, as a player would pencil them in. */
import { pitchCents } from '../pitch/pitch.ts';
import type { Bar, EtudeNote } from './bar.ts';

/** A hairpin over some bars, from the first note to the last. */
export function swelling(bars: readonly Bar[], hairpin: 'crescendo' | 'diminuendo'): readonly Bar[] {
  const notes = ([] as EtudeNote[]).concat(...bars.map((each) => each.notes));
  const sounding = notes.filter(({ written }) => written !== null);
  // Over one note, or none, a hairpin says nothing.
  if (sounding.length < 2) return bars;
  const [first, last] = [sounding[0]!, sounding[sounding.length - 1]!];
  return bars.map((each) => ({
    ...each,
    notes: each.notes.map((one) =>
      one === first ? { ...one, hairpin } : one === last ? { ...one, hairpinEnds: true } : one,
    ),
  }));
}

/** Slurs every run of short notes in a beat to the note it leads to; at most `most` notes under one slur. */
export function slurred(of: Bar, most: number): Bar {
  const notes = of.notes.slice();
  const onsets: number[] = [];
  notes.reduce((at, { quarters }, i) => {
    onsets[i] = at;
    return at + quarters;
  }, 0);
  const isOnBeat = (quarters: number) => {
    const beats = quarters / of.meter.beatQuarters;
    return Math.abs(beats - Math.round(beats)) < 1e-6;
  };
  let from = 0;
  while (from + 1 < notes.length) {
    let to = from;
    while (
      to + 1 < notes.length &&
      to - from + 1 < most &&
      notes[to + 1]!.written !== null &&
      notes[from]!.written !== null &&
      (notes[to]!.quarters < 1 || to === from) &&
      notes[to]!.quarters <= notes[from]!.quarters &&
      notes[to + 1]!.quarters < 2 &&
      !isSame(notes[to]!, notes[to + 1]!)
    )
      to += 1;
    // It ends on a beat or with one.
    while (to > from && !isOnBeat(onsets[to]!) && !isOnBeat(onsets[to]! + notes[to]!.quarters)) to -= 1;
    if (to > from && notes[from]!.quarters <= 1.5) {
      notes[from] = { ...notes[from]!, slur: 'start' };
      notes[to] = { ...notes[to]!, slur: 'stop' };
    }
    from = Math.max(to, from) + 1;
  }
  return { ...of, notes };
}

/** Two equal notes under a slur would be read as a tie. */
function isSame(a: EtudeNote, b: EtudeNote): boolean {
  return a.written !== null && b.written !== null && pitchCents(a.written) === pitchCents(b.written);
}
