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
import { textWidth } from './letterWidths.ts';
import { pageText } from './page.ts';
import { VERDICT_SIGNS } from './verdicts.ts';

/** Width of one note's staff, in tenths of a millimetre at full size: just wide enough for clef, accidental and note. */
const CARD_WIDTH = 225;
/** Rows of large notes. */
const ROWS = 3;
/** Small notes on a line; fewer are no larger. */
const SMALL_A_LINE = 14;

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
  const small = sizesFor([...low, ...high], SMALL_MM, (STRIP_SHARE * SHEET_MM) / beside, reader);
  const strips: Html[] = [];
  for (const { id, heading, notes: those } of groups) {
    strips.push(
      html`<section style="--share: ${(STRIP_SHARE * those.length) / beside}" aria-labelledby="${id}"><h2 id="${id}">${heading}</h2><ol class="cards small" style="--columns: ${those.length}; ${small}">${await cards(those)}</ol></section>`,
    );
  }
  const large = sizesFor(main, LARGE_MM, SHEET_MM / columns, reader);
  return pageText({
    title,
    header: html`<h1>${title}</h1>`,
    main: html`<section class="front" aria-labelledby="chart"><h2 class="unseen" id="chart">${words.chart}</h2><ol class="cards large" style="--columns: ${columns}; ${large}">${await cards(main)}</ol>
${strips.length > 0 && html`<div class="beside">${strips}</div>`}
<p class="legend">${chartLegend(player, notes, reader).join(' ')}</p></section>
${chartBack(notes, player, reader)}`,
    footer: html`<p>${words.madeBy}</p>`,
    engravings,
    style: CHART_STYLE,
    reader,
  });
}

/** Letters of the fingered notes and of the names below, in millimetres of the A4 sheet: large for a metre's distance. */
const LARGE_MM = { fingered: 12, name: 5 } as const;
const SMALL_MM = { fingered: 7, name: 3.2 } as const;
/** What the notes of a line share on paper, in millimetres, and what is clear between them. */
const SHEET_MM = 277;
const GAP_MM = 1.5;
/** What the small notes take of it; the rest lies between low and high. */
const STRIP_SHARE = 0.97;
/** The sizes of letters at which the longest texts of a line fit their cards, as a style. */
function sizesFor(
  notes: readonly ChartNote[],
  most: { readonly fingered: number; readonly name: number },
  cardMm: number,
  reader: Reader,
): string {
  const fitting = (largest: number, text: (note: ChartNote) => string) => {
    const widest = Math.max(1, ...notes.map((note) => textWidth(text(note))));
    return Math.floor(100 * Math.min(largest, (cardMm - GAP_MM) / widest)) / 100;
  };
  const fingered = fitting(most.fingered, (note) => fingeredOn(note, reader));
  const name = fitting(most.name, (note) => namesBelow(note, reader).join(' '));
  return `--size: ${fingered}; --name: ${name}`;
}

/** What stands large below a note: note and valves, with the sign for luck; on a natural horn how far the hand closes. */
function fingeredOn({ examined }: ChartNote, reader: Reader): string {
  const { namedFrom, fingering, verdict, player, reading } = examined;
  if (player.horn.natural) return reading.state === 'open' ? 'o' : closedBy(fingering!.band);
  return signed(verdict, fingeredText(namedFrom, fingering!, reader));
}

/** Below it, the written note, and the natural pitch of one that is not open. */
function namesBelow({ examined }: ChartNote, reader: Reader): readonly [name: string, natural: string] {
  const { namedFrom, fingering, verdict, player, reading, note } = examined;
  const name = noteName(note.written, reader);
  return [
    player.horn.natural ? signed(verdict, name) : name,
    reading.state === 'open' ? '' : naturalText(namedFrom, fingering!, reader),
  ];
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

/** What the engraver leaves clear around a system, in units of its drawing. */
const EDGE = 250;

function commonFrame(systems: readonly EngravedSystem[]): Frame {
  let above = 0;
  let below = 0;
  for (const { bars, height } of systems)
    for (const { top, bottom } of bars.values()) {
      above = Math.max(above, top - EDGE);
      below = Math.max(below, height - bottom - EDGE);
    }
  return { above, below };
}

function card(note: ChartNote, system: EngravedSystem, { above, below }: Frame, reader: Reader): Html {
  const { reading, verdict, note: printed } = note.examined;
  const name = noteName(printed.written, reader);
  const [staff] = system.bars.values();
  const { left, right, top, bottom } = staff!;
  const isOpen = reading.state === 'open';
  const [printedName, natural] = namesBelow(note, reader);
  const label = isOpen ? name : chartWords(reader).stoppedNote(name);
  return html`<li class="card"><svg class="music" role="img" aria-label="${label}" viewBox="${left} ${top - above} ${right - left} ${above + bottom - top + below}">${new Html(system.content)}</svg>
<p class="fingered ${VERDICT_SIGNS[verdict].className}">${fingeredOn(note, reader)}</p>
<p class="name"><span>${printedName}</span>${natural !== '' && html` <span class="quiet">${natural}</span>`}</p></li>
`;
}
