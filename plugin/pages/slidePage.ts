/** The chart for composers as a page: where the moving hand takes every note, and what cannot be written. */
import {
  chartWords,
  ENGLISH_READER,
  fingeringText,
  hornText,
  keyText,
  noteName,
  noteRanges,
  pitchCents,
  type Reader,
  type Settings,
} from '../../core/index.ts';
import { type HandSlides, handSlides } from './handSlides.ts';
import { Html, html } from './html.ts';
import { textWidth } from './letterWidths.ts';
import { pageText } from './page.ts';
import { endsOf, type HandMove, type SlideRow, slideRows, slideScoreText } from './slideScore.ts';
import { type EngravedRow, slidesOnPaper, slidesOnTelephone } from './slideSheet.ts';
import { VERDICT_INKS } from './verdicts.ts';

/** The text of the page. @throws {EngravingError} when there is no engraver */
export async function slidePage(player: Settings, reader: Reader = ENGLISH_READER): Promise<string> {
  const words = chartWords(reader);
  const found = handSlides(player);
  const title = slideTitle(player, reader);
  const reading = readingOf(player, found, reader).join(' ');
  const cannot = statements(found, reader);
  const onPaper = await slidesOnPaper(found.slides, player, roomBeside(title, reading, cannot));
  const onTelephone = await slidesOnTelephone(found.slides, player);
  const section = (move: HandMove) => {
    const drawings = (rows: readonly EngravedRow[]) =>
      rows.filter(({ row }) => row.move === move).map((each) => drawingsOf(each, reader));
    return html`<section aria-labelledby="${move}"><h2 id="${move}">${headingOf(move, reader)}</h2><div class="on-wide">${drawings(onPaper)}</div><div class="on-narrow">${drawings(onTelephone)}</div></section>`;
  };
  return pageText({
    title,
    header: html`<h1>${title}</h1><p>${reading}</p>`,
    main: html`${section('closing')}${section('opening')}<section class="cannot" aria-labelledby="cannot"><h2 id="cannot">${words.cannotBeWritten}</h2><ul>${cannot.map((text) => html`<li>${text}</li>`)}</ul></section>`,
    footer: html`<p>${words.madeBy}</p>`,
    engravings: [...onPaper, ...onTelephone].map(({ engraving }) => engraving),
    style: STYLE,
    reader,
  });
}

/** What is printed on A4, in millimetres: the sheet without its margins, letters and lines of texts, and what headings take. */
const SHEET_MM = { width: 188, height: 279 } as const;
const TITLE_MM = { letters: 6, line: 6.6 } as const;
const TEXT_MM = { letters: 3.1, line: 3.75 } as const;
const HEADING_MM = 8.5;
/** The foot, and what keeps texts apart. */
const REST_MM = 12;

/** The room that the texts leave for music, in widths of the sheet. */
function roomBeside(title: string, reading: string, cannot: readonly string[]): number {
  const height = (text: string, { letters, line }: typeof TITLE_MM | typeof TEXT_MM) =>
    line * Math.ceil((textWidth(text) * letters) / SHEET_MM.width);
  const texts = [reading, ...cannot].reduce((sum, text) => sum + height(text, TEXT_MM), 0);
  return (SHEET_MM.height - height(title, TITLE_MM) - texts - 3 * HEADING_MM - REST_MM) / SHEET_MM.width;
}

/** The same as a score. */
export function slideChartText(player: Settings, reader: Reader = ENGLISH_READER): string {
  const found = handSlides(player);
  return slideScoreText(slideRows(found.slides), player, {
    title: slideTitle(player, reader),
    lines: readingOf(player, found, reader),
    hasHeadings: true,
  });
}

/** `What the hand bends: double horn in F and B♭`. */
export function slideTitle({ horn }: Settings, reader: Reader = ENGLISH_READER): string {
  return chartWords(reader).slidesOn(hornText(horn, reader));
}

function headingOf(move: HandMove, reader: Reader): string {
  const { asTheHandCloses, asTheHandOpens } = chartWords(reader);
  return move === 'closing' ? asTheHandCloses : asTheHandOpens;
}

/** How to read the chart of this horn, with nothing that it does not show. */
function readingOf({ horn }: Settings, { slides }: HandSlides, reader: Reader): readonly string[] {
  const words = chartWords(reader);
  const sides = horn.sides.filter(
    ({ name, valvePrefix }) =>
      valvePrefix !== '' &&
      slides.some(
        ({ fingering: { tube } }) => tube.side.name === name && tube.side.valvePrefix === valvePrefix,
      ),
  );
  return [
    horn.natural ? words.slidesReadingNatural : words.slidesReading,
    ...sides.map(({ valvePrefix, name }) => words.prefix(valvePrefix, keyText(name, reader))),
    ...(horn.sides.some(({ stoppingValveCents }) => stoppingValveCents > 0)
      ? [words.withoutStoppingValve]
      : []),
    ...(slides.some(({ isSure }) => !isSure) ? [words.withLuck] : []),
  ];
}

function statements({ slides, none, notReached }: HandSlides, reader: Reader): string[] {
  const words = chartWords(reader);
  const lists = [
    [none['too-low'], words.tooLow],
    [none.between, words.between],
    [none['too-high'], words.tooHigh],
    [notReached, words.notReached],
  ] as const;
  const falls = slides.map((slide) => {
    const [from, to] = endsOf(slide, 'closing');
    return (pitchCents(from) - pitchCents(to)) / 100;
  });
  return [
    words.neverUp,
    ...(falls.length > 0 ? [words.widest(Math.max(...falls))] : []),
    ...lists.filter(([notes]) => notes.length > 0).map(([notes, say]) => say(noteRanges(notes, reader))),
  ];
}

/** The first system of a row names all of it; screen readers need not hear it again for every line. */
function drawingsOf({ row, engraving }: EngravedRow, reader: Reader): readonly Html[] {
  const label = inWords(row, reader);
  return engraving.systems.map(({ width, height, content }, i) => {
    const role = i === 0 ? html`role="img" aria-label="${label}"` : html`aria-hidden="true"`;
    return html`<svg class="music" ${role} viewBox="0 0 ${width} ${height}">${new Html(content)}</svg>`;
  });
}

function inWords({ move, slides }: SlideRow, reader: Reader): string {
  const words = chartWords(reader);
  const pairs = slides.map((slide) => {
    const [from, to] = endsOf(slide, move);
    return words.slide(noteName(from, reader), noteName(to, reader), fingeringText(slide.fingering, reader));
  });
  return `${headingOf(move, reader)}: ${pairs.join('; ')}`;
}

const STYLE = `
main { --no: ${VERDICT_INKS.impossible}; --doubt: ${VERDICT_INKS.risky}; }
section { max-width: 66rem; } section svg.music { background: #fbfaf6; color: #1d1c1a; }
svg.music .mNum { display: none; }
header p { max-width: 66rem; text-wrap: pretty; } .cannot ul { margin: .3rem 0; padding-left: 1.2rem; }
@media print {
  @page { size: portrait; margin: 8mm 11mm; }
  /* A millimetre on A4; on other paper all grows or shrinks with it. */
  :root { --mm: min(100vw / ${SHEET_MM.width}, 100vh / ${SHEET_MM.height + 2}); }
  body { width: calc(${SHEET_MM.width} * var(--mm)); height: calc(100vh - 2 * var(--mm)); margin: 0 auto; display: flex; flex-direction: column; font-size: calc(${TEXT_MM.letters} * var(--mm)); line-height: 1.2; }
  header, footer { width: 100%; } header { padding: 0; } header p { max-width: none; margin: 0; }
  h1 { font-size: calc(${TITLE_MM.letters} * var(--mm)); line-height: 1.1; margin: 0; } h2 { font-size: calc(4 * var(--mm)); margin: calc(1 * var(--mm)) 0; padding: 0; }
  main { width: 100%; flex: 1; display: flex; flex-direction: column; justify-content: space-between; } main section, .on-wide { display: contents; }
  section svg.music { background: none; flex: none; } .cannot ul { margin: 0; } .cannot h2 { margin-top: calc(1 * var(--mm)); }
  footer { padding: calc(1 * var(--mm)) 0 0; font-size: calc(2.6 * var(--mm)); } footer p { margin: 0; }
}
`;
