/** The back of the wall chart: every note with its cents and other fingerings, and where the hand bends the open ones. */
import {
  briefReasonText,
  chartWords,
  noteName,
  pitchCents,
  type Reader,
  type Settings,
  UNCHANGED_CENTS,
} from '../../core/index.ts';
import type { ChartNote } from './chartNotes.ts';
import { audibleCents, centsText, closedBy, fingeredText, naturalText } from './fingeringTable.ts';
import { type HandSlide, handSlides } from './handSlides.ts';
import { type Html, html } from './html.ts';
import { textWidth } from './letterWidths.ts';
import { fitTables, type Room, type TableWidths } from './tableFit.ts';
import { VERDICT_SIGNS } from './verdicts.ts';

/** Other ways beyond so many help nobody. */
const MOST_OTHERS = 4;

/** A way to play a note: the fingering, and in small its cents where they are heard. */
interface Way {
  readonly text: string;
  readonly cents: string;
  readonly isSure: boolean;
}

interface Row {
  readonly note: string;
  readonly cells: readonly Html[];
  /** Widths of the cells and of the note before them, in ems. */
  readonly widths: readonly number[];
  readonly ways: readonly Way[];
}

interface Table {
  readonly caption: string;
  readonly heads: readonly string[];
  readonly rows: readonly Row[];
}

/** The back of the chart. */
export function chartBack(notes: readonly ChartNote[], player: Settings, reader: Reader): Html {
  const words = chartWords(reader);
  const tables = tablesOf(notes, handSlides(player).slides, reader);
  const { size, row, shares } = fitTables(tables.map(widthsOf), ROOM);
  const columns = shares.map((share) => `${share}fr`).join(' ');
  return html`<section class="back" aria-labelledby="back" style="--size: ${size}; --row: ${row}; --tables: ${columns}"><h2 id="back">${words.back}</h2><div class="tables">
${tables.map(tableView)}</div>
<p class="legend">${words.centsReading(UNCHANGED_CENTS)}</p></section>`;
}

function tablesOf(
  notes: readonly ChartNote[],
  slides: readonly HandSlide[],
  reader: Reader,
): readonly Table[] {
  const { back: caption, heads } = chartWords(reader);
  const rows = notes.map((note) => noteRow(note, reader));
  const half = halfOf(rows);
  const noteHeads = [heads.note, heads.fingering, heads.natural, heads.falls];
  const ofNotes = [rows.slice(0, half), rows.slice(half)].map((those) => ({
    caption,
    heads: those.some(({ ways }) => ways.length > 0) ? [...noteHeads, heads.otherWays] : noteHeads,
    rows: those,
  }));
  const ofSlides = slideRows(slides, reader);
  return ofSlides.length === 0
    ? ofNotes
    : [...ofNotes, { caption: heads.fallsTo, heads: [heads.open, heads.fallsTo], rows: ofSlides }];
}

function noteRow({ examined }: ChartNote, reader: Reader): Row {
  const { note, namedFrom, fingering, candidates, verdict, reading, player } = examined;
  const chosen = fingering!;
  const { sign, className } = VERDICT_SIGNS[verdict];
  const isOpen = reading.state === 'open';
  const way = player.horn.natural
    ? isOpen
      ? 'o'
      : closedBy(chosen.band)
    : fingeredText(namedFrom, chosen, reader);
  const cents = audibleCents(chosen);
  const natural = isOpen ? '' : naturalText(namedFrom, chosen, reader);
  const why = chosen.reasons.filter((reason) => reason !== 'off-pitch')[0];
  const fall = isOpen ? '' : why === undefined ? centsText(chosen.dropCents) : briefReasonText(why, reader);
  const name = noteName(note.written, reader);
  return {
    note: name,
    cells: [
      html`<td class="${className}">${sign !== '' && html`<span aria-hidden="true">${sign}</span> `}${way}${small(cents)}</td>`,
      html`<td>${natural}</td>`,
      html`<td class="number">${why === undefined ? fall : html`<small>${fall}</small>`}</td>`,
    ],
    widths: [
      textWidth(name),
      textWidth([sign, way, cents].filter((piece) => piece !== '').join(' ')),
      textWidth(natural),
      textWidth(fall) * (why === undefined ? 1 : SMALL),
    ],
    ways: candidates
      .filter((other) => other !== chosen)
      .slice(0, MOST_OTHERS)
      .map((other) => ({
        text: fingeredText(namedFrom, other, reader),
        cents: audibleCents(other),
        isSure: true,
      })),
  };
}

/** Open notes, each with where the hand brings it down to. */
function slideRows(slides: readonly HandSlide[], reader: Reader): readonly Row[] {
  const rows = new Map<number, HandSlide[]>();
  for (const slide of slides) {
    const cents = pitchCents(slide.open.note.written);
    rows.set(cents, [...(rows.get(cents) ?? []), slide]);
  }
  return [...rows.values()].map((ofNote) => {
    const note = noteName(ofNote[0]!.open.note.written, reader);
    const ways = ofNote.map(({ stopped, fingering, isSure }) => ({
      text: `${isSure ? '' : '≈ '}${noteName(stopped.note.written, reader)} ${fingering.printed || closedBy(fingering.band)}`,
      cents: '',
      isSure,
    }));
    return { note, cells: [], widths: [textWidth(note)], ways };
  });
}

function tableView({ caption, heads, rows }: Table): Html {
  const hasWays = rows.some(({ ways }) => ways.length > 0);
  return html`<table><caption class="unseen">${caption}</caption><thead><tr>${heads.map((head, i) => html`<th scope="col"${i === NUMBER_COLUMN && html` class="number"`}>${head}</th>`)}</tr></thead>
<tbody>${rows.map((row) => rowView(row, hasWays))}</tbody></table>`;
}

function rowView({ note, cells, ways }: Row, hasWays: boolean): Html {
  return html`<tr><th scope="row">${note}</th>${cells}${hasWays && html`<td>${ways.map(wayView)}</td>`}</tr>
`;
}

function wayView({ text, cents, isSure }: Way, i: number): Html {
  return html`${i > 0 && ', '}<span class="way${isSure ? '' : ' doubt'}">${text}${small(cents)}</span>`;
}

function small(cents: string): Html | null {
  return cents === '' ? null : html` <small>${cents}</small>`;
}

/** The column of cents in a table of notes. */
const NUMBER_COLUMN = 3;
/** Cents against other letters, as the page's style has them. */
const SMALL = 0.8;
/** Between columns, in ems. */
const CELL_GAP = 0.6;
/** What the tables have on A4. */
const ROOM: Room = { width: 279, height: 170, gap: 7 };

function widthsOf({ heads, rows }: Table): TableWidths {
  const column = (i: number) =>
    CELL_GAP + Math.max(textWidth(heads[i]!), ...rows.map(({ widths }) => widths[i]!));
  const columns = rows[0]!.widths.map((_, i) => column(i));
  return {
    fixed: columns.reduce((sum, each) => sum + each, 0),
    last: [[textWidth(heads[columns.length] ?? '')], ...rows.map(({ ways }) => ways.map(widthOfWay))],
  };
}

function widthOfWay({ text, cents }: Way): number {
  return textWidth(`${text}, `) + SMALL * textWidth(` ${cents}`);
}

/** Where the second of two tables of about the same height begins: a row with many other ways may take two lines. */
function halfOf(rows: readonly Row[]): number {
  const weights = rows.map(({ ways }) => (ways.length === MOST_OTHERS ? 1.3 : 1));
  const whole = weights.reduce((sum, each) => sum + each, 0);
  let above = 0;
  return weights.findIndex((each) => {
    above += each;
    return above > whole / 2;
  });
}
