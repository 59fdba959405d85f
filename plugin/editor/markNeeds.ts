/** How far from the staff a mark has to stand to be clear of its note, stem, beam and sign: what the editor does not tell before it is too late. */
import { isLowerVoice } from '../../core/index.ts';
import { ANCHOR_BELOW, signOf } from './handSigns.ts';
import { type Host, isAtLeast, listOf, TICKS_PER_QUARTER } from './hostApi.ts';
import { VOICES, voiceOf } from './place.ts';
import type { PartWalk, ScoreChord } from './scoreWalk.ts';

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
  const voices = new Set<string>();
  for (const { measureIndex, track } of walk.rests) voices.add(`${measureIndex}/${track}`);
  const beams = new Map<string, Reach>();
  for (const chord of walk.chords) {
    voices.add(`${chord.measureIndex}/${chord.track}`);
    const key = beamKey(walk, chord);
    const reach = reachOf(chord);
    const beam = beams.get(key);
    if (!beam) beams.set(key, reach);
    else {
      beam.top = Math.min(beam.top, reach.top);
      beam.bottom = Math.max(beam.bottom, reach.bottom);
    }
  }
  return (chord) => {
    const { track, measureIndex, element } = chord;
    const isBelow = isLowerVoice(voiceOf(track));
    const others = [0, 1, 2, 3].filter((voice) =>
      voices.has(`${measureIndex}/${track - (track % VOICES) + voice}`),
    );
    const beam = beams.get(beamKey(walk, chord))!;
    const isStemUp = others.length > 1 ? !isBelow : beam.top + beam.bottom > 2 * MIDDLE_LINE;
    const hasStem = isStemUp !== isBelow && element.duration.ticks < WHOLE;
    const { top, bottom } = hasStem ? beam : reachOf(chord);
    const beyond =
      (isBelow ? (bottom - BOTTOM_LINE) / 2 : -top / 2) +
      (hasStem ? stemOf(chord, isBelow ? bottom - MIDDLE_LINE : MIDDLE_LINE - top) : HEAD);
    return Math.max(0, beyond) + (isBelow ? LINE_BELOW + (hasSignBelow(host, chord) ? SIGN_BELOW : 0) : sign);
  };
}

function hasSignBelow(host: Host, { element }: ScoreChord): boolean {
  return listOf(element.articulations).some(
    (sign) => signOf(host.root, sign) !== null && sign.articulationAnchor === ANCHOR_BELOW,
  );
}

/** How long a stem is. @param beyond how many steps its note is off the middle line, on the side that the stem leads to */
function stemOf({ element }: ScoreChord, beyond: number): number {
  if (element.duration.ticks < TICKS_PER_QUARTER) return STEM;
  return Math.max(SHORTEST_STEM, STEM - SHORTER * Math.max(0, beyond));
}

function reachOf({ notes, others }: ScoreChord): Reach {
  const lines = notes.concat(others).map(({ line }) => line);
  return { top: Math.min(...lines), bottom: Math.max(...lines) };
}

/** The same for chords that are likely to share a beam: notes shorter than a quarter, in one beat. */
function beamKey(
  { measures }: PartWalk,
  { measureIndex, tick, track, graceIndex, element }: ScoreChord,
): string {
  const { tick: start, element: measure } = measures[measureIndex]!;
  const { numerator, denominator } = measure.timesigActual;
  const beat = denominator === 8 && numerator % 3 === 0 ? DOTTED_QUARTER : TICKS_PER_QUARTER;
  const isAlone = graceIndex !== null || element.duration.ticks >= TICKS_PER_QUARTER;
  const place = isAlone ? `${tick}/${graceIndex}` : `${measureIndex}:${Math.floor((tick - start) / beat)}`;
  return `${track}/${place}`;
}
