/** Looks at the bars of the horn parts in small strides, the ones at the writer's place first, and keeps what it saw. */
import { type BarCopy, copyBar, isSameCopy } from './barCopy.ts';
import { hornParts } from './hornParts.ts';
import type { Host, HostElement, HostMeasure, HostPart, HostScore } from './hostApi.ts';
import type { PartWalk } from './scoreWalk.ts';

/** How many bars from the selection on are looked at every time. */
const BARS_AT_WORK = 3;
/** So many bars are looked at in a stride, however slow the machine is. */
const LEAST_BARS = 4;

/** What a stride saw. */
export interface Stride {
  /** Indices of the parts in which something is new. */
  readonly changed: ReadonlySet<number>;
  /** True when the score has other bars or parts than before, so that all is read anew. */
  readonly isOther: boolean;
}

/** The bars of one score. */
export class BarWatch {
  private readonly host: Host;
  private bars: BarCopy[] = [];
  private parts: readonly HostPart[] = [];
  private shape = '';
  private next = 0;
  /** True once every bar was read. */
  isWhole = false;

  constructor(host: Host) {
    this.host = host;
  }

  /** The parts as plain data, in the order of the score. */
  get hornParts(): readonly HostPart[] {
    return this.parts;
  }

  /** The bars as they were last seen. */
  get copies(): readonly BarCopy[] {
    return this.bars;
  }

  get barCount(): number {
    return this.bars.length;
  }

  /** How much of the score was read, 0 to 1. */
  get share(): number {
    return this.isWhole ? 1 : this.next / Math.max(1, this.bars.length + 1);
  }

  /**
   * Reads for as long as it may, at most once round the score.
   * @param milliseconds at least a few bars are read; 0 for the bars at the selection alone, once all were read
   * @param places where somebody wrote since the last stride, in ticks
   */
  stride(score: HostScore, milliseconds: number, places: readonly number[] = []): Stride {
    const until = Date.now() + milliseconds;
    const changed = new Set<number>();
    const isOther = this.takeShape(score);
    if (this.parts.length === 0) {
      this.isWhole = true;
      return { changed, isOther };
    }
    if (this.isWhole) {
      this.lookAtSelection(score, changed);
      this.lookAtPlaces(score, places, changed);
      if (milliseconds === 0) return { changed, isOther };
    }
    let measure = measureAt(score, this.next);
    for (let bars = 0; bars < score.nmeasures; bars++) {
      if (!measure) {
        this.isWhole = true;
        this.next = 0;
        if (bars === 0) measure = score.firstMeasure;
        else break;
      }
      if (!measure) break;
      this.lookAt(measure, this.next, changed);
      this.next += 1;
      measure = measure.nextMeasure;
      if (bars >= LEAST_BARS && Date.now() >= until) break;
    }
    if (!measure) {
      this.isWhole = true;
      this.next = 0;
    }
    return { changed, isOther };
  }

  /** Reads everything anew from here on. */
  forget(): void {
    this.shape = '';
  }

  /** A part as it was last seen. */
  walkOf(index: number): PartWalk {
    const { bars } = this;
    return {
      part: this.parts[index]!,
      measures: bars.map(({ measure }) => measure),
      bars: bars.map(({ parts }) => parts[index]!),
    };
  }

  private takeShape(score: HostScore): boolean {
    const { shape, parts } = shapeOf(score);
    if (shape === this.shape) return false;
    this.shape = shape;
    this.parts = parts;
    this.bars = [];
    this.next = 0;
    this.isWhole = false;
    return true;
  }

  private lookAt(measure: HostMeasure, index: number, changed: Set<number>): void {
    const bar = copyBar(this.host.root, measure, index, this.parts);
    const before = this.bars[index];
    this.bars[index] = bar;
    bar.parts.forEach((_, part) => {
      if (!before || !isSameCopy(before, bar, part)) changed.add(part);
    });
  }

  private lookAtSelection(score: HostScore, changed: Set<number>): void {
    const elements = score.selection?.elements;
    let measure = elements && elements.length > 0 ? measureOf(this.host, elements[0]!) : null;
    if (!measure?.firstSegment) return;
    const { tick } = measure.firstSegment;
    let index = this.bars.findIndex((bar) => bar.measure.tick === tick);
    for (let bars = 0; index >= 0 && measure && bars < BARS_AT_WORK; bars++, index++) {
      this.lookAt(measure, index, changed);
      measure = measure.nextMeasure;
    }
  }

  private lookAtPlaces(score: HostScore, places: readonly number[], changed: Set<number>): void {
    const wanted = new Set<number>();
    // The last one is where the selection is.
    for (const tick of places.slice(0, -1)) {
      const first = this.bars.findIndex(({ measure }) => tick >= measure.tick && tick < measure.endTick);
      for (let bar = 0; first >= 0 && bar < BARS_AT_WORK; bar++) wanted.add(first + bar);
    }
    if (wanted.size === 0) return;
    const indexes = Array.from(wanted);
    const last = Math.max(...indexes);
    let index = Math.min(...indexes);
    for (let measure = measureAt(score, index); measure && index <= last; index++) {
      if (wanted.has(index)) this.lookAt(measure, index, changed);
      measure = measure.nextMeasure;
    }
  }
}

/** The horn parts, copied, and a text that is the same as long as the score has the same bars and horns. */
function shapeOf(score: HostScore): { readonly shape: string; readonly parts: readonly HostPart[] } {
  const parts = hornParts(score).map(
    ({ startTrack, endTrack, instrumentId, midiProgram, partName, longName }): HostPart => ({
      startTrack,
      endTrack,
      instrumentId,
      midiProgram,
      partName,
      longName,
    }),
  );
  return { shape: JSON.stringify([score.nmeasures, parts]), parts };
}

/** A measure by its place in the score, from 0. */
function measureAt(score: HostScore, index: number): HostMeasure | null {
  let measure = score.firstMeasure;
  for (let i = 0; measure && i < index; i++) measure = measure.nextMeasure;
  return measure;
}

/** The measure that an element stands in. */
function measureOf({ root }: Host, element: HostElement): HostMeasure | null {
  for (let holder: HostElement | null = element; holder; holder = holder.parent)
    if (holder.type === root.Element.MEASURE) return holder as HostMeasure;
  return null;
}
