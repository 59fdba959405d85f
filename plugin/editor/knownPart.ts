/**
 * A part as the panel read it last, with the bars around the selection as they are now. Annotating a few notes takes them
 * from there: most of its time went into reading the rest of the part once more. Of what is further off only words and
 * tempos bear on them, which are compared up to there.
 */
import type { HandSign } from '../../core/index.ts';
import { type BarCopy, copiesOf, copyBar } from './barCopy.ts';
import {
  type Host,
  type HostMeasure,
  type HostPart,
  type HostRoot,
  type HostScore,
  isAtLeast,
  listOf,
} from './hostApi.ts';
import type { ListedPart } from './listedPart.ts';
import { userColoured } from './ownMarks.ts';
import { type PartEvidence, placeKey } from './partEvidence.ts';
import { tickOf } from './place.ts';
import { withSelectedSigns } from './rangeEvidence.ts';
import type { ChordNote, ReadPart } from './readPart.ts';
import { isReadAsText } from './readPassages.ts';
import {
  type BarWalk,
  measureOf,
  type PartWalk,
  type ScoreMeasure,
  type ScoreText,
  textsOf,
  walkBar,
  walkFrom,
} from './scoreWalk.ts';

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
 * The part with the host's own notes in the bars around the selection and with copies, which nothing may be done to, in
 * all others.
 * @returns `null` where these bars are not as they were, or where the panel cannot know
 */
export function partAsKnown(host: Host, score: HostScore, known: KnownPart): ReadPart | null {
  const { part, evidence, listed } = known;
  if (!listed || !knowsSigns(host, score, part, evidence)) return null;
  const walk = walkAround(host, score, known);
  if (!walk) return null;
  const chordNotes = notesAgain(walk, listed);
  // What colour a note has is not among what is copied.
  const isColoured = userColoured(host, walk);
  if (!chordNotes || chordNotes.some(({ note }) => isColoured(note))) return null;
  return { passage: listed.passage, walk, chordNotes };
}

/** True where the selected signs are those that are known: from 4.6 on the bars tell them, before 3.5 the selection. */
function knowsSigns(host: Host, score: HostScore, part: HostPart, evidence: PartEvidence): boolean {
  if (isAtLeast(host, 4, 6)) return true;
  const now = isReadAsText(host) ? withSelectedSigns(host, score, part, evidence) : null;
  return now !== null && isSame(now.signs, evidence.signs);
}

function isSame(one: ReadonlyMap<string, HandSign>, other: ReadonlyMap<string, HandSign>): boolean {
  return (
    one.size === other.size && Array.from(one.entries()).every(([place, sign]) => other.get(place) === sign)
  );
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
      if (copyBar(root, measure, i, [part]).texts[0] !== before.texts[index]) return null;
      measures.push(measureOf(measure));
      walked.push(walkBar(root, measure, i, part));
    } else {
      if (measure.firstSegment?.tick !== before.measure.tick) return null;
      // A word holds from where it stands to the next one, however far.
      if (i < first && !hasWords(root, measure, before.parts[index]!.texts, i, part)) return null;
      measures.push(before.measure);
      walked.push(before.parts[index]!);
    }
    measure = measure.nextMeasure;
  }
  return measure ? null : walkFrom(part, measures, walked);
}

/** True where the words of a bar are these. */
function hasWords(
  root: HostRoot,
  measure: HostMeasure,
  words: readonly ScoreText[],
  measureIndex: number,
  part: HostPart,
): boolean {
  const now = copiesOf(textsOf(root, measure, measureIndex, part));
  return (now.length === 0 && words.length === 0) || JSON.stringify(now) === JSON.stringify(words);
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
  const chords = new Map(
    walk.chords.map((chord) => [placeKey(chord.tick, chord.track, chord.graceIndex), chord]),
  );
  const found: ChordNote[] = [];
  for (const { tick, track, graceIndex, rank } of addresses) {
    const chord = chords.get(placeKey(tick, track, graceIndex));
    const note = chord?.notes[rank];
    if (!note) return null;
    found.push({ chord, note });
  }
  return found;
}
