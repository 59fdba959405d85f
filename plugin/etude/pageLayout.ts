/** How a sheet lies on its page: A4, its head, and systems so far apart that they fill it. */
import { countLines, pitchCents, type Sheet } from '../../core/index.ts';
import { element, type XmlElement } from './xmlTree.ts';

/** A page as scores measure it: in tenths of a staff space. */
export interface Page {
  /** A staff, in millimetres. */
  readonly staffMillimetres: number;
  readonly widthTenths: number;
  readonly heightTenths: number;
  readonly marginTenths: number;
}

/** Staves, in millimetres: as large as the page allows. Low notes and a third line at the head take room. */
const STAFF = { usual: 5.6, longHead: 5.4, low: 5.2, fewLines: 6.6 } as const;
/** So many lines leave room for larger staves. */
const FEW_LINES = 8;
/** A head of more lines than this is long. */
const HEAD_LINES = 2;
/** Written A3: notes below it stand well under the staff. */
const LOW_CENTS = 5700;

/** The page of a sheet. */
export function pageFor({ etudes, lines }: Sheet): Page {
  const isLow = etudes.some(({ bars }) =>
    bars.some(({ notes }) => notes.some(({ written }) => written && pitchCents(written) < LOW_CENTS)),
  );
  const staffMillimetres =
    countLines(etudes) <= FEW_LINES
      ? STAFF.fewLines
      : isLow
        ? STAFF.low
        : lines.length > HEAD_LINES
          ? STAFF.longHead
          : STAFF.usual;
  return a4(staffMillimetres);
}

/** A4, its margins 13 mm. */
function a4(staffMillimetres: number): Page {
  const tenths = (millimetres: number) => Math.round((millimetres * TENTHS) / staffMillimetres);
  return { staffMillimetres, widthTenths: tenths(210), heightTenths: tenths(297), marginTenths: tenths(13) };
}

/** Four spaces, the staff. */
const TENTHS = 40;

/** What a chart is printed on: many lines are set smaller, so that they stay on one page. @param lines of the whole chart */
export function chartPaper(lines: number): Page {
  return a4(lines <= CHART_LINES ? STAFF.usual : (STAFF.usual * CHART_LINES) / lines);
}

/** So many lines of a chart fit a page at the usual size. */
const CHART_LINES = 11;

/** How high the head of a page is: its title, and each line below it, in tenths. */
const TITLE_TENTHS = 136;
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
  const page = pageFor(sheet);
  const lines = countLines(sheet.etudes);
  const head = headHeight(sheet.lines.length);
  const free = page.heightTenths - 2 * page.marginTenths - head - HEADING_TENTHS * sheet.etudes.length;
  const distance = Math.round(
    Math.min(FURTHEST_TENTHS, Math.max(NEAREST_TENTHS, free / lines - SYSTEM_TENTHS)),
  );
  return pageDefaults(page, distance, sheet.lines.length);
}

/**
 * The `defaults` of a score on such pages.
 * @param distance from one system to the next, in tenths
 * @param headLines lines below the title
 */
export function pageDefaults(page: Page, distance: number, headLines: number): XmlElement {
  const margins = ['left-margin', 'right-margin', 'top-margin', 'bottom-margin'];
  return element(
    'defaults',
    {},
    element('scaling', {}, element('millimeters', {}, page.staffMillimetres), element('tenths', {}, TENTHS)),
    element(
      'page-layout',
      {},
      element('page-height', {}, page.heightTenths),
      element('page-width', {}, page.widthTenths),
      element(
        'page-margins',
        { type: 'both' },
        ...margins.map((name) => element(name, {}, page.marginTenths)),
      ),
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
