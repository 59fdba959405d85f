/**
 * Where the things of the score stand, and the way there. Every staff has four tracks, one for each voice; ticks are the
 * editor's, 480 to a quarter.
 */
import type { HostCursor, HostElement, HostScore } from './hostApi.ts';

/** Tracks to a staff. */
export const VOICES = 4;

/** The voice that a track is on its staff, from 1. */
export function voiceOf(track: number): number {
  return (track % VOICES) + 1;
}

/**
 * A note's chord, or a rest, sits in a segment that has the tick; a grace chord sits in its main chord.
 * @returns −1 for what has no place in time
 */
export function tickOf(element: HostElement | null | undefined): number {
  for (let holder = element; holder; holder = holder.parent) {
    const { tick } = holder as { tick?: number };
    if (typeof tick === 'number') return tick;
  }
  return -1;
}

/** A cursor at the first place of a track. */
export function cursorOn(score: HostScore, track: number): HostCursor {
  const cursor = score.newCursor();
  cursor.track = track;
  cursor.rewind(0);
  return cursor;
}

/** Moves on to the first place of the cursor's track at a tick or after it. */
export function moveTo(cursor: HostCursor, tick: number): void {
  while (cursor.segment && cursor.tick < tick) cursor.next();
}
