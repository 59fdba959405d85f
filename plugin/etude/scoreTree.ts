/** A sheet of études as a MusicXML score. */
import {
  type Bar,
  type Etude,
  type EtudeNote,
  type Meter,
  pitchCents,
  type Sheet,
  sheetLines,
} from '../../core/index.ts';
import { pageFor } from './pageLayout.ts';
import { endsAt, startsAt, tempoMark, timesMark } from './scoreDirections.ts';
import { scoreHead } from './scoreHead.ts';
import { Accidentals, DIVISIONS, groupingsOf, noteElement } from './scoreNote.ts';
import { element, type XmlElement } from './xmlTree.ts';

/**
 * The score of a sheet, before its fingerings are written in.
 * @source musicxml40
 */
export function sheetScore(sheet: Sheet): XmlElement {
  const writer = new PartWriter(sheet);
  return element(
    'score-partwise',
    { version: '4.0' },
    ...scoreHead(sheet),
    element('part', { id: 'P1' }, ...writer.measures()),
  );
}

/** Writes measure after measure, and remembers what the page says already. */
class PartWriter {
  private readonly sheet: Sheet;
  private fifths: number | null = null;
  private meter: Meter | null = null;
  private before: EtudeNote | null = null;
  private number = 0;
  /** The clef of each measure. */
  private readonly clefs: readonly Clef[];

  constructor(sheet: Sheet) {
    this.sheet = sheet;
    this.clefs = clefsOf(([] as Bar[]).concat(...sheet.etudes.map(({ bars }) => bars)));
  }

  measures(): XmlElement[] {
    const { etudes } = this.sheet;
    return ([] as XmlElement[]).concat(...etudes.map((etude, i) => this.exercise(etude, i)));
  }

  private exercise(etude: Etude, index: number): XmlElement[] {
    const { etudes } = this.sheet;
    const accidentals = new Accidentals(etude.key.fifths);
    const starts = sheetLines(etudes)[index]!;
    return etude.bars.map((bar, i) => {
      const children: XmlElement[] = [];
      if (starts[i] && this.number > 0) children.push(element('print', { 'new-system': 'yes' }));
      if (bar.repeatStarts) children.push(repeatSign('left', 0));
      const attributes = this.attributes(etude, bar);
      if (attributes) children.push(attributes);
      if (i === 0) {
        children.push(
          tempoMark(
            etudes.length > 1 ? index + 1 : null,
            this.sheet.trains[index]!,
            etude.tempoWords,
            bar.meter,
            etude.tempo,
            pageFor(this.sheet).staffMillimetres,
          ),
        );
      }
      accidentals.startBar();
      children.push(...this.notes(bar, accidentals));
      // A new clef stands at the end of the bar before: set after a bar line, some editors print both at a line's beginning.
      const clef = this.clefs[this.number]!;
      const next = this.clefs[this.number + 1] ?? clef;
      if (next !== clef) children.push(element('attributes', {}, clefElement(next)));
      if (bar.times > 0) children.push(repeatSign('right', bar.times));
      else if (i === etude.bars.length - 1)
        children.push(element('barline', { location: 'right' }, element('bar-style', {}, 'light-heavy')));
      this.number += 1;
      return element('measure', { number: this.number }, ...children);
    });
  }

  private notes(bar: Bar, accidentals: Accidentals): XmlElement[] {
    const children: XmlElement[] = [];
    const groupings = groupingsOf(bar.notes, bar.meter);
    bar.notes.forEach((note, j) => {
      if (bar.times > 0 && j === bar.notes.length - 1) children.push(timesMark(`${bar.times}×`));
      children.push(...startsAt(note));
      const accidental = note.written ? accidentals.at(note.written, this.before?.ties) : null;
      children.push(noteElement(note, this.before, groupings[j]!, accidental));
      children.push(...endsAt(note));
      this.before = note;
    });
    return children;
  }

  /** What changes at the beginning of a bar, or null. */
  private attributes({ key, transposition }: Etude, { meter }: Bar): XmlElement | null {
    const isFirst = this.fifths === null;
    const children = [
      isFirst ? element('divisions', {}, DIVISIONS) : null,
      key.fifths === this.fifths
        ? null
        : element('key', {}, element('fifths', {}, key.fifths), element('mode', {}, key.mode)),
      isSame(meter, this.meter)
        ? null
        : element('time', {}, element('beats', {}, meter.beats), element('beat-type', {}, meter.beatType)),
      isFirst ? clefElement(this.clefs[0]!) : null,
      isFirst
        ? element(
            'transpose',
            {},
            element('diatonic', {}, transposition.diatonic),
            element('chromatic', {}, transposition.chromatic),
            transposition.octaveChange === 0
              ? null
              : element('octave-change', {}, transposition.octaveChange),
          )
        : null,
    ].filter((child) => child !== null);
    this.fifths = key.fifths;
    this.meter = meter;
    return children.length > 0 ? element('attributes', {}, ...children) : null;
  }
}

type Clef = 'G' | 'F';

/** Written G3, below which notes want the bass clef, and C4, from which on they want the treble clef again. */
const BASS_BELOW_CENTS = 5500;
const TREBLE_FROM_CENTS = 6000;
/** Written A4: above it even a bar with low notes keeps the treble clef. */
const BASS_UP_TO_CENTS = 6900;

/** The bass clef, in new notation, for bars that lie below the treble staff; it stays until a bar lies on that again. */
function clefFor(notes: readonly EtudeNote[], before: Clef | null): Clef {
  const cents = notes.filter(({ written }) => written !== null).map(({ written }) => pitchCents(written!));
  const [low, high] = [Math.min(...cents), Math.max(...cents)];
  if (low >= TREBLE_FROM_CENTS || high > BASS_UP_TO_CENTS) return 'G';
  return low < BASS_BELOW_CENTS ? 'F' : (before ?? 'G');
}

function clefsOf(bars: readonly Bar[]): readonly Clef[] {
  let clef: Clef | null = null;
  return bars.map(({ notes }) => {
    clef = clefFor(notes, clef);
    return clef;
  });
}

function clefElement(clef: Clef): XmlElement {
  return element('clef', {}, element('sign', {}, clef), element('line', {}, clef === 'G' ? 2 : 4));
}

function isSame(a: Meter, b: Meter | null): boolean {
  return b !== null && a.beats === b.beats && a.beatType === b.beatType;
}

function repeatSign(location: 'left' | 'right', times: number): XmlElement {
  return element(
    'barline',
    { location },
    element('bar-style', {}, location === 'left' ? 'heavy-light' : 'light-heavy'),
    location === 'left'
      ? element('repeat', { direction: 'forward' })
      : element('repeat', { direction: 'backward', times }),
  );
}
