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
export type Length = (place: ScoreRest) => number;

/** A chord or rest lasts until the next of its voice, or to the end of the measure, inside tuplets too. Asked bar by bar. */
export function lengthsIn({ part: { startTrack }, bars, measures }: PartWalk): Length {
  let barIndex = -1;
  let onsets: readonly (readonly number[])[] = [];
  return ({ measureIndex, tick, track }) => {
    if (measureIndex !== barIndex) {
      barIndex = measureIndex;
      onsets = onsetsIn(bars[measureIndex]!, startTrack);
    }
    let end = measures[measureIndex]!.endTick;
    for (const onset of onsets[track - startTrack]!) if (onset > tick && onset < end) end = onset;
    return (end - tick) / TICKS_PER_QUARTER;
  };
}

/** Where chords and rests of a bar begin, in ticks; by track, from the part's first. */
function onsetsIn({ chords, rests }: BarWalk, startTrack: number): readonly (readonly number[])[] {
  const onsets: number[][] = [];
  const take = ({ tick, track }: ScoreRest) => {
    const voice = onsets[track - startTrack];
    if (voice) voice.push(tick);
    else onsets[track - startTrack] = [tick];
  };
  for (const rest of rests) take(rest);
  for (const chord of chords) if (chord.graceIndex === null) take(chord);
  return onsets;
}

/** Counted from 1 in the unit of the time signature. */
export function beatAt({ tick: start, denominator }: ScoreMeasure, tick: number): number {
  return 1 + ((tick - start) / TICKS_PER_QUARTER) * (denominator / 4);
}

/** The staff of the part, from 1. */
export function staffOf({ part }: PartWalk, track: number): number {
  return 1 + Math.floor((track - part.startTrack) / 4);
}
