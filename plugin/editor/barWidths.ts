/**
 * Bars made wider, so that their marks have room side by side: texts take none of their own, and those that meet climb over
 * one another. The marks of such a bar say how wide it was made, so that clearing takes it back and a width that
 * somebody else gave it stays.
 */
import { type Mark, markSetting } from '../../core/index.ts';
import { type Host, type HostMeasure, isAtLeast, listOf, TICKS_PER_QUARTER } from './hostApi.ts';
import { markWidth } from './markWidth.ts';
import { type MarkedPlace, plainText } from './ownMarks.ts';
import type { PlannedPlace } from './plannedPlace.ts';
import type { ReadPart } from './readPart.ts';
import type { ScoreChord } from './scoreWalk.ts';
import type { UndoStep } from './undoStep.ts';

/** How much wider the bars of a part have to be, in fifths of their width, by measure index; 0 for not at all. */
export type WidthOf = (measureIndex: number) => number;

/** No bar needs to be wider. */
export const AS_THEY_ARE: WidthOf = () => 0;
const FIFTHS = 5;
const MOST = 5;

/** From one mark to the next, in staff spaces. */
const CLEAR = 0.9;
const SMALL_SIZE = 0.7;

/** What these marks need. */
export function widthsFor(host: Host, part: ReadPart, marks: readonly Mark[]): WidthOf {
  const ticks = ticksByMeasure(part);
  const needs = new Map<number, number>();
  const last = new Map<
    string,
    { readonly tick: number; readonly measureIndex: number; readonly width: number }
  >();
  for (const { noteIndex, lines } of marks) {
    const { chord } = part.chordNotes[noteIndex]!;
    const width = markWidth(lines);
    if (width === 0 || chord.graceIndex !== null) continue;
    const { tick, track, measureIndex } = chord;
    const before = last.get(`${track}`);
    const isChord = before?.tick === tick;
    last.set(`${track}`, { tick, measureIndex, width: isChord ? Math.max(width, before.width) : width });
    if (!before || isChord || before.measureIndex !== measureIndex) continue;
    const room = roomBetween(host, ticks.get(measureIndex)!, before.tick, tick) * sizeOf(host, chord);
    const fifths = Math.ceil(FIFTHS * ((before.width + CLEAR) / room - 1));
    if (fifths > (needs.get(measureIndex) ?? 0)) needs.set(measureIndex, Math.min(MOST, fifths));
  }
  return (measureIndex) => needs.get(measureIndex) ?? 0;
}

/** The same, but for bars whose width somebody chose. */
export function widthsToGive(part: ReadPart, places: readonly MarkedPlace[], needed: WidthOf): WidthOf {
  const claims = new Map<number, number[]>();
  for (const { chords, marks } of places)
    for (const { element } of marks) {
      const { measureIndex } = chords[0]!;
      claims.set(measureIndex, (claims.get(measureIndex) ?? []).concat(claimIn(element.text)));
    }
  return (measureIndex) => {
    const { element } = part.walk.measures[measureIndex]!;
    return isOurs(element, claims.get(measureIndex) ?? []) ? needed(measureIndex) : 0;
  };
}

/** Carries `work` out, which changes marks, and then gives the bars of these places the width that their marks claim. */
export function keepingBarWidths(plans: readonly PlannedPlace[], step: UndoStep, work: () => void): void {
  const bars = new Map<number, HostMeasure>();
  for (const { place, texts, measure } of plans) {
    const claims = place.marks
      .map(({ element }) => claimIn(element.text))
      .concat(texts.map(({ text }) => claimIn(text)));
    if (claims.some((claim) => claim > 0)) bars.set(place.chords[0]!.measureIndex, measure);
  }
  const ours: HostMeasure[] = [];
  bars.forEach((measure) => {
    if (isOurs(measure, claimsIn(measure))) ours.push(measure);
  });
  work();
  for (const measure of ours) {
    const wanted = 1 + Math.max(0, ...claimsIn(measure)) / FIFTHS;
    if (isNear(measure.userStretch!, wanted)) continue;
    measure.userStretch = wanted;
    step.changes += 1;
  }
}

function isOurs({ userStretch }: HostMeasure, claims: readonly number[]): boolean {
  if (typeof userStretch !== 'number') return false;
  return isNear(userStretch, 1) || claims.some((claim) => isNear(userStretch, 1 + claim / FIFTHS));
}

function isNear(one: number, other: number): boolean {
  return Math.abs(one - other) < 0.01;
}

function claimsIn(measure: HostMeasure): readonly number[] {
  const claims: number[] = [];
  for (let segment = measure.firstSegment; segment; segment = segment.nextInMeasure)
    for (const annotation of listOf(segment.annotations)) {
      const { text } = annotation as { readonly text?: unknown };
      if (typeof text === 'string') claims.push(claimIn(text));
    }
  return claims;
}

function claimIn(text: string): number {
  return markSetting(plainText(text)).widens;
}

function ticksByMeasure({ walk: { chords, rests } }: ReadPart): ReadonlyMap<number, readonly number[]> {
  const ticks = new Map<number, number[]>();
  for (const { measureIndex, tick } of [...chords, ...rests]) {
    const here = ticks.get(measureIndex) ?? [];
    ticks.set(measureIndex, here);
    if (here.indexOf(tick) < 0) here.push(tick);
  }
  ticks.forEach((here) => {
    here.sort((a, b) => a - b);
  });
  return ticks;
}

/** Version 4 sets small notes closer. */
function sizeOf(host: Host, { element }: ScoreChord): number {
  return isAtLeast(host, 4, 0) && element.small === true ? SMALL_SIZE : 1;
}

/** The least room that the editor leaves from one place to another in a full system, in staff spaces: from pages of each version. */
function roomBetween(host: Host, ticks: readonly number[], from: number, to: number): number {
  let room = 0;
  for (let i = ticks.indexOf(from); ticks[i]! < to; i++) {
    const quarters = (ticks[i + 1]! - ticks[i]!) / TICKS_PER_QUARTER;
    // Version 3 gives the shortest note of a bar the same room, however long it is.
    room += isAtLeast(host, 4, 0) ? 3.6 * Math.sqrt(quarters) : 2.7;
  }
  return room;
}
