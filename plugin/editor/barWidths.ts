/**
 * Bars made wider, so that their marks have room side by side: texts take none of their own, and those that meet climb over
 * one another. The marks of such a bar say how wide it was made, so that clearing takes it back and a width that
 * somebody else gave it stays.
 */
import { type Mark, markSetting } from '../../core/index.ts';
import { type Host, type HostMeasure, isAtLeast, TICKS_PER_QUARTER } from './hostApi.ts';
import { markWidth } from './markWidth.ts';
import { type MarkedPlace, plainText } from './ownMarks.ts';
import type { PlannedBar, PlannedPlace } from './plannedPlace.ts';
import type { ReadPart } from './readPart.ts';
import type { PartWalk, ScoreChord } from './scoreWalk.ts';
import type { UndoStep } from './undoStep.ts';

/** How much wider the bars of a part have to be, in fifths of their width, by measure index; 0 for not at all. */
export type WidthOf = (measureIndex: number) => number;

/** No bar needs to be wider. */
export const AS_THEY_ARE: WidthOf = () => 0;
const FIFTHS = 5;
const MOST = 5;

/** From one mark to the next, in staff spaces. */
const CLEAR = 0.9;
const ROOM_3 = 2.7;
const ROOM_AT_REST_3 = 1.45;
const SMALL_SIZE = 0.7;

/** What these marks need. */
export function widthsFor(host: Host, part: ReadPart, marks: readonly Mark[]): WidthOf {
  const ticks = ticksByMeasure(part);
  const sounding = new Set(part.walk.chords.map(({ tick }) => tick));
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
    const here = ticks.get(measureIndex)!;
    const room = roomBetween(host, here, before.tick, tick, sounding) * sizeOf(host, chord);
    const fifths = Math.ceil(FIFTHS * ((before.width + CLEAR) / room - 1));
    if (fifths > (needs.get(measureIndex) ?? 0)) needs.set(measureIndex, Math.min(MOST, fifths));
  }
  return (measureIndex) => needs.get(measureIndex) ?? 0;
}

/** The same, but for bars whose width somebody chose. */
export function widthsToGive(walk: PartWalk, places: readonly MarkedPlace[], needed: WidthOf): WidthOf {
  if (needed === AS_THEY_ARE) return needed;
  const claims = claimsByMeasure(places);
  const known = new Map<number, number>();
  return (measureIndex) => {
    let width = known.get(measureIndex);
    if (width === undefined) {
      width = needed(measureIndex);
      if (width > 0 && !isOurs(walk.measures[measureIndex]!.element, claims.get(measureIndex) ?? []))
        width = 0;
      known.set(measureIndex, width);
    }
    return width;
  };
}

/** The bars that do not have the width that their marks claim once these plans are carried out, and that width. */
export function barsToSet(
  walk: PartWalk,
  places: readonly MarkedPlace[],
  plans: readonly PlannedPlace[],
): readonly PlannedBar[] {
  const planned = new Map(plans.map((plan) => [plan.place, plan]));
  const before = claimsByMeasure(places);
  const after = new Map<number, number>();
  for (const place of places) {
    const plan = planned.get(place);
    const claims = plan ? plan.texts.map(({ text }) => markSetting(text).widens) : claimsOf(place);
    const { measureIndex } = place.chords[0]!;
    after.set(measureIndex, Math.max(after.get(measureIndex) ?? 0, ...claims));
  }
  const bars: PlannedBar[] = [];
  after.forEach((claim, measureIndex) => {
    const claims = before.get(measureIndex) ?? [];
    if (claim === 0 && claims.length === 0) return;
    const measure = walk.measures[measureIndex]!.element;
    const stretch = 1 + claim / FIFTHS;
    if (isOurs(measure, claims) && !isNear(measure.userStretch!, stretch)) bars.push({ measure, stretch });
  });
  return bars;
}

/** Carries out what is planned for bars. To be called inside a step of the undo history. */
export function setBars(bars: readonly PlannedBar[], step: UndoStep): void {
  for (const { measure, stretch } of bars) {
    measure.userStretch = stretch;
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

/** The widths, other than none, that the marks of each measure claim. */
function claimsByMeasure(places: readonly MarkedPlace[]): ReadonlyMap<number, readonly number[]> {
  const claims = new Map<number, readonly number[]>();
  for (const place of places) {
    const here = claimsOf(place).filter((claim) => claim > 0);
    const { measureIndex } = place.chords[0]!;
    if (here.length > 0) claims.set(measureIndex, (claims.get(measureIndex) ?? []).concat(here));
  }
  return claims;
}

function claimsOf({ marks }: MarkedPlace): readonly number[] {
  return marks.map(({ element }) => markSetting(plainText(element.text)).widens);
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
function roomBetween(
  host: Host,
  ticks: readonly number[],
  from: number,
  to: number,
  sounding: ReadonlySet<number>,
): number {
  const places = ticks.slice(ticks.indexOf(from), ticks.indexOf(to));
  // Version 3 gives the shortest note of a bar the same room, however long it is, and little where there are rests.
  if (!isAtLeast(host, 4, 0))
    return places.length * (places.every((tick) => sounding.has(tick)) ? ROOM_3 : ROOM_AT_REST_3);
  return places.reduce((room, tick, i) => {
    const quarters = ((places[i + 1] ?? to) - tick) / TICKS_PER_QUARTER;
    return room + 3.6 * Math.sqrt(quarters);
  }, 0);
}
