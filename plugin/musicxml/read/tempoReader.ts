/** Reads a part that is no horn: of such a part only its tempos matter, which hold for the horns too. */
import { SaxesParser } from 'saxes';
import { AttributesReader } from './attributesReader.ts';
import { Clock } from './clock.ts';
import { decimal, ticksOf } from './decimal.ts';
import { DirectionReader } from './directionReader.ts';
import type { NoteListener } from './noteFeed.ts';
import type { Attributes, ElementReader, Source } from './source.ts';
import type { TempoMarks } from './tempoMarks.ts';

/**
 * Passes over notes. Where a tempo stands inside a measure, the stretch of the text before it is read for the time it
 * takes, and only then: most measures state no tempo.
 */
export class TempoReader implements NoteListener {
  private readonly source: Source;
  private readonly tempos: TempoMarks;
  private readonly clock = new Clock();
  private readonly direction: DirectionReader;
  private readonly attributes: AttributesReader;
  private child: ElementReader | null = null;
  /** Where the clock stands in the text. */
  private readTo = 0;

  constructor(source: Source, tempos: TempoMarks) {
    this.source = source;
    this.tempos = tempos;
    this.direction = new DirectionReader(source);
    this.attributes = new AttributesReader(this.clock);
  }

  startMeasure(index: number, number: string): void {
    this.clock.startMeasure(index, number);
    this.readTo = this.source.offset();
  }

  openChild(name: string, attributes: Attributes): ElementReader | null {
    this.child = null;
    if (name === 'direction') {
      this.direction.begin();
      this.child = this.direction;
    } else if (name === 'attributes') {
      this.moveClock(this.source.tagStart());
      this.child = this.attributes;
    } else if (name === 'sound' && attributes.tempo !== undefined) {
      this.moveClock(this.source.tagStart());
      this.tempos.add(this.clock, 0, decimal(attributes.tempo) ?? 0);
    }
    return this.child;
  }

  closeChild(): void {
    if (this.child !== this.direction) return;
    const { clock, direction } = this;
    direction.finish();
    if (direction.quartersPerMinute === null) return;
    this.moveClock(direction.start);
    this.tempos.add(clock, clock.quarters(direction.offsetTicks), direction.quartersPerMinute);
  }

  endMeasure(): void {}

  repeat(): boolean {
    return true;
  }

  heard(): null {
    return null;
  }

  /** Lets the clock take the time of what stands in the text up to here. */
  private moveClock(to: number): void {
    const { clock, source } = this;
    const stretch = source.text.slice(this.readTo, to);
    this.readTo = to;
    if (stretch.indexOf('duration') < 0) return;
    let depth = 0;
    let ticks = 0;
    let isAtOnce = false;
    let text = '';
    const parser = new SaxesParser({ fragment: true });
    // Faults were found by the parser of the whole document.
    parser.on('error', () => {});
    parser.on('opentag', ({ name }) => {
      depth += 1;
      text = '';
      const local = source.localName(name);
      if (depth === 1) [ticks, isAtOnce] = [0, false];
      else if (local === 'chord' || local === 'grace') isAtOnce = true;
    });
    parser.on('text', (piece) => {
      text += piece;
    });
    parser.on('closetag', ({ name }) => {
      const local = source.localName(name);
      if (depth === 2 && local === 'duration') ticks = ticksOf(text);
      else if (depth === 1 && local === 'backup') clock.move(-ticks);
      else if (depth === 1 && (local === 'forward' || (local === 'note' && !isAtOnce))) clock.move(ticks);
      depth -= 1;
    });
    parser.write(stretch).close();
  }
}
