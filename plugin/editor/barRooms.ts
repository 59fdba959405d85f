/** The room that each place of a bar has, before the editor has laid it out: the least, in a full system, in staff spaces. */
import { type Host, isAtLeast, TICKS_PER_QUARTER } from './hostApi.ts';
import type { ScoreMeasure } from './scoreBar.ts';

/** What each place of a bar has in version 3 where all last as long, in staff spaces. */
const PLACE_3 = 2.4;
/** A note of twice the length has so much more of the shortest one's room. */
const DOUBLED_3 = 0.6;
/** What any note has in both versions, however short. */
const LEAST = 1.6;
/** What a quarter has in version 4. */
const QUARTER_4 = 3.6;

/** A bar's room is the same for all parts of a score, so that it is reckoned once. */
export class BarRooms {
  private readonly is4: boolean;
  private readonly known = new WeakMap<ScoreMeasure, BarRoom>();

  constructor(host: Host) {
    this.is4 = isAtLeast(host, 4, 0);
  }

  /**
   * From one place of a bar to another.
   * @param widened how many times as wide as the editor makes it the bar is
   */
  between(measure: ScoreMeasure, widened: number, fromTick: number, toTick: number): number {
    const { ticks, rooms } = this.roomsIn(measure, widened);
    return sum(rooms.slice(ticks.indexOf(fromTick), ticks.indexOf(toTick)));
  }

  /** All of a bar as wide as the editor makes it. */
  all(measure: ScoreMeasure): number {
    return sum(this.roomsIn(measure, 1).rooms);
  }

  private roomsIn(measure: ScoreMeasure, widened: number): BarRoom {
    const known = this.known.get(measure);
    if (known?.widened === widened) return known;
    const ticks = known?.ticks ?? placesIn(measure);
    const rooms = this.is4 ? rooms4(ticks, widened) : rooms3(ticks, widened);
    const room = { ticks, widened, rooms };
    this.known.set(measure, room);
    return room;
  }
}

interface BarRoom {
  readonly ticks: readonly number[];
  readonly widened: number;
  /** From each place to the next. */
  readonly rooms: readonly number[];
}

/** Where anything in a bar begins, in whatever part, and where the bar ends, in ticks. */
function placesIn({ element, endTick }: ScoreMeasure): readonly number[] {
  const ticks: number[] = [];
  for (let segment = element?.firstSegment; segment; segment = segment.nextInMeasure) {
    const { tick } = segment;
    if (tick < endTick && tick !== ticks[ticks.length - 1]) ticks.push(tick);
  }
  return ticks.concat(endTick);
}

/** Version 4 gives a note by its length, whatever else is in the bar. */
function rooms4(ticks: readonly number[], widened: number): readonly number[] {
  return lengthsOf(ticks).map(
    (length) => widened * Math.max(LEAST, QUARTER_4 * Math.sqrt(length / TICKS_PER_QUARTER)),
  );
}

/** Version 3 gives a bar by the number of its places, and shares that out by their lengths, though none gets less than the least. */
function rooms3(ticks: readonly number[], widened: number): readonly number[] {
  const lengths = lengthsOf(ticks);
  const shortest = Math.min(...lengths);
  const shares = lengths.map((length) => 1 + DOUBLED_3 * Math.log2(length / shortest));
  let room = PLACE_3 * widened * lengths.length;
  let all = sum(shares);
  for (const share of shares.slice().sort((a, b) => a - b)) {
    if ((share * room) / all >= LEAST) break;
    room -= LEAST;
    all -= share;
  }
  return shares.map((share) => Math.max(LEAST, (share * room) / all));
}

export function sum(values: readonly number[]): number {
  return values.reduce((before, value) => before + value, 0);
}

function lengthsOf(ticks: readonly number[]): readonly number[] {
  return ticks.slice(1).map((tick, i) => tick - ticks[i]!);
}
