/**
 * A part as the panel read it last. Where it is as it was then, annotating takes from there what was found in it; for a
 * few notes it looks again at the bars around them alone, since most of its time went into reading the rest once more. Of
 * what is further off only words and tempos bear on them, which are compared up to there.
 */
import type { Examination } from '../../core/index.ts';
import type { BarCopy } from './barCopy.ts';
import { textsIn, walkBars } from './barWalk.ts';
import { type Host, type HostPart, type HostScore, isAtLeast, listOf } from './hostApi.ts';
import type { ListedPart } from './listedPart.ts';
import { userColoured } from './ownMarks.ts';
import { isSameEvidence, type PartEvidence } from './partEvidence.ts';
import { tickOf } from './place.ts';
import { PlaceMap } from './placeMap.ts';
import { withSelectedSigns } from './rangeEvidence.ts';
import type { ChordNote, ReadPart } from './readPart.ts';
import { isReadAsText } from './readParts.ts';
import {
  type BarWalk,
  hasSameWords,
  isSameBar,
  isSameMeasure,
  type ScoreChord,
  type ScoreMeasure,
} from './scoreBar.ts';
import { measureOf, type PartWalk } from './scoreWalk.ts';

/** What the panel knows of a part. */
export interface KnownPart {
  readonly part: HostPart;
  readonly evidence: PartEvidence;
  /** Bars of the score, and which of their parts this is. */
  readonly bars: readonly BarCopy[];
  readonly index: number;
  /** `null` while it is not up to date. */
  readonly listed: ListedPart | null;
}

/** Looked at anew before the selection and after it, in bars. */
const BARS_AROUND = 8;

/**
 * A part that was read again, with the passage and what the panel found in it.
 * @returns `null` where the music is not as the panel knows it
 */
export function partAsListed(
  host: Host,
  walk: PartWalk,
  evidence: PartEvidence,
  { bars, index, listed, evidence: before }: KnownPart,
): ExaminedPart | null {
  const isAsKnown = (bar: BarWalk, i: number) =>
    isSameMeasure(walk.measures[i]!, bars[i]!.measure) && isSameBar(bar, bars[i]!.parts[index]!);
  if (!listed || !isSameEvidence(before, evidence)) return null;
  if (walk.bars.length !== bars.length || !walk.bars.every(isAsKnown)) return null;
  return listedIn(host, walk, listed);
}

/**
 * The part with the host's own notes in the bars around the selection and with copies, which nothing may be done to, in
 * all others.
 * @returns `null` where these bars are not as they were, or where the panel cannot know
 */
export function partAsKnown(host: Host, score: HostScore, known: KnownPart): ExaminedPart | null {
  const { part, evidence, listed } = known;
  if (!listed || !knowsSigns(host, score, part, evidence)) return null;
  const walk = walkAround(host, score, known);
  return walk && listedIn(host, walk, listed);
}

/** A horn part of the score, read and examined. */
export interface ExaminedPart {
  readonly part: ReadPart;
  readonly examination: Examination;
}

function listedIn(host: Host, walk: PartWalk, listed: ListedPart): ExaminedPart | null {
  const chordNotes = notesAgain(walk, listed);
  // What colour a note has is not among what is copied.
  const isColoured = userColoured(host, walk);
  if (!chordNotes || chordNotes.some(({ note }) => isColoured(note))) return null;
  const { passage, examination } = listed;
  return { part: { passage, walk, chordNotes }, examination };
}

/** True where the selected signs are those that are known: from 4.6 on the bars tell them, before 3.5 the selection. */
function knowsSigns(host: Host, score: HostScore, part: HostPart, evidence: PartEvidence): boolean {
  if (isAtLeast(host, 4, 6)) return true;
  const now = isReadAsText(host) ? withSelectedSigns(host, score, part, evidence) : null;
  return now !== null && isSameEvidence(now, evidence);
}

function walkAround({ root }: Host, score: HostScore, { part, bars, index }: KnownPart): PartWalk | null {
  const { first, last } = barsAround(score, part, bars);
  const measures: ScoreMeasure[] = [];
  const walked: BarWalk[] = [];
  let measure = score.firstMeasure;
  for (let i = 0; i < bars.length; i++) {
    const before = bars[i]!;
    if (!measure) return null;
    if (i >= first && i <= last) {
      const now = measureOf(measure, 'change');
      const bar = walkBars(root, measure, i, [part], 'change')[0]!;
      if (!isSameMeasure(now, before.measure) || !isSameBar(bar, before.parts[index]!)) return null;
      measures.push(now);
      walked.push(bar);
    } else {
      if (measure.firstSegment?.tick !== before.measure.tick) return null;
      const { texts } = before.parts[index]!;
      // A word holds from where it stands to the next one, however far.
      if (i < first && !hasSameWords(textsIn(root, measure, i, part), texts)) return null;
      measures.push(before.measure);
      walked.push(before.parts[index]!);
    }
    measure = measure.nextMeasure;
  }
  return measure ? null : { part, measures, bars: walked };
}

/** The bars from which to which the selection in a part reaches, and those close to it, by their places in the score. */
function barsAround(
  { selection }: HostScore,
  { startTrack, endTrack }: HostPart,
  bars: readonly BarCopy[],
): { readonly first: number; readonly last: number } {
  let [from, to] = [Infinity, -Infinity];
  for (const element of listOf(selection?.elements)) {
    const { track } = element;
    const tick = track >= startTrack && track < endTrack ? tickOf(element) : -1;
    if (tick < 0) continue;
    from = Math.min(from, tick);
    to = Math.max(to, tick);
  }
  const starts = bars.map(({ measure }) => measure.tick);
  const barOf = (tick: number) => starts.filter((start) => start <= tick).length - 1;
  return { first: barOf(from) - BARS_AROUND, last: barOf(to) + BARS_AROUND };
}

/** The notes of the passage, where they stand now. */
function notesAgain(walk: PartWalk, { addresses }: ListedPart): readonly ChordNote[] | null {
  const chords = new PlaceMap<ScoreChord>();
  for (const bar of walk.bars) for (const chord of bar.chords) chords.set(chord, chord);
  const found: ChordNote[] = [];
  for (const address of addresses) {
    const chord = chords.get(address);
    const note = chord?.notes[address.rank];
    if (!note) return null;
    found.push({ chord, note });
  }
  return found;
}
