/** The hand's slides engraved for a sheet of paper, as large as it holds them, and for a telephone. */
import type { Settings } from '../../core/index.ts';
import { type Engraving, engrave } from './engrave.ts';
import type { HandSlide } from './handSlides.ts';
import { type SlideRow, slideRows, slideScoreText } from './slideScore.ts';

/** A row of slides, engraved. */
export interface EngravedRow {
  readonly row: SlideRow;
  readonly engraving: Engraving;
}

/** Slides on a line of a sheet, the largest notes first, and on a line of a telephone. */
const ON_PAPER = [6, 7, 8, 9, 10, 11];
const ON_TELEPHONE = 3;

/** The width that clef and slides take in a system, in tenths of a millimetre at full size. */
const CLEF_WIDTH = 90;
const SLIDE_WIDTH = 251;

/**
 * Engraves slides as large as a sheet holds them.
 * @param room for all their systems, in widths of the sheet
 */
export async function slidesOnPaper(
  slides: readonly HandSlide[],
  player: Settings,
  room: number,
): Promise<readonly EngravedRow[]> {
  let rows: readonly EngravedRow[] = [];
  for (const aLine of ON_PAPER) {
    rows = await engravedRows(slides, player, aLine);
    if (heightOf(rows) <= room) break;
  }
  return rows;
}

/** Engraves slides for a window as wide as a telephone. */
export function slidesOnTelephone(
  slides: readonly HandSlide[],
  player: Settings,
): Promise<readonly EngravedRow[]> {
  return engravedRows(slides, player, ON_TELEPHONE);
}

async function engravedRows(
  slides: readonly HandSlide[],
  player: Settings,
  aLine: number,
): Promise<readonly EngravedRow[]> {
  const rows: EngravedRow[] = [];
  for (const row of slideRows(slides)) {
    const text = slideScoreText([row], player, { title: '', lines: [], hasHeadings: false, aLine });
    const width = CLEF_WIDTH + SLIDE_WIDTH * aLine;
    rows.push({ row, engraving: await engrave(text, { width, keepsBreaks: true, isList: true }) });
  }
  return rows;
}

function heightOf(rows: readonly EngravedRow[]): number {
  return rows
    .flatMap(({ engraving }) => engraving.systems)
    .reduce((sum, { width, height }) => sum + height / width, 0);
}
