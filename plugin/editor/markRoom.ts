/** The room from mark to mark in each bar, before the editor has laid them out. */
import type { Mark } from '../../core/index.ts';
import { type Host, isAtLeast, TICKS_PER_QUARTER } from './hostApi.ts';
import { isValves, markLeft, markWidth } from './markWidth.ts';
import type { ReadPart } from './readPart.ts';
import type { ScoreChord, ScoreMeasure } from './scoreWalk.ts';

/** Two chords of a voice that have marks, next to one another in a bar. */
export interface Neighbours {
  readonly before: ScoreChord;
  readonly after: ScoreChord;
  /** True where both have nothing but valves, numbers that can be read as one. */
  readonly areValves: boolean;
  /** How far the one note is from the other where their marks touch, in staff spaces. */
  readonly touching: number;
}

/** What each place of a bar has in version 3 where all last as long, in staff spaces. */
const PLACE_3 = 2.4;
/** A note of twice the length has so much more of the shortest one's room. */
const DOUBLED_3 = 0.6;
/** What any note has in both versions, however short. */
const LEAST = 1.6;
/** What a quarter has in version 4. */
const QUARTER_4 = 3.6;
const SMALL_SIZE = 0.7;
/** A score of one system is stretched to the width of the page, unless it fills hardly any of it: on paper of the usual size. */
const SYSTEM = 70;
const LEAST_STRETCHED = 15;
const MOST_BARS_IN_SYSTEM = 8;

export class MarkRoom {
  private readonly host: Host;
  private readonly measures: readonly ScoreMeasure[];
  private readonly neighbours = new Map<number, Neighbours[]>();
  private stretch: number | null = null;
  private readonly places = new Map<number, readonly number[]>();

  constructor(host: Host, { walk, chordNotes }: ReadPart, marks: readonly Mark[]) {
    this.host = host;
    this.measures = walk.measures;
    const last = new Map<number, Marked>();
    const shapes = new Map<readonly string[], Shape>();
    for (const { noteIndex, lines } of marks) {
      const { chord } = chordNotes[noteIndex]!;
      const shape = shapes.get(lines) ?? shapeOf(lines);
      shapes.set(lines, shape);
      if (shape.right <= shape.left || chord.graceIndex !== null) continue;
      const before = last.get(chord.track);
      const isChord = before?.chord === chord;
      if (!isChord || shape.right > before.shape.right) last.set(chord.track, { chord, shape });
      if (before && !isChord) this.add(before, { chord, shape });
    }
  }

  /**
   * Bars in which the marks of three notes or more would climb over one another, by their indices: fewer are no staircase.
   * Valves alone have nothing shorter.
   */
  get narrowBars(): readonly number[] {
    const isNarrow = (all: readonly Neighbours[]) => {
      const climbing = all.filter((two) => !two.areValves && this.between(two, this.stretched) < 0);
      return climbing.some(({ after }) => climbing.some(({ before }) => before === after));
    };
    return Array.from(this.neighbours.entries())
      .filter(([, all]) => isNarrow(all))
      .map(([measureIndex]) => measureIndex);
  }

  /** How many times as wide as in a long score all bars are: 1, except where there is one system. */
  get stretched(): number {
    const { measures } = this;
    if (this.stretch === null) {
      const isShort = measures.length <= MOST_BARS_IN_SYSTEM;
      const room = isShort ? sum(measures.map((_, i) => sum(this.roomsIn(i, 1)))) : SYSTEM;
      this.stretch = room < LEAST_STRETCHED ? 1 : Math.max(1, SYSTEM / room);
    }
    return this.stretch;
  }

  /** In the order of the notes. */
  neighboursIn(measureIndex: number): readonly Neighbours[] {
    return this.neighbours.get(measureIndex) ?? [];
  }

  /**
   * Between the marks of two neighbours, in staff spaces: the least that the editor leaves in a full system.
   * @param widened how many times as wide as the editor makes it their bar is
   */
  between({ before, after, touching }: Neighbours, widened: number): number {
    const ticks = this.placesIn(before.measureIndex);
    const rooms = this.roomsIn(before.measureIndex, widened);
    const room = sum(rooms.slice(ticks.indexOf(before.tick), ticks.indexOf(after.tick)));
    const isSmaller = isAtLeast(this.host, 4, 0) && after.element.small === true;
    return room * (isSmaller ? SMALL_SIZE : 1) - touching;
  }

  private roomsIn(measureIndex: number, widened: number): readonly number[] {
    const ticks = this.placesIn(measureIndex);
    return isAtLeast(this.host, 4, 0) ? rooms4(ticks, widened) : rooms3(ticks, widened);
  }

  private placesIn(measureIndex: number): readonly number[] {
    const places = this.places.get(measureIndex) ?? placesIn(this.measures[measureIndex]!);
    this.places.set(measureIndex, places);
    return places;
  }

  private add(before: Marked, after: Marked): void {
    const { measureIndex } = after.chord;
    if (before.chord.measureIndex !== measureIndex) return;
    const here = this.neighbours.get(measureIndex) ?? [];
    this.neighbours.set(measureIndex, here);
    here.push({
      before: before.chord,
      after: after.chord,
      areValves: before.shape.isValves && after.shape.isValves,
      touching: before.shape.right - after.shape.left,
    });
  }
}

interface Marked {
  readonly chord: ScoreChord;
  readonly shape: Shape;
}

/** What a mark prints, from the left edge of its note, in staff spaces. */
interface Shape {
  readonly left: number;
  readonly right: number;
  readonly isValves: boolean;
}

function shapeOf(lines: readonly string[]): Shape {
  const left = markLeft(lines);
  return { left, right: left + markWidth(lines), isValves: isValves(lines) };
}

/** Where anything in a bar begins, in whatever part, and where the bar ends, in ticks. */
function placesIn({ element, endTick }: ScoreMeasure): readonly number[] {
  const ticks: number[] = [];
  for (let segment = element.firstSegment; segment; segment = segment.nextInMeasure) {
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

function sum(values: readonly number[]): number {
  return values.reduce((before, value) => before + value, 0);
}

function lengthsOf(ticks: readonly number[]): readonly number[] {
  return ticks.slice(1).map((tick, i) => tick - ticks[i]!);
}
