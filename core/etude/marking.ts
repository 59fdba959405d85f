/** Marks over several bars: hairpins and slurs, as a player would pencil them in. */
import { pitchCents } from '../pitch/pitch.ts';
import { type Bar, type EtudeNote, type Meter, quartersOf, withDynamic } from './bar.ts';

/** Where the high point of a line may come, as a share of its notes; one that begins higher falls first. */
const EARLIEST_TOP = 0.25;

/** As a line goes: louder to its high point and softer from there, or, where it begins at the top, softer to its low point first. */
export function shaped(bars: readonly Bar[]): readonly Bar[] {
  const cents = ([] as number[]).concat(
    ...bars.map(({ notes }) =>
      notes.filter(({ written }) => written).map(({ written }) => pitchCents(written!)),
    ),
  );
  const top = cents.indexOf(Math.max(...cents));
  const rises = top >= EARLIEST_TOP * cents.length;
  const low = cents.indexOf(Math.min(...cents));
  const [first, ...others] = rises
    ? arched(bars, top)
    : withHairpins(bars, (count) => [
        ['diminuendo', 0, low],
        ['crescendo', low + 1, count - 1],
      ]);
  return [withDynamic(first!, rises ? 'mp' : 'mf'), ...others];
}

/**
 * Louder up to the high point, softer from the note after it.
 * @param top the high point, counted in notes from 0
 */
export function arched(bars: readonly Bar[], top: number): readonly Bar[] {
  return withHairpins(bars, (count) => [
    ['crescendo', 0, top],
    ['diminuendo', top < 2 ? top : top + 1, count - 1],
  ]);
}

type Hairpin = 'crescendo' | 'diminuendo';

/** Hairpins from note to note; over one note, or two, they say nothing. */
function withHairpins(
  bars: readonly Bar[],
  wanted: (count: number) => readonly (readonly [hairpin: Hairpin, from: number, to: number])[],
): readonly Bar[] {
  const count = bars.reduce((sum, { notes }) => sum + notes.filter(({ written }) => written).length, 0);
  const hairpins = wanted(count).filter(([, from, to]) => to - from > 1);
  let at = -1;
  return bars.map((each) => ({
    ...each,
    notes: each.notes.map((one) => {
      if (!one.written) return one;
      at += 1;
      const begins = hairpins.filter(([, from]) => from === at)[0];
      const ends = hairpins.some(([, , to]) => to === at);
      return begins || ends ? { ...one, hairpin: begins?.[0] ?? null, hairpinEnds: ends } : one;
    }),
  }));
}

/** Slurs the notes of every half bar, or of a bar in three, as a singer would on one syllable; at most `most` under one slur. */
export function slurred(of: Bar, most: number): Bar {
  const notes = of.notes.slice();
  let from = 0;
  for (let i = 0, onset = 0; i < notes.length; i++) {
    const next = onset + notes[i]!.quarters;
    const isCut =
      i + 1 === notes.length ||
      halfOf(of.meter, onset) !== halfOf(of.meter, next) ||
      !isSung(notes[i]!, notes[i + 1]!) ||
      i + 1 - from === most;
    if (isCut && i > from) {
      notes[from] = { ...notes[from]!, slur: 'start' };
      notes[i] = { ...notes[i]!, slur: 'stop' };
    }
    if (isCut) from = i + 1;
    onset = next;
  }
  return { ...of, notes };
}

/** Which half of its bar a note begins in; a bar in three has none, one in five has three beats and two. */
function halfOf(meter: Meter, onset: number): number {
  const quarters = quartersOf(meter);
  const first = meter.beats === 3 ? quarters : meter.beats === 5 ? 3 : quarters / 2;
  return onset < first - 1e-6 ? 0 : 1;
}

/** Two equal notes under a slur would be read as a tie. */
function isSung(a: EtudeNote, b: EtudeNote): boolean {
  return a.written !== null && b.written !== null && pitchCents(a.written) !== pitchCents(b.written);
}
