/**
 * Bars as the host writes them: only those that hold a line or a sign are parsed, each once for as long as it stays the
 * same.
 */
import { SaxesParser } from 'saxes';
import type { HostInterval } from './hostApi.ts';

/** A part as the host writes it. */
export interface PartText {
  /** What its instrument adds from written to sounding pitch; `null` where it says nothing. */
  readonly interval: HostInterval | null;
  /** The bars, staff by staff. */
  readonly staves: readonly (readonly string[])[];
}

/** Something that stands at, or before, a chord of a bar. */
export interface BarEvent {
  readonly kind: 'sign' | 'Slur' | 'Tie' | 'Glissando' | 'Ottava' | 'TextLine';
  readonly voice: number;
  /** Place among the chords and graces of its voice in the bar. */
  readonly chord: number;
  /** Place in the chord as it is written, from the bottom; −1 for what belongs to no note. */
  readonly note: number;
  /** Of a line: whether this is its beginning. */
  readonly isStart: boolean;
  /** Of a sign its glyph, of an octave line its name, of a line of text its words. */
  readonly text: string;
  /** Of a line: how far its other end is, in bars and quarters. */
  readonly bars: number;
  readonly quarters: number;
}

/** Parses bars, and keeps what it found for bars that come again. */
export class BarReader {
  private known = new Map<string, readonly BarEvent[]>();

  eventsIn(bar: string): readonly BarEvent[] {
    if (bar.indexOf('<Spanner') < 0 && bar.indexOf('brassMute') < 0) return [];
    let events = this.known.get(bar);
    if (!events) {
      events = parsed(bar);
      this.known.set(bar, events);
    }
    return events;
  }

  /** Parses bars of a part until there is no more time. @returns false when some are left */
  prepare({ staves }: PartText, until: number): boolean {
    for (const bars of staves)
      for (const bar of bars) {
        if (Date.now() > until) return false;
        this.eventsIn(bar);
      }
    return true;
  }

  /** Forgets all but the bars of these parts. */
  keepOnly(parts: readonly PartText[]): void {
    const kept = new Map<string, readonly BarEvent[]>();
    for (const { staves } of parts)
      for (const bars of staves)
        for (const bar of bars) {
          const events = this.known.get(bar);
          if (events) kept.set(bar, events);
        }
    this.known = kept;
  }
}

/** Lines whose ends matter. */
const LINES: readonly string[] = ['Slur', 'Tie', 'Glissando', 'Ottava', 'TextLine'];

function parsed(bar: string): readonly BarEvent[] {
  const events: BarEvent[] = [];
  const path: string[] = [];
  const at = { voice: -1, chord: -1, note: -1 };
  let line: { kind: string; text: string; bars: number; quarters: number } | null = null;
  let text = '';
  const parser = new SaxesParser();
  parser.on('opentag', ({ name, attributes }) => {
    path.push(name);
    text = '';
    if (name === 'voice') {
      at.voice += 1;
      at.chord = -1;
    } else if (name === 'Chord') {
      at.chord += 1;
      at.note = -1;
    } else if (name === 'Note') at.note += 1;
    else if (name === 'Spanner')
      line = { kind: String((attributes as { type?: string }).type), text: '', bars: 0, quarters: 0 };
  });
  parser.on('text', (part) => {
    text += part;
  });
  parser.on('closetag', ({ name }) => {
    path.pop();
    const holder = path[path.length - 1];
    const isInNote = path.indexOf('Note') >= 0;
    const note = isInNote ? at.note : -1;
    // What stands outside a chord belongs to the next one.
    const chord = path.indexOf('Chord') >= 0 ? at.chord : at.chord + 1;
    if (name === 'subtype' && holder === 'Articulation')
      events.push({ kind: 'sign', voice: at.voice, chord, note, isStart: true, text, bars: 0, quarters: 0 });
    else if (line && ((name === 'subtype' && holder === 'Ottava') || name === 'beginText')) line.text = text;
    else if (line && name === 'measures') line.bars = Number(text);
    else if (line && name === 'fractions') line.quarters = quartersIn(text);
    else if (line && (name === 'next' || name === 'prev') && LINES.indexOf(line.kind) >= 0) {
      const kind = line.kind as BarEvent['kind'];
      const { bars, quarters } = line;
      events.push({
        kind,
        voice: at.voice,
        chord,
        note,
        isStart: name === 'next',
        text: line.text,
        bars,
        quarters,
      });
    } else if (name === 'Spanner') line = null;
  });
  parser.write(`<Measure${bar}`).close();
  return events;
}

/** A length as the host writes it: a fraction of a whole note. */
function quartersIn(fraction: string): number {
  const [numerator, denominator] = fraction.split('/').map(Number);
  return (4 * (numerator ?? 0)) / (denominator ?? 1);
}
