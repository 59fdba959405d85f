/** How far from the staff a mark has to stand to be clear of its note, stem, beam and sign: what the editor does not tell before it is too late. */
import { isLowerVoice } from '../../core/index.ts';
import { type Host, isAtLeast, TICKS_PER_QUARTER } from './hostApi.ts';
import { VOICES, voiceOf } from './place.ts';
import { type Place, PlaceMap } from './placeMap.ts';
import type { ScoreChord } from './scoreBar.ts';
import type { PartWalk } from './scoreWalk.ts';

/** From the staff to the foot of the line of a chord's mark that is nearest to it, in staff spaces. */
export type NeedOf = (chord: ScoreChord) => number;

/** In staff spaces. */
const STEM = 3.5;
/** Stems that lead away from the staff are shorter by a quarter of a space for each step that their note is off the middle line. */
const SHORTEST_STEM = 2.25;
const SHORTER = 0.25;
const HEAD = 0.5;
/** A sign for the hand, and clear of it; measured on pages of each version. */
const SIGN_3 = 3.6;
const SIGN_4 = 2.6;
/** Down to the foot of a line from what is above it. */
const LINE_BELOW = 1.8;
/** A sign for the hand that stands below the staff, as far as the editor tells. */
const SIGN_BELOW = 1.5;

const BOTTOM_LINE = 8;
const MIDDLE_LINE = 4;
/** In ticks. */
const WHOLE = 4 * TICKS_PER_QUARTER;
const DOTTED_QUARTER = 1.5 * TICKS_PER_QUARTER;

/** The outer notes of a chord, or of all chords on a beam: lines down from the top one in half spaces. */
interface Reach {
  top: number;
  bottom: number;
}

/** What the chords of a part need. */
export function needsIn(host: Host, walk: PartWalk): NeedOf {
  const sign = isAtLeast(host, 4, 0) ? SIGN_4 : SIGN_3;
  const voices = new VoicesInBars(walk);
  const beams = new PlaceMap<Reach>();
  for (const { chords, rests } of walk.bars) {
    for (const rest of rests) voices.add(rest);
    for (const chord of chords) {
      voices.add(chord);
      const place = beamPlace(walk, chord);
      const reach = reachOf(chord);
      const beam = beams.get(place);
      if (!beam) beams.set(place, reach);
      else {
        beam.top = Math.min(beam.top, reach.top);
        beam.bottom = Math.max(beam.bottom, reach.bottom);
      }
    }
  }
  return (chord) => {
    const { track, duration, isSignBelow } = chord;
    const isBelow = isLowerVoice(voiceOf(track));
    const beam = beams.get(beamPlace(walk, chord))!;
    const isStemUp = voices.hasOthers(chord) ? !isBelow : beam.top + beam.bottom > 2 * MIDDLE_LINE;
    const hasStem = isStemUp !== isBelow && duration < WHOLE;
    const { top, bottom } = hasStem ? beam : reachOf(chord);
    const beyond =
      (isBelow ? (bottom - BOTTOM_LINE) / 2 : -top / 2) +
      (hasStem ? stemOf(chord, isBelow ? bottom - MIDDLE_LINE : MIDDLE_LINE - top) : HEAD);
    return Math.max(0, beyond) + (isBelow ? LINE_BELOW + (isSignBelow ? SIGN_BELOW : 0) : sign);
  };
}

/** How long a stem is. @param beyond how many steps its note is off the middle line, on the side that the stem leads to */
function stemOf({ duration }: ScoreChord, beyond: number): number {
  if (duration < TICKS_PER_QUARTER) return STEM;
  return Math.max(SHORTEST_STEM, STEM - SHORTER * Math.max(0, beyond));
}

function reachOf({ notes, others }: ScoreChord): Reach {
  const lines = notes.concat(others).map(({ line }) => line);
  return { top: Math.min(...lines), bottom: Math.max(...lines) };
}

/** The same for chords that are likely to share a beam: notes shorter than a quarter, in one beat. */
function beamPlace(
  { measures }: PartWalk,
  { measureIndex, tick, track, graceIndex, duration }: ScoreChord,
): Place {
  if (graceIndex !== null || duration >= TICKS_PER_QUARTER) return { tick, track, graceIndex };
  const { tick: start, numerator, denominator } = measures[measureIndex]!;
  const beat = denominator === 8 && numerator % 3 === 0 ? DOTTED_QUARTER : TICKS_PER_QUARTER;
  return { tick: start + beat * Math.floor((tick - start) / beat), track, graceIndex: ON_BEAM };
}

/** No chord has so many graces. */
const ON_BEAM = 60;

/** Which voices are written in each bar of each staff of a part. */
class VoicesInBars {
  private readonly firstTrack: number;
  /** By measure, a bit for each track. */
  private readonly bars: number[] = [];

  constructor({ part, measures }: PartWalk) {
    this.firstTrack = part.startTrack;
    for (let bar = 0; bar < measures.length; bar++) this.bars.push(0);
  }

  add({ measureIndex, track }: { readonly measureIndex: number; readonly track: number }): void {
    this.bars[measureIndex]! |= 1 << (track - this.firstTrack);
  }

  /** True where the staff of a chord has another voice in its bar. */
  hasOthers({ measureIndex, track }: ScoreChord): boolean {
    const index = track - this.firstTrack;
    const staff = ((1 << VOICES) - 1) << (index - (index % VOICES));
    return (this.bars[measureIndex]! & staff & ~(1 << index)) !== 0;
  }
}
