/** How a sheet lies on its page: A4, its head, and systems so far apart that they fill it. */
import { countLines, type Sheet } from '../../core/index.ts';
import { element, type XmlElement } from './xmlTree.ts';

/** A4 with a staff of 5.6 mm, in tenths of a staff space; the margins are 13 mm. */
export const PAGE = { millimeters: 5.6, tenths: 40, width: 1500, height: 2121, margin: 93 } as const;

/** How high the head of a page is: its title, and each line below it, in tenths. */
const TITLE_TENTHS = 100;
const LINE_TENTHS = 32;
/** What a system takes without its distance to the next: two lines of fingerings, signs and a staff, in tenths. */
const SYSTEM_TENTHS = 95;
/** What an exercise's heading adds to its first system. */
const HEADING_TENTHS = 30;
/** Distances beyond these look wrong, or let fingerings touch the dynamics above them. */
const NEAREST_TENTHS = 50;
const FURTHEST_TENTHS = 180;

/** The `defaults` of a sheet's score. */
export function defaults(sheet: Sheet): XmlElement {
  const lines = countLines(sheet.etudes);
  const head = headHeight(sheet.lines.length);
  const free = PAGE.height - 2 * PAGE.margin - head - HEADING_TENTHS * sheet.etudes.length;
  const distance = Math.round(
    Math.min(FURTHEST_TENTHS, Math.max(NEAREST_TENTHS, free / lines - SYSTEM_TENTHS)),
  );
  return pageDefaults(distance, sheet.lines.length);
}

/**
 * The `defaults` of a score on such pages.
 * @param distance from one system to the next, in tenths
 * @param headLines lines below the title
 */
export function pageDefaults(distance: number, headLines: number): XmlElement {
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
    element(
      'system-layout',
      {},
      element('system-distance', {}, distance),
      element('top-system-distance', {}, headHeight(headLines)),
    ),
  );
}

/** From the top margin to the first staff. */
function headHeight(lines: number): number {
  return TITLE_TENTHS + LINE_TENTHS * lines;
}
