/** The hand's slides as a score: a bar for each, both notes as a part would print them, the valves over the stopped one. */
import {
  type Fingering,
  type Mark,
  type Pitch,
  pitchCents,
  type Settings,
  VERDICT_COLOURS,
} from '../../core/index.ts';
import { pitchElement } from '../etude/scoreNote.ts';
import { element, type XmlElement } from '../etude/xmlTree.ts';
import { readScore } from '../musicxml/read/readScore.ts';
import { writeMarks } from '../musicxml/write/writeMarks.ts';
import {
  type ChartClef,
  chartText,
  clefChange,
  firstAttributes,
  lineBreak,
  measureNumber,
  unseenRest,
} from './chartFrame.ts';
import { closedBy } from './fingeringTable.ts';
import type { HandSlide } from './handSlides.ts';

/** Which way the hand moves. */
export type HandMove = 'closing' | 'opening';

/** Some slides with the hand moving one way, under one clef. */
export interface SlideRow {
  readonly move: HandMove;
  readonly clef: ChartClef;
  readonly slides: readonly HandSlide[];
}

/** Written G3: what goes below stands in the bass clef, at its real pitch. @source commonPractice */
const BASS_CLEF_BELOW_CENTS = 5500;

/** The slides in the order in which a chart shows them. */
export function slideRows(slides: readonly HandSlide[]): readonly SlideRow[] {
  const opening = slides.slice().sort((a, b) => centsOf(a.stopped) - centsOf(b.stopped));
  const isLow = ({ stopped }: HandSlide) => centsOf(stopped) < BASS_CLEF_BELOW_CENTS;
  const rows = [
    ['closing', slides],
    ['opening', opening],
  ] as const;
  return rows
    .flatMap(([move, all]): SlideRow[] => [
      { move, clef: 'bass', slides: all.filter(isLow) },
      { move, clef: 'treble', slides: all.filter((slide) => !isLow(slide)) },
    ])
    .filter((row) => row.slides.length > 0);
}

/** Shares a row out to lines of about the same length; slides from one note stay together. */
function isLineStart(slides: readonly HandSlide[], move: HandMove, aLine: number): readonly boolean[] {
  const lineLength = Math.ceil(slides.length / Math.ceil(slides.length / aLine));
  let onLine = 0;
  return slides.map((slide, i) => {
    const startsNote =
      i === 0 || pitchCents(endsOf(slides[i - 1]!, move)[0]) !== pitchCents(endsOf(slide, move)[0]);
    const starts = startsNote && (i === 0 || onLine >= lineLength);
    onLine = starts ? 1 : onLine + 1;
    return starts;
  });
}

/** From where to where a slide runs. */
export function endsOf({ open, stopped }: HandSlide, move: HandMove): readonly [from: Pitch, to: Pitch] {
  const [high, low] = [open.note.written, stopped.note.written];
  return move === 'closing' ? [high, low] : [low, high];
}

/** In signs: words that speak of stopped notes would be read as the word over a stopped passage. */
const HEADINGS: { readonly [move in HandMove]: string } = { closing: 'o ↘ +', opening: '+ ↗ o' };

/** How many slides a line of an editor's page holds. */
const SLIDES_A_LINE = 9;

/** What stands around the slides. */
interface SlideScoreTexts {
  readonly title: string;
  /** Below the title. */
  readonly lines: readonly string[];
  /** True to tell over the first row of each way which way it is. */
  readonly hasHeadings: boolean;
  /** Slides on a line, if the notes they start from come out so. */
  readonly aLine?: number;
}

/** The score of some rows. */
export function slideScoreText(
  rows: readonly SlideRow[],
  player: Settings,
  { title, lines, hasHeadings, aLine = SLIDES_A_LINE }: SlideScoreTexts,
): string {
  const measures: XmlElement[] = [];
  const marks: Mark[] = [];
  let systems = 0;
  rows.forEach(({ move, clef, slides }, r) => {
    const nextRow = rows[r + 1];
    const lineStarts = isLineStart(slides, move, aLine);
    systems += lineStarts.filter((starts) => starts).length;
    slides.forEach((slide, i) => {
      const [from] = endsOf(slide, move);
      const next = slides[i + 1];
      const isLastOfNote = !next || pitchCents(endsOf(next, move)[0]) !== pitchCents(from);
      const number = measures.length + 1;
      const mark = markOf(slide, 2 * measures.length + (move === 'closing' ? 1 : 0));
      if (mark) marks.push(mark);
      const isFirst = i === 0 && rows[r - 1]?.move !== move;
      measures.push(
        element(
          'measure',
          measureNumber(number),
          lineStarts[i] && number > 1 ? lineBreak() : null,
          number === 1 ? firstAttributes(player, clef) : null,
          ...(isFirst && hasHeadings ? heading(HEADINGS[move]) : []),
          ...notesOf(slide, move),
          ...(i === slides.length - 1 && nextRow && nextRow.clef !== clef ? clefChange(nextRow.clef) : []),
          barline(isLastOfNote ? 'light-light' : 'none'),
        ),
      );
    });
  });
  return writeMarks(readScore(chartText(title, measures, systems, lines)), [{ partId: 'P1', marks }]);
}

function centsOf({ note }: HandSlide['open']): number {
  return pitchCents(note.written);
}

/** The valves over the stopped note; on a natural horn, how far the hand closes, which `+` says of a full stop. */
function markOf({ fingering, isSure }: HandSlide, noteIndex: number): Mark | null {
  const way = isFull(fingering) ? fingering.printed : closedBy(fingering.band);
  const line = [isSure ? '' : '≈', way].filter((piece) => piece !== '').join(' ');
  if (line === '') return null;
  return { noteIndex, lines: [line], valves: null, colour: isSure ? null : VERDICT_COLOURS.risky };
}

/** False where a natural horn's hand closes part of the way. */
function isFull({ band }: Fingering): boolean {
  return band === null || band === 'full';
}

function notesOf(slide: HandSlide, move: HandMove): readonly XmlElement[] {
  return endsOf(slide, move).map((written, i) => {
    const isOpen = (move === 'closing') === (i === 0);
    return element(
      'note',
      {},
      pitchElement(written),
      element('duration', {}, 2),
      element('voice', {}, 1),
      element('type', {}, 'half'),
      written.alter === 0 ? null : element('accidental', {}, written.alter > 0 ? 'sharp' : 'flat'),
      element(
        'notations',
        {},
        element('slide', { type: i === 0 ? 'start' : 'stop', number: 1, 'line-type': 'solid' }),
        // The same small circle as `open`, and of the two the one that editors and engravers draw.
        isOpen || isFull(slide.fingering)
          ? element('technical', {}, element(isOpen ? 'open-string' : 'stopped'))
          : null,
      ),
    );
  });
}

/** Stands before the first note, with nothing below it that it could climb over. */
function heading(text: string): readonly XmlElement[] {
  const words = element('words', { 'font-weight': 'bold', 'font-size': 9, 'font-style': 'normal' }, text);
  return [
    element('direction', { placement: 'above' }, element('direction-type', {}, words)),
    unseenRest('half'),
  ];
}

function barline(style: 'light-light' | 'none'): XmlElement {
  return element('barline', { location: 'right' }, element('bar-style', {}, style));
}
