/** An étude as the text of a MusicXML score, before its fingerings are written in. */
import { DOMImplementation, type Document, type Element, XMLSerializer } from '@xmldom/xmldom';
import type { Etude, EtudeNote } from '../../core/etude/etude.ts';
import { type ElementMaker, elementMaker } from './scoreElements.ts';
import { Accidentals, DIVISIONS, groupingsOf, noteElement } from './scoreNote.ts';

/** Bars on one line of the page: a phrase. */
const BARS_A_LINE = 4;

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
  const { kind, seed, title, subtitle, trains, transposition } = etude;
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
    credit(make, 'title', title, { 'font-size': 20 }),
    credit(make, 'subtitle', `${trains}\n${subtitle}`, { 'font-size': 10 }),
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

function credit(
  make: ElementMaker,
  type: string,
  text: string,
  look: { readonly 'font-size': number },
): Element {
  return make(
    'credit',
    { page: 1 },
    make('credit-type', {}, type),
    make('credit-words', { justify: 'center', valign: 'top', ...look }, text),
  );
}

function part(make: ElementMaker, etude: Etude): Element {
  const { key, meter, bars, advice } = etude;
  const element = make('part', { id: 'P1' });
  const accidentals = new Accidentals(key.fifths);
  let before: EtudeNote | null = null;
  bars.forEach((bar, i) => {
    const measure = make('measure', { number: i + 1 });
    if (i > 0 && i % BARS_A_LINE === 0) measure.appendChild(make('print', { 'new-system': 'yes' }));
    if (i === 0) {
      measure.appendChild(attributes(make, etude));
      measure.appendChild(tempo(make, etude));
    }
    accidentals.startBar();
    const groupings = groupingsOf(bar, meter);
    bar.forEach((note, j) => {
      if (note.dynamic) measure.appendChild(dynamics(make, note.dynamic));
      if (i === bars.length - 1 && j === 0) measure.appendChild(words(make, advice));
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

function words(make: ElementMaker, text: string): Element {
  return make(
    'direction',
    { placement: 'below' },
    make('direction-type', {}, make('words', { 'font-style': 'italic', 'font-size': 9 }, text)),
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
