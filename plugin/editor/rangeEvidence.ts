/**
 * Before 3.5: what a stretch that the user selected tells by itself. Its list holds the signs of its chords as they are
 * now, so that a few selected notes need no writing of the whole score.
 */
import type { HandSign } from '../../core/index.ts';
import { signOf } from './handSigns.ts';
import {
  type Host,
  type HostArticulation,
  type HostNote,
  type HostPart,
  type HostScore,
  listOf,
} from './hostApi.ts';
import type { PartEvidence } from './partEvidence.ts';
import { type NoteSet, PlaceMap } from './placeMap.ts';
import { placeOf } from './selectionEvidence.ts';

/**
 * What is known of a part, with the signs of the selected stretch as they are now.
 * @param known what was known of the part when it was last read
 * @returns `null` where the selection cannot tell: single notes, graces, or lines that are not those that were known
 */
export function withSelectedSigns(
  { root }: Host,
  score: HostScore,
  part: HostPart,
  known: PartEvidence,
): PartEvidence | null {
  const { NOTE, REST, CHORD, ARTICULATION, TIE, GLISSANDO, SLUR } = root.Element;
  const elements = listOf(score.selection?.elements).filter(
    ({ track }) => track >= part.startTrack && track < part.endTrack,
  );
  // Notes that were picked one by one bring nothing else along; a stretch brings stems, rests and signs.
  if (elements.every(({ type }) => type === NOTE || type === REST)) return null;
  const places = new PlaceMap<true>();
  const signs = new PlaceMap<HandSign>();
  const lines = { ties: 0, glissandi: 0, slurs: 0 };
  for (const element of elements) {
    const { type } = element;
    if (type === NOTE) {
      if ((element as HostNote).parent?.parent?.type === CHORD) return null;
      places.set(placeOf(element), true);
    } else if (type === ARTICULATION) {
      const sign = signOf(root, element as HostArticulation);
      if (sign && !signs.has(placeOf(element))) signs.set(placeOf(element), sign);
    } else if (type === TIE) lines.ties += 1;
    else if (type === GLISSANDO) lines.glissandi += 1;
    else if (type === SLUR) lines.slurs += 1;
  }
  if (!hasLines(known, places, lines)) return null;
  known.signs.forEach((sign, place) => {
    if (!places.has(place)) signs.set(place, sign);
  });
  return { ...known, signs };
}

/** True where as many lines lie within these places as are known there. */
function hasLines(
  { ties, glissandi, slurs }: PartEvidence,
  places: PlaceMap<true>,
  found: { readonly ties: number; readonly glissandi: number; readonly slurs: number },
): boolean {
  const countIn = (notes: NoteSet) => {
    let count = 0;
    notes.forEach((place) => {
      if (places.has(place)) count += 1;
    });
    return count;
  };
  const slursHere = slurs.filter(
    ({ fromTick, fromTrack, fromGrace, toTick, toTrack, toGrace }) =>
      places.has({ tick: fromTick, track: fromTrack, graceIndex: fromGrace }) &&
      places.has({ tick: toTick, track: toTrack, graceIndex: toGrace }),
  );
  return (
    found.slurs === slursHere.length &&
    isWithin(found.glissandi, countIn(glissandi)) &&
    isWithin(found.ties, ties ? countIn(ties.from) : 0)
  );
}

/** A line that leaves the stretch is listed by some versions and not by others. */
function isWithin(found: number, known: number): boolean {
  return found === known || found === known - 1;
}
