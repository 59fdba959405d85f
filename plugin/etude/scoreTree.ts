/** An étude as a MusicXML score. */

import type { Etude, EtudeNote } from '../../core/index.ts';
import { Accidentals, DIVISIONS, groupingsOf, noteElement } from './scoreNote.ts';
import { element, type XmlElement } from './xmlTree.ts';

/** Bars on one line of the page: a phrase, or half of one where bars are too full for their fingerings. */
function barsALine(bars: Etude['bars']): number {
  return bars.some((bar) => bar.length > 6) ? 2 : 4;
}

/**
 * The score of an étude, before its fingerings are written in.
 * @source musicxml40
 */
export function etudeScore(etude: Etude): XmlElement {
  return element('score-partwise', { version: '4.0' }, ...head(etude), part(etude));
}

function head(etude: Etude): XmlElement[] {
  const { kind, seed, title, subtitle, trains, advice, transposition } = etude;
  const instrument = 'P1-I1';
  const name = transposition.chromatic === -7 ? 'Horn in F' : 'Natural horn';
  return [
    element('work', {}, element('work-title', {}, title)),
    element(
      'identification',
      {},
      element('encoding', {}, element('software', {}, 'Bellhand')),
      element(
        'miscellaneous',
        {},
        element('miscellaneous-field', { name: 'kind' }, kind),
        element('miscellaneous-field', { name: 'seed' }, seed),
        element('miscellaneous-field', { name: 'trains' }, trains),
      ),
    ),
    defaults(),
    heading(title, [trains, advice, subtitle]),
    element(
      'part-list',
      {},
      element(
        'score-part',
        { id: 'P1' },
        element('part-name', { 'print-object': 'no' }, name),
        element(
          'score-instrument',
          { id: instrument },
          element('instrument-name', {}, name),
          element(
            'instrument-sound',
            {},
            transposition.chromatic === -7 ? 'brass.french-horn' : 'brass.natural-horn',
          ),
        ),
        element('midi-instrument', { id: instrument }, element('midi-program', {}, 61)),
      ),
    ),
  ];
}

/** A4 with a staff of 7 mm, in tenths of a staff space. */
const PAGE = { millimeters: 7, tenths: 40, width: 1200, height: 1697, margin: 85 } as const;

function defaults(): XmlElement {
  const margins = ['left-margin', 'right-margin', 'top-margin', 'bottom-margin'];
  return element(
    'defaults',
    {},
    element('scaling', {}, element('millimeters', {}, PAGE.millimeters), element('tenths', {}, PAGE.tenths)),
    element(
      'page-layout',
      {},
      element('page-height', {}, PAGE.height),
      element('page-width', {}, PAGE.width),
      element('page-margins', { type: 'both' }, ...margins.map((name) => element(name, {}, PAGE.margin))),
    ),
  );
}

/** The head of the page as one text, title and lines under it: readers place several each in its own way, one over the other. */
function heading(title: string, lines: readonly string[]): XmlElement {
  const place = { 'default-x': PAGE.width / 2, 'default-y': PAGE.height - PAGE.margin };
  const look = { ...place, justify: 'center', halign: 'center', valign: 'top' };
  return element(
    'credit',
    { page: 1 },
    element('credit-type', {}, 'title'),
    element('credit-words', { ...look, 'font-size': 20 }, `${title}\n`),
    element('credit-words', { ...look, 'font-size': 9 }, lines.join('\n')),
  );
}

function part(etude: Etude): XmlElement {
  const { key, meter, bars } = etude;
  const accidentals = new Accidentals(key.fifths);
  const barsInLine = barsALine(bars);
  let before: EtudeNote | null = null;
  const measures = bars.map((bar, i) => {
    const children: XmlElement[] = [];
    if (i > 0 && i % barsInLine === 0) children.push(element('print', { 'new-system': 'yes' }));
    if (i === 0) children.push(attributes(etude), tempo(etude));
    accidentals.startBar();
    const groupings = groupingsOf(bar, meter);
    bar.forEach((note, j) => {
      if (note.dynamic) children.push(dynamics(note.dynamic));
      const accidental = note.written ? accidentals.at(note.written) : null;
      children.push(noteElement(note, before?.slides === true, groupings[j]!, accidental));
      before = note;
    });
    if (i === bars.length - 1) {
      children.push(element('barline', { location: 'right' }, element('bar-style', {}, 'light-heavy')));
    }
    return element('measure', { number: i + 1 }, ...children);
  });
  return element('part', { id: 'P1' }, ...measures);
}

function attributes({ key, meter, transposition }: Etude): XmlElement {
  return element(
    'attributes',
    {},
    element('divisions', {}, DIVISIONS),
    element('key', {}, element('fifths', {}, key.fifths), element('mode', {}, key.mode)),
    element('time', {}, element('beats', {}, meter.beats), element('beat-type', {}, meter.beatType)),
    element('clef', {}, element('sign', {}, 'G'), element('line', {}, 2)),
    element(
      'transpose',
      {},
      element('diatonic', {}, transposition.diatonic),
      element('chromatic', {}, transposition.chromatic),
      transposition.octaveChange === 0 ? null : element('octave-change', {}, transposition.octaveChange),
    ),
  );
}

function tempo({ meter, tempo: beats }: Etude): XmlElement {
  return element(
    'direction',
    { placement: 'above' },
    element(
      'direction-type',
      {},
      element(
        'metronome',
        { parentheses: 'no' },
        element('beat-unit', {}, 'quarter'),
        meter.beatQuarters === 1.5 ? element('beat-unit-dot') : null,
        element('per-minute', {}, beats),
      ),
    ),
    element('sound', { tempo: beats * meter.beatQuarters }),
  );
}

function dynamics(dynamic: string): XmlElement {
  return element(
    'direction',
    { placement: 'below' },
    element('direction-type', {}, element('dynamics', {}, element(dynamic))),
  );
}
