/** A sheet of études as a MusicXML score. */
import {
  type Bar,
  type Etude,
  type EtudeNote,
  lineStarts,
  type Meter,
  pitchCents,
  type Sheet,
} from '../../core/index.ts';
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
  private clef: Clef | null = null;
  private before: EtudeNote | null = null;
  private number = 0;

  constructor(sheet: Sheet) {
    this.sheet = sheet;
  }

  measures(): XmlElement[] {
    const { etudes } = this.sheet;
    return ([] as XmlElement[]).concat(...etudes.map((etude, i) => this.exercise(etude, i)));
  }

  private exercise(etude: Etude, index: number): XmlElement[] {
    const { etudes } = this.sheet;
    const accidentals = new Accidentals(etude.key.fifths);
    const starts = lineStarts(etude.bars);
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
          ),
        );
      }
      accidentals.startBar();
      children.push(...this.notes(bar, accidentals));
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
      const accidental = note.written ? accidentals.at(note.written) : null;
      children.push(noteElement(note, this.before?.slides === true, groupings[j]!, accidental));
      children.push(...endsAt(note));
      this.before = note;
    });
    return children;
  }

  /** What changes at the beginning of a bar, or null. */
  private attributes({ key, transposition }: Etude, { meter, notes }: Bar): XmlElement | null {
    const isFirst = this.fifths === null;
    const clef = clefFor(notes, this.clef);
    const children = [
      isFirst ? element('divisions', {}, DIVISIONS) : null,
      key.fifths === this.fifths
        ? null
        : element('key', {}, element('fifths', {}, key.fifths), element('mode', {}, key.mode)),
      isSame(meter, this.meter)
        ? null
        : element('time', {}, element('beats', {}, meter.beats), element('beat-type', {}, meter.beatType)),
      clef === this.clef
        ? null
        : element('clef', {}, element('sign', {}, clef), element('line', {}, clef === 'G' ? 2 : 4)),
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
    this.clef = clef;
    return children.length > 0 ? element('attributes', {}, ...children) : null;
  }
}

type Clef = 'G' | 'F';

/** Written G3, below which notes want the bass clef, and G4, above which they want the treble clef again. */
const BASS_BELOW_CENTS = 5500;
const TREBLE_ABOVE_CENTS = 6700;

/** The bass clef, in new notation, for bars that lie below the treble staff; it stays until a bar leads above it. */
function clefFor(notes: readonly EtudeNote[], before: Clef | null): Clef {
  const cents = notes.filter(({ written }) => written !== null).map(({ written }) => pitchCents(written!));
  const [low, high] = [Math.min(...cents), Math.max(...cents)];
  if (high > TREBLE_ABOVE_CENTS) return 'G';
  return low < BASS_BELOW_CENTS ? 'F' : (before ?? 'G');
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
