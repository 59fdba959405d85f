/** Our own marks in the score: which texts are ours, which colours they claim, and which colours are the user's. */

import { claimedChordRank, isOurMark, PAINTED_COLOURS, VERDICT_COLOURS } from '../../core/index.ts';
import {
  type Host,
  type HostChord,
  type HostElement,
  type HostMeasure,
  type HostNote,
  type HostPart,
  type HostScore,
  type HostText,
  listOf,
} from './hostApi.ts';
import { cursorOn, VOICES } from './place.ts';
import type { PartWalk, ScoreChord, ScoreText } from './scoreWalk.ts';

/** What a note looks like when nobody coloured it. */
export const BLACK = '#000000';

/** The chord, its graces and our marks that stand at one place of one voice. */
export interface MarkedPlace {
  readonly tick: number;
  readonly track: number;
  /** The chord and its graces in the order of the walk. */
  readonly chords: ScoreChord[];
  readonly marks: ScoreText[];
}

/** Tells of a measure whether any mark of ours stands on the staves of a part. */
function hasMarks({ startTrack, endTrack }: HostPart): (measure: HostMeasure) => boolean {
  const isMark = (element: HostElement) => {
    const { text } = element as HostText;
    const { track } = element;
    return typeof text === 'string' && track >= startTrack && track < endTrack && isOurMark(plainText(text));
  };
  return (measure) => {
    for (let segment = measure.firstSegment; segment; segment = segment.nextInMeasure)
      if (listOf(segment.annotations).some(isMark)) return true;
    return false;
  };
}

/**
 * Tells of a measure whether it holds anything of ours: a mark, or a note that we painted and whose mark somebody deleted.
 * Looks at every chord of the part, and not at the rest of the score.
 */
export function holdsOurs(host: Host, score: HostScore, part: HostPart): (measure: HostMeasure) => boolean {
  const isMarked = hasMarks(part);
  const painted: number[] = [];
  const { CHORD } = host.root.Element;
  for (let track = part.startTrack; track < part.endTrack; track++) {
    const cursor = cursorOn(score, track);
    if (!cursor.segment) continue;
    do {
      const chord = cursor.element as HostChord | null;
      if (chord?.type === CHORD && hasPaintedNote(chord as HostChord)) painted.push(cursor.tick);
    } while (cursor.next());
  }
  return (measure) => {
    if (isMarked(measure)) return true;
    if (painted.length === 0 || !measure.firstSegment) return false;
    const start = measure.firstSegment.tick;
    const end = measure.nextMeasure?.firstSegment?.tick ?? Number.POSITIVE_INFINITY;
    return painted.some((tick) => tick >= start && tick < end);
  };
}

/** Asks the editor for as little as it can: this is looked at in every chord of the part. */
function hasPaintedNote({ notes, graceNotes }: HostChord): boolean {
  for (let i = notes.length - 1; i >= 0; i--) if (isPainted(notes[i]!)) return true;
  for (let i = graceNotes.length - 1; i >= 0; i--) if (hasPaintedNote(graceNotes[i]!)) return true;
  return false;
}

/** Every place of a part that has a chord, in the order of the walk, with the marks of ours that stand there. */
export function markedPlaces(walk: PartWalk): readonly MarkedPlace[] {
  const places = new Map<string, MarkedPlace>();
  for (const chord of walk.chords) {
    const key = `${chord.tick}/${chord.track}`;
    const place = places.get(key) ?? { tick: chord.tick, track: chord.track, chords: [], marks: [] };
    places.set(key, place);
    place.chords.push(chord);
  }
  for (const text of walk.texts) {
    if (!isOurMark(plainText(text.element.text))) continue;
    // A mark that came in with a file stands in the staff's first voice, wherever its chord is.
    const staffTrack = text.track - (text.track % VOICES);
    const tracks = [text.track, staffTrack, staffTrack + 1, staffTrack + 2, staffTrack + 3];
    const place = tracks.map((track) => places.get(`${text.tick}/${track}`)).filter((found) => found)[0];
    if (place) place.marks.push(text);
  }
  return Array.from(places.values());
}

/** A note of a marked place, with its rank in its own chord: 0 for the top note, `null` for one that is not the player's. */
export interface RankedNote {
  readonly note: HostNote;
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
  for (const { element } of place.marks) {
    const claimedRank = claimedChordRank(plainText(element.text));
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

/** True for a note of a place that is painted in a colour that nobody but us gives. */
export function hasPainted({ chords }: Pick<MarkedPlace, 'chords'>): boolean {
  return chords.some(({ notes, others }) => notes.some(isPainted) || others.some(isPainted));
}

/** Tells of each note of a part whether its user gave it a colour. */
export function userColoured(host: Host, walk: PartWalk): (note: HostNote) => boolean {
  const ours = new Map<HostNote, boolean>();
  const hasMarks = walk.texts.some(({ element }) => isOurMark(plainText(element.text)));
  for (const place of hasMarks ? markedPlaces(walk) : []) {
    if (place.marks.length === 0) continue;
    const claimed = claimedNotes(host, place);
    notesAt(place).forEach(({ note }, i) => {
      ours.set(note, claimed[i]!);
    });
  }
  return (note) => {
    const { color } = note;
    return (
      color !== BLACK && !host.engine.colorEqual(color, BLACK) && ours.get(note) !== true && !isPainted(note)
    );
  };
}

/** A text without the host's formatting and with its signs as they print. */
export function plainText(text: string): string {
  if (text.indexOf('<') < 0 && text.indexOf('&') < 0) return text;
  return text
    .replace(/<[^>]*>/g, '')
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, '&');
}

function isVerdictColour({ engine }: Host, { color }: HostNote): boolean {
  const { risky, impossible } = VERDICT_COLOURS;
  return engine.colorEqual(color, risky) || engine.colorEqual(color, impossible);
}

const PAINTED: readonly string[] = [PAINTED_COLOURS.risky, PAINTED_COLOURS.impossible];

/** True for a note in a colour that nobody but us gives. */
function isPainted({ color }: HostNote): boolean {
  return PAINTED.indexOf(String(color).toUpperCase()) >= 0;
}
