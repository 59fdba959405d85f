/** Our own marks in the score: which texts are ours, which colours they claim, and which colours are the user's. */

import { claimedChordRank, isOurMark, PAINTED_COLOURS, VERDICT_COLOURS } from '../../core/index.ts';
import {
  type Host,
  type HostChord,
  type HostElement,
  type HostMeasure,
  type HostPart,
  type HostScore,
  type HostText,
  listOf,
} from './hostApi.ts';
import { cursorOn, VOICES } from './place.ts';
import { colourOf, plainText } from './plainValues.ts';
import { BLACK, type ScoreChord, type ScoreNote, type ScoreText } from './scoreBar.ts';
import type { PartWalk } from './scoreWalk.ts';

/** The chord, its graces and our marks that stand at one place of one voice. */
export interface MarkedPlace {
  readonly tick: number;
  readonly track: number;
  /** The chord and its graces in the order of the walk. */
  readonly chords: ScoreChord[];
  readonly marks: ScoreText[];
}

/** Tells of a measure whether any mark of ours stands on the staves of these parts. */
function hasMarks(parts: readonly HostPart[]): (measure: HostMeasure) => boolean {
  const isTheirs = (track: number) =>
    parts.some(({ startTrack, endTrack }) => track >= startTrack && track < endTrack);
  const isMark = (element: HostElement) => {
    const { text } = element as HostText;
    return typeof text === 'string' && isTheirs(element.track) && isOurMark(plainText(text));
  };
  return (measure) => {
    for (let segment = measure.firstSegment; segment; segment = segment.nextInMeasure)
      if (listOf(segment.annotations).some(isMark)) return true;
    return false;
  };
}

/**
 * Tells of a measure whether these parts hold anything of ours there: a mark, or a note that we painted and whose mark
 * somebody deleted. Looks at every chord of the parts, and not at the rest of the score.
 */
export function holdsOurs(
  host: Host,
  score: HostScore,
  parts: readonly HostPart[],
): (measure: HostMeasure) => boolean {
  const isMarked = hasMarks(parts);
  const painted: number[] = [];
  for (const { startTrack, endTrack } of parts)
    for (let track = startTrack; track < endTrack; track++) painted.push(...paintedOn(host, score, track));
  return (measure) => {
    if (isMarked(measure)) return true;
    if (painted.length === 0 || !measure.firstSegment) return false;
    const start = measure.firstSegment.tick;
    const end = measure.nextMeasure?.firstSegment?.tick ?? Number.POSITIVE_INFINITY;
    return painted.some((tick) => tick >= start && tick < end);
  };
}

/** Where a track has chords with a note that we painted, in ticks. */
function paintedOn({ root }: Host, score: HostScore, track: number): readonly number[] {
  const painted: number[] = [];
  const { CHORD } = root.Element;
  const cursor = cursorOn(score, track);
  if (!cursor.segment) return painted;
  do {
    const chord = cursor.element as HostChord | null;
    if (chord?.type === CHORD && hasPaintedNote(chord as HostChord)) painted.push(cursor.tick);
  } while (cursor.next());
  return painted;
}

/** Asks the editor for as little as it can: this is looked at in every chord of the part. */
function hasPaintedNote({ notes, graceNotes }: HostChord): boolean {
  for (let i = notes.length - 1; i >= 0; i--) if (isPainted({ colour: colourOf(notes[i]!) })) return true;
  for (let i = graceNotes.length - 1; i >= 0; i--) if (hasPaintedNote(graceNotes[i]!)) return true;
  return false;
}

/**
 * The places of a part that have a mark of ours, a note that we painted or a chord that is to be marked, in the order of the
 * walk. Most places of a part have none of these.
 */
export function markedPlaces(
  { bars }: PartWalk,
  isToBeMarked: (chord: ScoreChord) => boolean = () => false,
): readonly MarkedPlace[] {
  const all: MarkedPlace[] = [];
  const isConcerned = (chord: ScoreChord) => isToBeMarked(chord) || hasPainted(chord);
  for (const { chords, texts } of bars) {
    const marks = texts.filter(({ isOurs }) => isOurs);
    if (marks.length === 0 && !chords.some(isConcerned)) continue;
    const places = placesIn(chords);
    for (const mark of marks) placeOf(mark, places)?.marks.push(mark);
    for (const place of places) if (place.marks.length > 0 || place.chords.some(isConcerned)) all.push(place);
  }
  return all;
}

/** The places of one bar that have a chord. */
function placesIn(chords: readonly ScoreChord[]): readonly MarkedPlace[] {
  const places: MarkedPlace[] = [];
  let last: MarkedPlace | undefined;
  for (const chord of chords) {
    const { tick, track } = chord;
    // A chord and its graces follow one another.
    if (last?.tick !== tick || last.track !== track) {
      last = { tick, track, chords: [], marks: [] };
      places.push(last);
    }
    last.chords.push(chord);
  }
  return places;
}

/** A mark that came in with a file stands in the staff's first voice, wherever its chord is. */
function placeOf(mark: ScoreText, places: readonly MarkedPlace[]): MarkedPlace | undefined {
  const here = places.filter(({ tick }) => tick === mark.tick);
  const staff = mark.track - (mark.track % VOICES);
  const inVoice = here.filter(({ track }) => track === mark.track)[0];
  return inVoice ?? here.filter(({ track }) => track >= staff && track < staff + VOICES)[0];
}

/** A note of a marked place, with its rank in its own chord: 0 for the top note, `null` for one that is not the player's. */
export interface RankedNote {
  readonly note: ScoreNote;
  readonly chord: ScoreChord;
  readonly rank: number | null;
}

/** The notes of a place, chord by chord, the player's first. */
export function notesAt(place: MarkedPlace): readonly RankedNote[] {
  return ([] as RankedNote[]).concat(
    ...place.chords.map((chord) => chord.notes.map((note, rank) => ({ note, chord, rank }))),
    ...place.chords.map((chord) => chord.others.map((note) => ({ note, chord, rank: null }))),
  );
}

/**
 * True for the notes whose colour a mark of ours claims, by position in `notesAt`. A claim goes to the first note of
 * its rank that has a colour of ours, since the marks of graces stand with their chord's; or else to one that was
 * hidden since. What only we paint needs no claim: somebody may have deleted the mark.
 */
export function claimedNotes(host: Host, place: MarkedPlace): readonly boolean[] {
  const notes = notesAt(place);
  const claimed = notes.map(() => false);
  for (const { text } of place.marks) {
    const claimedRank = claimedChordRank(text);
    if (claimedRank === null) continue;
    const found = notes.findIndex(
      ({ note, rank }, i) =>
        (rank === claimedRank || rank === null) &&
        !claimed[i] &&
        (isVerdictColour(host, note) || isPainted(note)),
    );
    if (found >= 0) claimed[found] = true;
  }
  return claimed.map((isClaimed, i) => isClaimed || isPainted(notes[i]!.note));
}

/** True for a chord with a note in a colour that nobody but us gives. */
function hasPainted({ notes, others }: ScoreChord): boolean {
  return notes.some(isPainted) || others.some(isPainted);
}

/** Tells of each note of a part whether its user gave it a colour. */
export function userColoured(host: Host, walk: PartWalk): (note: ScoreNote) => boolean {
  const ours = new WeakMap<ScoreNote, boolean>();
  for (const place of markedPlaces(walk)) {
    const claimed = claimedNotes(host, place);
    notesAt(place).forEach(({ note }, i) => {
      ours.set(note, claimed[i]!);
    });
  }
  return (note) => isColoured(host, note) && ours.get(note) !== true && !isPainted(note);
}

/** True for a note in any colour but black. */
export function isColoured({ engine }: Host, { colour }: ScoreNote): boolean {
  return colour !== BLACK && !engine.colorEqual(colour, BLACK);
}

function isVerdictColour({ engine }: Host, { colour }: ScoreNote): boolean {
  const { risky, impossible } = VERDICT_COLOURS;
  return colour !== BLACK && (engine.colorEqual(colour, risky) || engine.colorEqual(colour, impossible));
}

const PAINTED: readonly string[] = [PAINTED_COLOURS.risky, PAINTED_COLOURS.impossible];

/** True for a note in a colour that nobody but us gives. */
function isPainted({ colour }: Pick<ScoreNote, 'colour'>): boolean {
  return colour !== BLACK && PAINTED.indexOf(colour) >= 0;
}
