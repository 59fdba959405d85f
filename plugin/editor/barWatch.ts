/** Looks at the bars of the horn parts in small strides, the ones at the writer's place first, and keeps what it saw. */
import { type BarCopy, copyBar } from './barCopy.ts';
import { hornParts } from './hornParts.ts';
import type { Host, HostElement, HostMeasure, HostPart, HostScore } from './hostApi.ts';
import type { PartWalk, ScoreChord, ScoreRest, ScoreText } from './scoreWalk.ts';

/** How many bars from the selection on are looked at every time. */
const BARS_AT_WORK = 3;

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

  /** How much of the score was read, 0 to 1. */
  get share(): number {
    return this.isWhole ? 1 : this.next / Math.max(1, this.bars.length + 1);
  }

  /**
   * Reads for as long as it may, at most once round the score.
   * @param milliseconds at least one bar is read; 0 for the bars at the selection alone, once all were read
   */
  stride(score: HostScore, milliseconds: number): Stride {
    const until = Date.now() + milliseconds;
    const changed = new Set<number>();
    const isOther = this.takeShape(score);
    if (this.parts.length === 0) {
      this.isWhole = true;
      return { changed, isOther };
    }
    if (this.isWhole) {
      this.lookAtSelection(score, changed);
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
      if (Date.now() >= until) break;
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

  /** A part as it was last seen, with copies in the places of the host's objects. */
  walkOf(index: number): PartWalk {
    const { bars } = this;
    const here = bars.map(({ parts }) => parts[index]!);
    return {
      part: this.parts[index]!,
      measures: bars.map(({ measure }) => measure),
      chords: ([] as ScoreChord[]).concat(...here.map(({ chords }) => chords as ScoreChord[])),
      rests: ([] as ScoreRest[]).concat(...here.map(({ rests }) => rests as ScoreRest[])),
      texts: ([] as ScoreText[]).concat(...here.map(({ texts }) => texts as ScoreText[])),
    };
  }

  private takeShape(score: HostScore): boolean {
    const parts = hornParts(score);
    const copies = parts.map(
      ({ startTrack, endTrack, instrumentId, midiProgram, partName, longName }): HostPart => ({
        startTrack,
        endTrack,
        instrumentId,
        midiProgram,
        partName,
        longName,
      }),
    );
    const shape = JSON.stringify([score.nmeasures, copies]);
    if (shape === this.shape) return false;
    this.shape = shape;
    this.parts = copies;
    this.bars = [];
    this.next = 0;
    this.isWhole = false;
    return true;
  }

  private lookAt(measure: HostMeasure, index: number, changed: Set<number>): void {
    const bar = copyBar(this.host.root, measure, index, this.parts);
    const before = this.bars[index];
    this.bars[index] = bar;
    bar.texts.forEach((text, part) => {
      if (before?.texts[part] !== text) changed.add(part);
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
}

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
