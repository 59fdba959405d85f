/**
 * The horn parts of one measure as plain data. The host's own objects must not be kept from one moment to the next: once
 * what they stand for is deleted, touching them ends the host. What the user did not write is left out: our marks, colours.
 */
import { isOurMark } from '../../core/index.ts';
import { fingeringsAt } from './fingeringsInScore.ts';
import {
  type HostChord,
  type HostElement,
  type HostMeasure,
  type HostNote,
  type HostPart,
  type HostRoot,
  type HostText,
  listOf,
} from './hostApi.ts';
import { BLACK, plainText } from './ownMarks.ts';
import {
  type BarWalk,
  measureOf,
  type ScoreChord,
  type ScoreMeasure,
  type ScoreText,
  walkBar,
} from './scoreWalk.ts';

export interface BarCopy {
  readonly measure: ScoreMeasure;
  /** Part by part, with copies in the places of the host's objects. */
  readonly parts: readonly BarWalk[];
  /** Part by part a text that is the same as long as the music is. */
  readonly texts: readonly string[];
}

export function copyBar(
  root: HostRoot,
  measure: HostMeasure,
  measureIndex: number,
  parts: readonly HostPart[],
): BarCopy {
  const { tick, endTick } = measureOf(measure);
  const { numerator, denominator, ticks } = measure.timesigActual;
  const element = {
    timesigActual: { numerator, denominator, ticks },
    irregular: measure.irregular,
    noOffset: Number(measure.noOffset) || 0,
  } as HostMeasure;
  const copies = parts.map((part) => copyOf(root, walkBar(root, measure, measureIndex, part)));
  return {
    measure: { tick, endTick, element },
    parts: copies,
    texts: copies.map((copy) => JSON.stringify([tick, endTick, element, copy])),
  };
}

function copyOf(root: HostRoot, { chords, rests, texts }: BarWalk): BarWalk {
  return { chords: chords.map((chord) => copyOfChord(root, chord)), rests, texts: copiesOf(texts) };
}

/** Copies of texts, without our marks. */
export function copiesOf(texts: readonly ScoreText[]): readonly ScoreText[] {
  const words: ScoreText[] = [];
  for (const { measureIndex, tick, track, element } of texts) {
    const { type, text, tempo } = element;
    if (isOurMark(plainText(text))) continue;
    words.push({ measureIndex, tick, track, element: { type, text, tempo } as HostText });
  }
  return words;
}

function copyOfChord(root: HostRoot, chord: ScoreChord): ScoreChord {
  const { measureIndex, tick, track, graceIndex, notes, others } = chord;
  const { articulations } = chord.element;
  const element = {
    small: chord.element.small,
    duration: { ticks: chord.element.duration.ticks },
    articulations:
      articulations &&
      listOf(articulations).map(({ symbol, articulationAnchor }) => ({ symbol, articulationAnchor })),
  } as unknown as HostChord;
  return {
    measureIndex,
    tick,
    track,
    graceIndex,
    element,
    notes: notes.map((note) => copyOfNote(root, note, tick)),
    others: others.map((note) => copyOfNote(root, note, tick)),
  };
}

function copyOfNote(root: HostRoot, note: HostNote, tick: number): HostNote {
  const { fractionFromTicks } = root;
  const { pitch, tpc1, tpc2, tpc, line, tieForward, tieBack, spannerForward, staff } = note;
  let stated: object | undefined;
  if (staff && fractionFromTicks) {
    const { chromatic, diatonic } = staff.transpose(fractionFromTicks(tick));
    const interval = { chromatic, diatonic };
    stated = { interval, transpose: () => interval };
  }
  return {
    pitch,
    tpc1,
    tpc2,
    tpc,
    line,
    tieForward: tieForward ? {} : null,
    tieBack: tieBack ? {} : null,
    spannerForward: spannerForward && listOf(spannerForward).map(({ type }: HostElement) => ({ type })),
    staff: stated,
    elements: fingeringsAt(root, note).map(({ type, text, visible }) => ({ type, text, visible })),
    color: BLACK,
  } as unknown as HostNote;
}
