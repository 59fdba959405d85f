/** Where things stand in a part as it is read from paper (measure, beat, staff), and how long notes last. */
import { TICKS_PER_QUARTER } from './hostApi.ts';
import type { BarWalk, ScoreMeasure, ScoreRest } from './scoreBar.ts';
import type { PartWalk } from './scoreWalk.ts';

/** Measure numbers as printed: irregular measures are not counted, a pickup is 0. */
export function measureNumbers(measures: readonly ScoreMeasure[]): string[] {
  let number = 0;
  let uncounted = 0;
  return measures.map(({ numberOffset, isIrregular }, i) => {
    number += numberOffset;
    if (!isIrregular) {
      number += 1;
      return String(number);
    }
    if (i === 0) return '0';
    uncounted += 1;
    return `X${uncounted}`;
  });
}

/** How long what stands there lasts, in quarters. */
export type Length = (place: { measureIndex: number; tick: number; track: number }) => number;

/** A chord or rest lasts until the next of its voice, or to the end of the measure, inside tuplets too. */
export function lengthsIn({ bars, measures }: PartWalk): Length {
  let barIndex = -1;
  let ends = new Map<number, number>();
  return ({ measureIndex, tick, track }) => {
    // Asked bar by bar.
    if (measureIndex !== barIndex) {
      barIndex = measureIndex;
      ends = endsIn(bars[measureIndex]!, measures[measureIndex]!);
    }
    return (ends.get(placeIn(tick, track))! - tick) / TICKS_PER_QUARTER;
  };
}

/** Where what begins at each place of a bar ends, in ticks. */
function endsIn({ chords, rests }: BarWalk, { endTick }: ScoreMeasure): Map<number, number> {
  const onsets = (rests as readonly ScoreRest[])
    .concat(chords.filter(({ graceIndex }) => graceIndex === null))
    .sort((a, b) => a.track - b.track || a.tick - b.tick);
  const ends = new Map<number, number>();
  onsets.forEach(({ tick, track }, i) => {
    const next = onsets[i + 1];
    ends.set(placeIn(tick, track), next?.track === track && next.tick < endTick ? next.tick : endTick);
  });
  return ends;
}

/** More than there are tracks. */
const TRACKS = 4096;

function placeIn(tick: number, track: number): number {
  return tick * TRACKS + track;
}

/** Counted from 1 in the unit of the time signature. */
export function beatAt({ tick: start, denominator }: ScoreMeasure, tick: number): number {
  return 1 + ((tick - start) / TICKS_PER_QUARTER) * (denominator / 4);
}

/** The staff of the part, from 1. */
export function staffOf({ part }: PartWalk, track: number): number {
  return 1 + Math.floor((track - part.startTrack) / 4);
}
