/**
 * Bars made wider, so that their marks have room side by side: texts take none of their own, and those that meet climb over
 * one another. The marks of such a bar say how wide it was made, so that clearing takes it back and a width that
 * somebody else gave it stays.
 */
import { markSetting } from '../../core/index.ts';
import { type Host, type HostMeasure, isAtLeast } from './hostApi.ts';
import type { MarkRoom } from './markRoom.ts';
import type { MarkedPlace } from './ownMarks.ts';
import type { PlannedBar, PlannedPlace } from './plannedPlace.ts';
import type { PartWalk } from './scoreWalk.ts';
import type { UndoStep } from './undoStep.ts';

/** How much wider the bars of a part have to be, in fifths of their width, by measure index; 0 for not at all. */
export type WidthOf = (measureIndex: number) => number;

/** No bar needs to be wider. */
export const AS_THEY_ARE: WidthOf = () => 0;
const FIFTHS = 5;
const MOST = 5;

/** From one mark to the next, in staff spaces. The letters of version 4 are wider. */
const CLEAR_3 = 0.6;
const CLEAR_4 = 0.9;

/** What the marks of a part need. */
export function widthsFor(host: Host, room: MarkRoom): WidthOf {
  const clear = isAtLeast(host, 4, 0) ? CLEAR_4 : CLEAR_3;
  return (measureIndex) => {
    const all = room.neighboursIn(measureIndex);
    let fifths = 0;
    while (fifths < MOST && all.some((two) => room.between(two, timesAsWide(fifths)) < clear)) fifths += 1;
    return fifths;
  };
}

/** How many times as wide as the editor makes it a bar is. */
export function timesAsWide(fifths: number): number {
  return 1 + fifths / FIFTHS;
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
    const stretch = timesAsWide(claim);
    if (measure && isOurs(measure, claims) && !isNear(measure.userStretch!, stretch))
      bars.push({ measure, stretch });
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

function isOurs(measure: HostMeasure | null, claims: readonly number[]): boolean {
  const userStretch = measure?.userStretch;
  if (typeof userStretch !== 'number') return false;
  return isNear(userStretch, 1) || claims.some((claim) => isNear(userStretch, timesAsWide(claim)));
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
  return marks.map(({ text }) => markSetting(text).widens);
}
