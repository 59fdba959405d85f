/** What stands over and under the notes of a sheet: headings, tempo, dynamics, hairpins. */
import type { EtudeNote, Meter } from '../../core/index.ts';
import { element, type XmlElement } from './xmlTree.ts';

/** Points, on a staff of so many millimetres. */
const HEADING_SIZE = 9;
const USUAL_STAFF = 5.6;

/** Nothing to be seen: a no-break space, since readers drop plain ones. */
const BLANK = '\u00a0';

/**
 * What stands over an exercise, in one line: its number on a sheet of several, what it trains, and how it goes, as in
 * `2  Play each note open, … Adagio uguale ♩ = 60`.
 * @param beats a minute
 * @param staffMillimetres how large the page's staves are
 */
export function tempoMark(
  number: number | null,
  trains: string,
  tempoWords: string,
  meter: Meter,
  beats: number,
  staffMillimetres: number,
): XmlElement {
  // Editors enlarge it with the staff; the line is no longer for that.
  const size = Math.min(
    HEADING_SIZE,
    Math.round((100 * HEADING_SIZE * USUAL_STAFF) / staffMillimetres) / 100,
  );
  const plain = { 'font-style': 'normal', 'font-size': size } as const;
  return element(
    'direction',
    { placement: 'above' },
    // Where there is no number something else stands first in bold: some editors set a text of one kind of letters in their own.
    element(
      'direction-type',
      {},
      element('words', { ...plain, 'font-weight': 'bold' }, number === null ? BLANK : `${number}   `),
    ),
    element('direction-type', {}, element('words', { ...plain, 'font-weight': 'normal' }, `${trains}   `)),
    element('direction-type', {}, element('words', { ...plain, 'font-weight': 'bold' }, `${tempoWords} `)),
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

/** How often the passage that ends here is played. */
export function timesMark(text: string): XmlElement {
  return below(
    'above',
    element('words', { 'font-weight': 'bold', 'font-size': 10, 'font-style': 'normal' }, text),
  );
}

/** What begins at a note: its dynamic, and its hairpin. */
export function startsAt({ dynamic, hairpin }: EtudeNote): XmlElement[] {
  const found: XmlElement[] = [];
  if (dynamic) found.push(below('below', element('dynamics', {}, element(dynamic))));
  if (hairpin) found.push(below('below', element('wedge', { type: hairpin, number: 1 })));
  return found;
}

/** What ends after a note. */
export function endsAt({ hairpinEnds }: EtudeNote): XmlElement[] {
  return hairpinEnds ? [below('below', element('wedge', { type: 'stop', number: 1 }))] : [];
}

function below(placement: 'above' | 'below', what: XmlElement): XmlElement {
  return element('direction', { placement }, element('direction-type', {}, what));
}
