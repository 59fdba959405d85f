/** Where things stand in a part as it is read from paper (measure, beat, staff), and how long notes last. */
import { TICKS_PER_QUARTER } from './hostApi.ts';
import type { PartWalk, ScoreMeasure } from './scoreWalk.ts';

/** Measure numbers as printed: irregular measures are not counted, a pickup is 0. */
export function measureNumbers(measures: readonly ScoreMeasure[]): string[] {
  let number = 0;
  let uncounted = 0;
  return measures.map(({ element }, i) => {
    number += Number(element.noOffset) || 0;
    if (!element.irregular) {
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
export function lengthsIn(walk: PartWalk): Length {
  const ends = new Map<string, number>();
  const onsets = ([] as { measureIndex: number; tick: number; track: number }[])
    .concat(
      walk.chords.filter(({ graceIndex }) => graceIndex === null),
      walk.rests,
    )
    .sort((a, b) => a.track - b.track || a.tick - b.tick);
  onsets.forEach(({ measureIndex, tick, track }, i) => {
    const next = onsets[i + 1];
    const measureEnd = walk.measures[measureIndex]!.endTick;
    ends.set(`${track}/${tick}`, next?.track === track && next.tick < measureEnd ? next.tick : measureEnd);
  });
  return ({ tick, track }) => (ends.get(`${track}/${tick}`)! - tick) / TICKS_PER_QUARTER;
}

/** Counted from 1 in the unit of the time signature. */
export function beatAt({ tick: start, element }: ScoreMeasure, tick: number): number {
  return 1 + ((tick - start) / TICKS_PER_QUARTER) * (element.timesigActual.denominator / 4);
}

/** The staff of the part, from 1. */
export function staffOf({ part }: PartWalk, track: number): number {
  return 1 + Math.floor((track - part.startTrack) / 4);
}
