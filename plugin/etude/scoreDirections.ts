/** What stands over and under the notes of a sheet: headings, tempo, dynamics, hairpins. */
import type { EtudeNote, Meter } from '../../core/index.ts';
import { element, type XmlElement } from './xmlTree.ts';

/**
 * What stands over an exercise, in one line: its number on a sheet of several, what it trains, and how it goes, as in
 * `2  Play each note open, … Adagio uguale ♩ = 60`.
 * @param beats a minute
 */
export function tempoMark(
  number: number | null,
  trains: string,
  tempoWords: string,
  meter: Meter,
  beats: number,
): XmlElement {
  const plain = { 'font-style': 'normal', 'font-size': 9 } as const;
  return element(
    'direction',
    { placement: 'above' },
    number === null
      ? null
      : element('direction-type', {}, element('words', { ...plain, 'font-weight': 'bold' }, `${number}   `)),
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
