/** What every chart's score has around its notes: title, one horn part, clef and key of the part. */
import { type Settings, transpositionOf } from '../../core/index.ts';
import { documentText } from '../etude/documentText.ts';
import { element, type XmlElement } from '../etude/xmlTree.ts';

export type ChartClef = 'treble' | 'bass';

/** The text of a score of one horn part. */
export function chartText(title: string, measures: readonly XmlElement[]): string {
  return documentText(
    element(
      'score-partwise',
      { version: '4.0' },
      element('work', {}, element('work-title', {}, title)),
      element('identification', {}, element('encoding', {}, element('software', {}, 'Bellhand'))),
      partList(),
      element('part', { id: 'P1' }, ...measures),
    ),
  );
}

function partList(): XmlElement {
  return element(
    'part-list',
    {},
    element(
      'score-part',
      { id: 'P1' },
      element('part-name', { 'print-object': 'no' }, 'Horn'),
      element(
        'score-instrument',
        { id: 'P1-I1' },
        element('instrument-name', {}, 'Horn'),
        element('instrument-sound', {}, 'brass.french-horn'),
      ),
    ),
  );
}

/** The attributes of the first measure: four quarters, with no time signature in print. */
export function firstAttributes(player: Settings, clef: ChartClef): XmlElement {
  const { chromatic, diatonic } = transpositionOf(player);
  return element(
    'attributes',
    {},
    element('divisions', {}, 1),
    element('key', {}, element('fifths', {}, 0)),
    element('time', { 'print-object': 'no' }, element('beats', {}, 4), element('beat-type', {}, 4)),
    clefElement(clef),
    element('transpose', {}, element('diatonic', {}, diatonic), element('chromatic', {}, chromatic)),
  );
}

/** The attributes of a later measure where the clef changes. */
export function clefChange(clef: ChartClef): XmlElement {
  return element('attributes', {}, clefElement(clef));
}

function clefElement(clef: ChartClef): XmlElement {
  return clef === 'treble'
    ? element('clef', {}, element('sign', {}, 'G'), element('line', {}, 2))
    : element('clef', {}, element('sign', {}, 'F'), element('line', {}, 4));
}
