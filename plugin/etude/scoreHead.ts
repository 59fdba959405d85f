/** The head of a sheet: title, horn, what the player is told, and the instrument it sounds with. */
import type { Sheet } from '../../core/index.ts';
import { defaults, type Page, pageFor } from './pageLayout.ts';
import { element, type XmlElement } from './xmlTree.ts';

/** Everything in a score before its part. */
export function scoreHead(sheet: Sheet): XmlElement[] {
  const { title, lines, etudes } = sheet;
  const page = pageFor(sheet);
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
    heading(title, lines, page),
    foot(lines.length, page),
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

/** A line with nothing on it: a no-break space, since readers drop plain ones. */
const BLANK = '\u00a0';

/** The head of the page as one text, title and lines under it: readers place several each in its own way, one over the other. */
export function heading(title: string, lines: readonly string[], page: Page): XmlElement {
  const place = { 'default-x': page.widthTenths / 2, 'default-y': page.heightTenths - page.marginTenths };
  const look = { ...place, justify: 'center', halign: 'center', valign: 'top' };
  return element(
    'credit',
    { page: 1 },
    element('credit-type', {}, 'title'),
    element('credit-words', { ...look, 'font-size': 18 }, `${title}\n`),
    // A gap, or the title's long letters run into the lines.
    element('credit-words', { ...look, 'font-size': 5 }, `${BLANK}\n`),
    element('credit-words', { ...look, 'font-size': 8.5 }, lines.join('\n')),
  );
}

/** What the head leaves for its title, and for each line, where editors reckon its height from its lowest text; in tenths. */
const FOOT_TITLE_TENTHS = 28;
const FOOT_LINE_TENTHS = 32;

/** A text that nobody sees, under the head: without it some editors let the first system run into the lines. */
export function foot(lines: number, page: Page): XmlElement {
  const look = {
    'default-x': page.widthTenths / 2,
    'default-y': page.heightTenths - page.marginTenths - FOOT_TITLE_TENTHS - FOOT_LINE_TENTHS * lines,
    'font-size': 8.5,
    justify: 'center',
    valign: 'top',
  };
  return element(
    'credit',
    { page: 1 },
    element('credit-type', {}, 'subtitle'),
    element('credit-words', look, BLANK),
  );
}
