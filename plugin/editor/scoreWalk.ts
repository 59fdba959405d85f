/** One part of the host's score, walked once: chords, rests and texts with where they stand. */
import { signOf } from './handSigns.ts';
import {
  type HostChord,
  type HostElement,
  type HostMeasure,
  type HostNote,
  type HostPart,
  type HostRoot,
  type HostScore,
  type HostSegment,
  type HostText,
  listOf,
} from './hostApi.ts';

/** A chord, or a single note, or one of a chord's grace chords. */
export interface ScoreChord {
  readonly measureIndex: number;
  /** Ticks from the start of the score; a grace chord has its main chord's. */
  readonly tick: number;
  readonly track: number;
  /** Place among the graces of its main chord as the host counts them, from 0; `null` for a chord of its own. */
  readonly graceIndex: number | null;
  readonly element: HostChord;
  /** Those that are the player's, from the top note down. */
  readonly notes: readonly HostNote[];
  /** Hidden ones and cues, which are nobody's to play here. */
  readonly others: readonly HostNote[];
}

export interface ScoreRest {
  readonly measureIndex: number;
  readonly tick: number;
  readonly track: number;
}

/** A text on the staff: words, a tempo, a mark of ours. */
export interface ScoreText {
  readonly measureIndex: number;
  readonly tick: number;
  readonly track: number;
  readonly element: HostText;
}

export interface ScoreMeasure {
  readonly tick: number;
  /** Past the last tick of the measure. */
  readonly endTick: number;
  readonly element: HostMeasure;
}

export interface PartWalk {
  readonly part: HostPart;
  readonly measures: readonly ScoreMeasure[];
  /**
   * Measure by measure, in a measure voice by voice, in a voice in the order of the music with the graces around
   * their chord: graces before in order, the chord, graces after from the last to the first, as the host exports them.
   */
  readonly chords: readonly ScoreChord[];
  readonly rests: readonly ScoreRest[];
  readonly texts: readonly ScoreText[];
}

/**
 * Walks one part. Reads only; the time goes with the part's measures and not with the size of the score.
 * @param isWanted leaves out what other measures hold
 */
export function walkPart(
  root: HostRoot,
  score: HostScore,
  part: HostPart,
  isWanted: (measure: HostMeasure) => boolean = () => true,
): PartWalk {
  const measures: ScoreMeasure[] = [];
  const bars: BarWalk[] = [];
  for (let measure = score.firstMeasure; measure; measure = measure.nextMeasure) {
    const measureIndex = measures.length;
    measures.push(measureOf(measure));
    if (isWanted(measure)) bars.push(walkBar(root, measure, measureIndex, part));
  }
  return walkFrom(part, measures, bars);
}

/** A walk of bars that were walked one by one. */
export function walkFrom(
  part: HostPart,
  measures: readonly ScoreMeasure[],
  bars: readonly BarWalk[],
): PartWalk {
  return {
    part,
    measures,
    chords: ([] as ScoreChord[]).concat(...bars.map(({ chords }) => chords as ScoreChord[])),
    rests: ([] as ScoreRest[]).concat(...bars.map(({ rests }) => rests as ScoreRest[])),
    texts: ([] as ScoreText[]).concat(...bars.map(({ texts }) => texts as ScoreText[])),
  };
}

/** What a part has in one measure. */
export interface BarWalk {
  readonly chords: readonly ScoreChord[];
  readonly rests: readonly ScoreRest[];
  readonly texts: readonly ScoreText[];
}

/** Walks one measure of one part. */
export function walkBar(root: HostRoot, measure: HostMeasure, measureIndex: number, part: HostPart): BarWalk {
  const chords: ScoreChord[] = [];
  const rests: ScoreRest[] = [];
  const texts: ScoreText[] = [];
  const { CHORD, REST } = root.Element;
  const { startTrack, endTrack } = part;
  const voices: ScoreChord[][] = [];
  for (let segment = measure.firstSegment; segment; segment = segment.nextInMeasure) {
    const tick = segment.tick;
    texts.push(...textsAt(root, segment, measureIndex, part));
    for (let track = startTrack; track < endTrack; track++) {
      const element = segment.elementAt(track);
      if (!element) continue;
      const { type } = element;
      if (type === CHORD) {
        const voice = voices[track - startTrack] ?? [];
        voices[track - startTrack] = voice;
        for (const chord of withGraces(root, element as HostChord, measureIndex, tick, track))
          voice.push(chord);
      } else if (type === REST) rests.push({ measureIndex, tick, track });
    }
  }
  for (const voice of voices) if (voice) chords.push(...voice);
  return { chords, rests, texts };
}

/** The texts of one measure of one part, as they stand. */
export function textsOf(
  root: HostRoot,
  measure: HostMeasure,
  measureIndex: number,
  part: HostPart,
): readonly ScoreText[] {
  const texts: ScoreText[] = [];
  for (let segment = measure.firstSegment; segment; segment = segment.nextInMeasure)
    texts.push(...textsAt(root, segment, measureIndex, part));
  return texts;
}

function textsAt(
  { Element }: HostRoot,
  segment: HostSegment,
  measureIndex: number,
  { startTrack, endTrack }: HostPart,
): readonly ScoreText[] {
  const { annotations } = segment;
  if (annotations.length === 0) return NO_TEXTS;
  const texts: ScoreText[] = [];
  for (const annotation of listOf(annotations)) {
    const { track } = annotation;
    const isHere = track >= startTrack && track < endTrack;
    // A tempo stands in the top staff and holds for all.
    if (!isHere && annotation.type !== Element.TEMPO_TEXT) continue;
    // Dynamics, diagrams and the like are annotations too, and have no text.
    if (typeof (annotation as HostText).text !== 'string') continue;
    texts.push({ measureIndex, tick: segment.tick, track, element: annotation as HostText });
  }
  return texts;
}

const NO_TEXTS: readonly ScoreText[] = [];

/** Where a measure begins and ends. */
export function measureOf(measure: HostMeasure): ScoreMeasure {
  const tick = measure.firstSegment ? measure.firstSegment.tick : 0;
  return { tick, endTick: tick + measureTicks(measure, tick), element: measure };
}

function measureTicks(measure: HostMeasure, startTick: number): number {
  const next = measure.nextMeasure?.firstSegment;
  return next ? next.tick - startTick : measure.timesigActual.ticks;
}

function withGraces(
  root: HostRoot,
  element: HostChord,
  measureIndex: number,
  tick: number,
  track: number,
): ScoreChord[] {
  const before: ScoreChord[] = [];
  const after: ScoreChord[] = [];
  listOf(element.graceNotes).forEach((grace, graceIndex) => {
    const chord = { measureIndex, tick, track, graceIndex, element: grace, ...sorted(root, grace) };
    if (isGraceAfter(root, grace)) after.unshift(chord);
    else before.push(chord);
  });
  const main = { measureIndex, tick, track, graceIndex: null, element, ...sorted(root, element) };
  return before.concat(main, after);
}

/** The host's own numbers for graces after: GRACE8_AFTER, GRACE16_AFTER, GRACE32_AFTER. */
function isGraceAfter({ NoteType }: HostRoot, grace: HostElement & { readonly noteType: number }): boolean {
  if (!NoteType) return false;
  const { noteType } = grace;
  return (
    noteType === NoteType.GRACE8_AFTER ||
    noteType === NoteType.GRACE16_AFTER ||
    noteType === NoteType.GRACE32_AFTER
  );
}

/** The player's notes of a chord from the top down. */
export function notesOf(root: HostRoot, chord: HostChord): readonly HostNote[] {
  return sorted(root, chord).notes;
}

function sorted(root: HostRoot, chord: HostChord): Pick<ScoreChord, 'notes' | 'others'> {
  const all = listOf(chord.notes);
  if (all.length > 1) all.sort((a, b) => a.line - b.line || b.pitch - a.pitch);
  const lowest = all[all.length - 1];
  const isPlayers = (note: HostNote) =>
    note.visible && (!isCue(chord, note) || (note === lowest && hasHandSign(root, chord)));
  const notes = all.filter(isPlayers);
  return { notes, others: notes.length === all.length ? [] : all.filter((note) => !isPlayers(note)) };
}

/** The host keeps a cue as a small note that does not sound, and writes it as such into a file. */
function isCue(chord: HostChord, note: HostNote): boolean {
  return note.play === false && (note.small === true || chord.small === true);
}

/** A sign for the hand says that a cue is meant for this player: a file has it at the chord's lowest note. */
function hasHandSign(root: HostRoot, { articulations }: HostChord): boolean {
  return listOf(articulations).some((articulation) => signOf(root, articulation) !== null);
}
