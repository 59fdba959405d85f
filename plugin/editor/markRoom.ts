/** The room from mark to mark in each bar, before the editor has laid them out. */
import type { Mark } from '../../core/index.ts';
import { type BarRooms, sum } from './barRooms.ts';
import { type Host, isAtLeast } from './hostApi.ts';
import { isValves, markLeft, markWidth } from './markWidth.ts';
import type { ReadPart } from './readPart.ts';
import type { ScoreChord, ScoreMeasure } from './scoreBar.ts';

/** Two chords of a voice that have marks, next to one another in a bar. */
export interface Neighbours {
  readonly before: ScoreChord;
  readonly after: ScoreChord;
  /** True where both have nothing but valves, numbers that can be read as one. */
  readonly areValves: boolean;
  /** How far the one note is from the other where their marks touch, in staff spaces. */
  readonly touching: number;
}

const SMALL_SIZE = 0.7;
/** A score of one system is stretched to the width of the page, unless it fills hardly any of it: on paper of the usual size. */
const SYSTEM = 70;
const LEAST_STRETCHED = 15;
const MOST_BARS_IN_SYSTEM = 8;

export class MarkRoom {
  private readonly host: Host;
  private readonly rooms: BarRooms;
  private readonly measures: readonly ScoreMeasure[];
  private readonly neighbours = new Map<number, Neighbours[]>();
  private stretch: number | null = null;

  constructor(host: Host, rooms: BarRooms, { walk, chordNotes }: ReadPart, marks: readonly Mark[]) {
    this.host = host;
    this.rooms = rooms;
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
      const room = isShort ? sum(measures.map((measure) => this.rooms.all(measure))) : SYSTEM;
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
    const room = this.rooms.between(this.measures[before.measureIndex]!, widened, before.tick, after.tick);
    const isSmaller = isAtLeast(this.host, 4, 0) && after.isSmall;
    return room * (isSmaller ? SMALL_SIZE : 1) - touching;
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
