/** An étude as the text of a MusicXML score, before its fingerings are written in. */
import { DOMImplementation, type Document, type Element, XMLSerializer } from '@xmldom/xmldom';
import type { Etude, EtudeNote } from '../../core/etude/etude.ts';
import { type ElementMaker, elementMaker } from './scoreElements.ts';
import { Accidentals, DIVISIONS, groupingsOf, noteElement } from './scoreNote.ts';

/** Bars on one line of the page: a phrase, or half of one where bars are too full for their fingerings. */
function barsALine(bars: Etude['bars']): number {
  return bars.some((bar) => bar.length > 6) ? 2 : 4;
}

/**
 * The score of an étude.
 * @source musicxml40
 */
export function etudeScoreText(etude: Etude): string {
  const document = new DOMImplementation().createDocument(null, 'score-partwise', null);
  const make = elementMaker(document);
  const score = document.documentElement!;
  score.setAttribute('version', '4.0');
  for (const child of [...head(make, etude), part(make, etude)]) score.appendChild(child);
  indent(document, score, '\n');
  return `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(document)}\n`;
}

function head(make: ElementMaker, etude: Etude): Element[] {
  const { kind, seed, title, subtitle, trains, advice, transposition } = etude;
  const instrument = 'P1-I1';
  const name = transposition.chromatic === -7 ? 'Horn in F' : 'Natural horn';
  return [
    make('work', {}, make('work-title', {}, title)),
    make(
      'identification',
      {},
      make('encoding', {}, make('software', {}, 'Bellhand')),
      make(
        'miscellaneous',
        {},
        make('miscellaneous-field', { name: 'kind' }, kind),
        make('miscellaneous-field', { name: 'seed' }, seed),
        make('miscellaneous-field', { name: 'trains' }, trains),
      ),
    ),
    defaults(make),
    credit(make, title, 20, 'center', PAGE.height - PAGE.margin),
    credit(make, [trains, advice, subtitle].join('\n'), 9, 'left', PAGE.height - PAGE.margin - 70),
    make(
      'part-list',
      {},
      make(
        'score-part',
        { id: 'P1' },
        make('part-name', { 'print-object': 'no' }, name),
        make(
          'score-instrument',
          { id: instrument },
          make('instrument-name', {}, name),
          make(
            'instrument-sound',
            {},
            transposition.chromatic === -7 ? 'brass.french-horn' : 'brass.natural-horn',
          ),
        ),
        make('midi-instrument', { id: instrument }, make('midi-program', {}, 61)),
      ),
    ),
  ];
}

/** A4 with a staff of 7 mm, in tenths of a staff space. */
const PAGE = { millimeters: 7, tenths: 40, width: 1200, height: 1697, margin: 85 } as const;

function defaults(make: ElementMaker): Element {
  const margins = ['left-margin', 'right-margin', 'top-margin', 'bottom-margin'];
  return make(
    'defaults',
    {},
    make('scaling', {}, make('millimeters', {}, PAGE.millimeters), make('tenths', {}, PAGE.tenths)),
    make(
      'page-layout',
      {},
      make('page-height', {}, PAGE.height),
      make('page-width', {}, PAGE.width),
      make('page-margins', { type: 'both' }, ...margins.map((name) => make(name, {}, PAGE.margin))),
    ),
  );
}

/** Text at the head of the page, in the middle or on the left, its top `height` tenths above the foot. */
function credit(
  make: ElementMaker,
  text: string,
  size: number,
  justify: 'left' | 'center',
  height: number,
): Element {
  const place = { 'default-x': justify === 'left' ? PAGE.margin : PAGE.width / 2, 'default-y': height };
  const look = { 'font-size': size, justify, halign: justify, valign: 'top' };
  return make('credit', { page: 1 }, make('credit-words', { ...place, ...look }, text));
}

function part(make: ElementMaker, etude: Etude): Element {
  const { key, meter, bars } = etude;
  const element = make('part', { id: 'P1' });
  const accidentals = new Accidentals(key.fifths);
  const barsInLine = barsALine(bars);
  let before: EtudeNote | null = null;
  bars.forEach((bar, i) => {
    const measure = make('measure', { number: i + 1 });
    if (i > 0 && i % barsInLine === 0) measure.appendChild(make('print', { 'new-system': 'yes' }));
    if (i === 0) {
      measure.appendChild(attributes(make, etude));
      measure.appendChild(tempo(make, etude));
    }
    accidentals.startBar();
    const groupings = groupingsOf(bar, meter);
    bar.forEach((note, j) => {
      if (note.dynamic) measure.appendChild(dynamics(make, note.dynamic));
      const accidental = note.written ? accidentals.at(note.written) : null;
      measure.appendChild(
        noteElement(make, note, { slides: before?.slides ?? false }, groupings[j]!, accidental),
      );
      before = note;
    });
    if (i === bars.length - 1)
      measure.appendChild(make('barline', { location: 'right' }, make('bar-style', {}, 'light-heavy')));
    element.appendChild(measure);
  });
  return element;
}

function attributes(make: ElementMaker, { key, meter, transposition }: Etude): Element {
  return make(
    'attributes',
    {},
    make('divisions', {}, DIVISIONS),
    make('key', {}, make('fifths', {}, key.fifths), make('mode', {}, key.mode)),
    make('time', {}, make('beats', {}, meter.beats), make('beat-type', {}, meter.beatType)),
    make('clef', {}, make('sign', {}, 'G'), make('line', {}, 2)),
    make(
      'transpose',
      {},
      make('diatonic', {}, transposition.diatonic),
      make('chromatic', {}, transposition.chromatic),
      transposition.octaveChange === 0 ? null : make('octave-change', {}, transposition.octaveChange),
    ),
  );
}

function tempo(make: ElementMaker, { meter, tempo: beats }: Etude): Element {
  return make(
    'direction',
    { placement: 'above' },
    make(
      'direction-type',
      {},
      make(
        'metronome',
        { parentheses: 'no' },
        make('beat-unit', {}, 'quarter'),
        meter.beatQuarters === 1.5 ? make('beat-unit-dot') : null,
        make('per-minute', {}, beats),
      ),
    ),
    make('sound', { tempo: beats * meter.beatQuarters }),
  );
}

function dynamics(make: ElementMaker, dynamic: string): Element {
  return make(
    'direction',
    { placement: 'below' },
    make('direction-type', {}, make('dynamics', {}, make(dynamic))),
  );
}

/** Puts every element that holds elements on lines of its own, two spaces a level. */
function indent(document: Document, element: Element, lineEnd: string): void {
  const children: Element[] = [];
  for (let child = element.firstChild; child; child = child.nextSibling)
    if (child.nodeType === 1) children.push(child as unknown as Element);
  if (children.length === 0) return;
  for (const child of children) {
    element.insertBefore(document.createTextNode(`${lineEnd}  `), child);
    indent(document, child, `${lineEnd}  `);
  }
  element.appendChild(document.createTextNode(lineEnd));
}
