/** The head of a sheet: title, horn, what the player is told, and the instrument it sounds with. */
import type { Sheet } from '../../core/index.ts';
import { defaults, PAGE } from './pageLayout.ts';
import { element, type XmlElement } from './xmlTree.ts';

/** Everything in a score before its part. */
export function scoreHead(sheet: Sheet): XmlElement[] {
  const { title, lines, etudes } = sheet;
  return [
    element('work', {}, element('work-title', {}, title)),
    element(
      'identification',
      {},
      element('encoding', {}, element('software', {}, 'Bellhand')),
      element(
        'miscellaneous',
        {},
        ...etudes.map(({ kind, seed }, i) =>
          element('miscellaneous-field', { name: `exercise-${i + 1}` }, `${kind} ${seed}`),
        ),
      ),
    ),
    defaults(sheet),
    heading(title, lines),
    partList(sheet),
  ];
}

function partList({ instrument, etudes }: Sheet): XmlElement {
  const id = 'P1-I1';
  const isInF = etudes[0]!.transposition.chromatic === -7 && !etudes[0]!.player.horn.natural;
  return element(
    'part-list',
    {},
    element(
      'score-part',
      { id: 'P1' },
      element('part-name', { 'print-object': 'no' }, instrument),
      element(
        'score-instrument',
        { id },
        element('instrument-name', {}, instrument),
        element('instrument-sound', {}, isInF ? 'brass.french-horn' : 'brass.natural-horn'),
      ),
      element('midi-instrument', { id }, element('midi-program', {}, 61)),
    ),
  );
}

/** The head of the page as one text, title and lines under it: readers place several each in its own way, one over the other. */
export function heading(title: string, lines: readonly string[]): XmlElement {
  const place = { 'default-x': PAGE.width / 2, 'default-y': PAGE.height - PAGE.margin };
  const look = { ...place, justify: 'center', halign: 'center', valign: 'top' };
  return element(
    'credit',
    { page: 1 },
    element('credit-type', {}, 'title'),
    element('credit-words', { ...look, 'font-size': 18 }, `${title}\n`),
    element('credit-words', { ...look, 'font-size': 8.5 }, lines.join('\n')),
  );
}
