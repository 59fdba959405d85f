/**
 * The fingering chart as a sheet for the wall, A4 across, and as good on A3. In front the notes, those that players live
 * on large enough for a metre's distance; on the back what one looks up.
 */
import {
  chartWords,
  ENGLISH_READER,
  noteName,
  type Reader,
  type Settings,
  type Verdict,
} from '../../core/index.ts';
import { chartBack } from './chartBack.ts';
import { chartLegend } from './chartLegend.ts';
import { type ChartNote, chartNotes, clefOf, registersOf } from './chartNotes.ts';
import { chartTitle, singleNotesText } from './chartScore.ts';
import { CHART_STYLE } from './chartStyle.ts';
import { type EngravedSystem, type Engraving, engrave } from './engrave.ts';
import { closedBy, fingeredText, naturalText } from './fingeringTable.ts';
import { Html, html } from './html.ts';
import { pageText } from './page.ts';
import { VERDICT_SIGNS } from './verdicts.ts';

/** Width of one note's staff, in tenths of a millimetre at full size: just wide enough for clef, accidental and note. */
const CARD_WIDTH = 280;
/** Rows of large notes. */
const ROWS = 3;
/** Small notes on a line; fewer are no larger. */
const SMALL_A_LINE = 18;

/**
 * The text of a chart for one player's horn.
 * @throws {EngravingError} when there is no engraver
 */
export async function chartPage(player: Settings, reader: Reader = ENGLISH_READER): Promise<string> {
  const words = chartWords(reader);
  const notes = chartNotes(player);
  const title = chartTitle(player, reader);
  const { low, main, high } = registersOf(notes);
  const engravings: Engraving[] = [];
  const cards = async (group: readonly ChartNote[]): Promise<Html[]> => {
    const systems: EngravedSystem[] = [];
    // Each clef by itself: engraved together, a change of clef would be announced at the end of the line before.
    for (const clef of ['bass', 'treble'] as const) {
      const those = group.filter((note) => clefOf(note) === clef);
      if (those.length === 0) continue;
      const engraving = await engrave(singleNotesText(those, player), {
        width: CARD_WIDTH,
        keepsBreaks: true,
      });
      engravings.push(engraving);
      systems.push(...engraving.systems);
    }
    const frame = commonFrame(systems);
    return group.map((note, i) => card(note, systems[i]!, frame, reader));
  };
  const columns = Math.ceil(main.length / ROWS);
  const beside = Math.max(low.length + high.length, SMALL_A_LINE);
  const groups = [
    { id: 'low', heading: words.low, notes: low },
    { id: 'high', heading: words.high, notes: high },
  ].filter((group) => group.notes.length > 0);
  const smallSize = sizeFor([...low, ...high], SMALL_MM, (STRIP_SHARE * SHEET_MM) / beside, reader);
  const strips: Html[] = [];
  for (const { id, heading, notes: those } of groups) {
    strips.push(
      html`<section style="--share: ${(STRIP_SHARE * those.length) / beside}" aria-labelledby="${id}"><h2 id="${id}">${heading}</h2><ol class="cards small" style="--columns: ${those.length}; --size: ${smallSize}mm">${await cards(those)}</ol></section>`,
    );
  }
  const largeSize = sizeFor(main, LARGE_MM, SHEET_MM / columns, reader);
  return pageText({
    title,
    header: html`<h1>${title}</h1>`,
    main: html`<section class="front" aria-labelledby="chart"><h2 class="unseen" id="chart">${words.chart}</h2><ol class="cards large" style="--columns: ${columns}; --size: ${largeSize}mm">${await cards(main)}</ol>
${strips.length > 0 && html`<div class="beside">${strips}</div>`}
<p class="legend">${chartLegend(player, notes, reader).join(' ')}</p></section>
${chartBack(notes, player, reader)}`,
    footer: html`<p>${words.madeBy}</p>`,
    engravings,
    style: CHART_STYLE,
    reader,
  });
}

/** Millimetres from which the fingered notes are read: large from a metre away, small from the stand. */
const LARGE_MM = 10.5;
const SMALL_MM = 3.9;
/** What the notes of a line share on paper, in millimetres, and what is clear between them. */
const SHEET_MM = 277;
const GAP_MM = 1.5;
/** What the small notes take of it; the rest lies between low and high. */
const STRIP_SHARE = 0.97;
/** How wide bold letters are, in parts of their size: capitals, small letters, spaces, the widest sign, all others. */
const LETTER_WIDTHS = [
  [/[A-Z]/, 0.72],
  [/[a-zé]/, 0.47],
  [/ /, 0.25],
  [/≈/, 0.85],
  [/./, 0.55],
] as const;

/** The size of letters at which the longest fingering of a line fits its card, in millimetres. */
function sizeFor(notes: readonly ChartNote[], most: number, cardMm: number, reader: Reader): number {
  const widest = Math.max(1, ...notes.map((note) => widthOf(fingeredOn(note, reader))));
  return Math.round(100 * Math.min(most, (cardMm - GAP_MM) / widest)) / 100;
}

function widthOf(text: string): number {
  const width = (letter: string) => LETTER_WIDTHS.find(([letters]) => letters.test(letter))![1];
  return [...text].reduce((sum, letter) => sum + width(letter), 0);
}

/** What stands large below a note: note and valves, with the sign for luck; on a natural horn how far the hand closes. */
function fingeredOn({ examined }: ChartNote, reader: Reader): string {
  const { namedFrom, fingering, verdict, player, reading } = examined;
  if (player.horn.natural) return reading.state === 'open' ? 'o' : closedBy(fingering!.band);
  return signed(verdict, fingeredText(namedFrom, fingering!, reader));
}

function signed(verdict: Verdict, text: string): string {
  const { sign } = VERDICT_SIGNS[verdict];
  return sign === '' ? text : `${sign} ${text}`;
}

/** How far drawings reach above and below their staff, so that the staves of a row stand level. */
interface Frame {
  readonly above: number;
  readonly below: number;
}

function commonFrame(systems: readonly EngravedSystem[]): Frame {
  let above = 0;
  let below = 0;
  for (const { bars, height } of systems)
    for (const { top, bottom } of bars.values()) {
      above = Math.max(above, top);
      below = Math.max(below, height - bottom);
    }
  return { above, below };
}

function card(note: ChartNote, system: EngravedSystem, { above, below }: Frame, reader: Reader): Html {
  const { namedFrom, fingering, reading, verdict, player, note: printed } = note.examined;
  const name = noteName(printed.written, reader);
  const [staff] = system.bars.values();
  const { top, bottom } = staff ?? { top: above, bottom: system.height - below };
  const isOpen = reading.state === 'open';
  const label = isOpen ? name : chartWords(reader).stoppedNote(name);
  return html`<li class="card"><svg class="music" role="img" aria-label="${label}" viewBox="0 ${top - above} ${system.width} ${above + bottom - top + below}">${new Html(system.content)}</svg>
<p class="fingered ${VERDICT_SIGNS[verdict].className}">${fingeredOn(note, reader)}</p>
<p class="name"><span>${player.horn.natural ? signed(verdict, name) : name}</span>${!isOpen && html` <span class="quiet">${naturalText(namedFrom, fingering!, reader)}</span>`}</p></li>
`;
}
