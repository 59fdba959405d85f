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
import { type Engraving, engrave } from './engrave.ts';
import { type HandSlides, handSlides } from './handSlides.ts';
import { Html, html } from './html.ts';
import { pageText } from './page.ts';
import { endsOf, type HandMove, type SlideRow, slideRows, slideScoreText } from './slideScore.ts';
import { VERDICT_INKS } from './verdicts.ts';

/** Width of a system in tenths of a millimetre at full size: a little more than an A4 sheet, which is printed smaller. */
const SYSTEM_WIDTH = 2350;

/** The text of the page. @throws {EngravingError} when there is no engraver */
export async function slidePage(player: Settings, reader: Reader = ENGLISH_READER): Promise<string> {
  const words = chartWords(reader);
  const found = handSlides(player);
  const title = slideTitle(player, reader);
  const rows = slideRows(found.slides);
  const engravings: Engraving[] = [];
  const sections: Html[] = [];
  for (const move of ['closing', 'opening'] as const) {
    const systems: Html[] = [];
    for (const row of rows.filter((each) => each.move === move)) {
      const text = slideScoreText([row], player, { title, lines: [], hasHeadings: false });
      const engraving = await engrave(text, { width: SYSTEM_WIDTH, keepsBreaks: true, isClose: true });
      engravings.push(engraving);
      const [first, ...others] = engraving.systems;
      const label = inWords(row, reader);
      // The first of a row names all of it; screen readers need not hear it again for every line.
      systems.push(drawing(first!, html`role="img" aria-label="${label}"`));
      for (const system of others) systems.push(drawing(system, html`aria-hidden="true"`));
    }
    sections.push(
      html`<section aria-labelledby="${move}"><h2 id="${move}">${headingOf(move, reader)}</h2>${systems}</section>`,
    );
  }
  return pageText({
    title,
    header: html`<h1>${title}</h1><p>${readingOf(player, found, reader).join(' ')}</p>`,
    main: html`${sections}<section class="cannot" aria-labelledby="cannot"><h2 id="cannot">${words.cannotBeWritten}</h2><ul>${statements(found, reader).map((text) => html`<li>${text}</li>`)}</ul></section>`,
    footer: html`<p>${words.madeBy}</p>`,
    engravings,
    style: STYLE,
    reader,
  });
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

function drawing({ width, height, content }: Engraving['systems'][number], attributes: Html): Html {
  return html`<svg class="music" ${attributes} viewBox="0 0 ${width} ${height}">${new Html(content)}</svg>`;
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
section > svg.music { background: #fbfaf6; color: #1d1c1a; }
svg.music .mNum { display: none; }
.cannot ul { margin: .3rem 0; padding-left: 1.2rem; }
@media print {
  @page { size: A4 portrait; margin: 8mm 11mm; }
  body { font-size: 8.5pt; line-height: 1.2; }
  h1 { font-size: 15pt; } h2 { font-size: 11pt; margin: 2mm 0 .7mm; } header p { max-width: none; margin: 0; }
  header { padding-top: 0; } section > svg.music { background: none; } .cannot ul { margin: 0; font-size: 8pt; } footer { padding: 1.5mm 0 0; font-size: 7.5pt; } footer p { margin: 0; }
}
`;
