/** The back of the wall chart: every note with its cents and other fingerings, and where the hand bends the open ones. */
import {
  briefReasonText,
  chartWords,
  type Fingering,
  noteName,
  type Pitch,
  pitchCents,
  type Reader,
  type Settings,
  UNCHANGED_CENTS,
} from '../../core/index.ts';
import type { ChartNote } from './chartNotes.ts';
import { audibleCents, centsText, closedBy, fingeredText, naturalText } from './fingeringTable.ts';
import { type HandSlide, handSlides } from './handSlides.ts';
import { type Html, html } from './html.ts';
import { VERDICT_SIGNS } from './verdicts.ts';

/** Other ways beyond so many help nobody. */
const MOST_OTHERS = 4;

/** The back of the chart. */
export function chartBack(notes: readonly ChartNote[], player: Settings, reader: Reader): Html {
  const words = chartWords(reader);
  const half = halfOf(notes);
  const { slides } = handSlides(player);
  return html`<section class="back" aria-labelledby="back"><h2 id="back">${words.back}</h2><div class="tables">
${noteTable(notes.slice(0, half), reader)}${noteTable(notes.slice(half), reader)}${slides.length > 0 && slideTable(slides, reader)}</div>
<p class="legend">${words.centsReading(UNCHANGED_CENTS)}</p></section>`;
}

/** Where the second of two tables of about the same height begins: a row with many other ways takes two lines. */
function halfOf(notes: readonly ChartNote[]): number {
  const lines = notes.map(({ examined }) => (examined.candidates.length > MOST_OTHERS ? 1.6 : 1));
  const whole = lines.reduce((sum, each) => sum + each, 0);
  let above = 0;
  return lines.findIndex((each) => {
    above += each;
    return above > whole / 2;
  });
}

function noteTable(notes: readonly ChartNote[], reader: Reader): Html {
  const { back, heads } = chartWords(reader);
  return html`<table><caption class="unseen">${back}</caption><thead><tr><th scope="col">${heads.note}</th><th scope="col">${heads.fingering}</th><th scope="col">${heads.natural}</th><th scope="col" class="number">${heads.falls}</th><th scope="col">${heads.otherWays}</th></tr></thead>
<tbody>${notes.map((note) => noteRow(note, reader))}</tbody></table>`;
}

function noteRow({ examined }: ChartNote, reader: Reader): Html {
  const { note, namedFrom, fingering, candidates, verdict, reading, player } = examined;
  const chosen = fingering!;
  const { sign, className } = VERDICT_SIGNS[verdict];
  const falls = Math.round(chosen.dropCents) === 0 ? '' : centsText(chosen.dropCents);
  const why = chosen.reasons.filter((reason) => reason !== 'off-pitch')[0];
  const others = candidates.filter((other) => other !== chosen).slice(0, MOST_OTHERS);
  return html`<tr><th scope="row">${noteName(note.written, reader)}</th>
<td class="${className}">${sign !== '' && html`<span aria-hidden="true">${sign}</span> `}${player.horn.natural ? html`${reading.state === 'open' ? 'o' : closedBy(chosen.band)}${small(chosen)}` : way(namedFrom, chosen, reader)}</td><td>${falls === '' ? '' : naturalText(namedFrom, chosen, reader)}</td><td class="number">${why !== undefined && html`<small>${briefReasonText(why, reader)}</small> `}${why === 'lip-only' ? '' : falls}</td>
<td>${others.map((other, i) => html`${i > 0 && ', '}${way(namedFrom, other, reader)}`)}</td></tr>
`;
}

/** A fingering, with its cents in small where they are heard. */
function way(namedFrom: Pitch, fingering: Fingering, reader: Reader): Html {
  return html`${fingeredText(namedFrom, fingering, reader)}${small(fingering)}`;
}

function small(fingering: Fingering): Html | null {
  const cents = audibleCents(fingering);
  return cents === '' ? null : html` <small>${cents}</small>`;
}

/** Open notes, each with where the hand brings it down to. */
function slideTable(slides: readonly HandSlide[], reader: Reader): Html {
  const { heads } = chartWords(reader);
  const rows = new Map<number, HandSlide[]>();
  for (const slide of slides) {
    const cents = pitchCents(slide.open.note.written);
    rows.set(cents, [...(rows.get(cents) ?? []), slide]);
  }
  return html`<table><caption class="unseen">${heads.fallsTo}</caption><thead><tr><th scope="col">${heads.open}</th><th scope="col">${heads.fallsTo}</th></tr></thead>
<tbody>${[...rows.values()].map((ofNote) => slideRow(ofNote, reader))}</tbody></table>`;
}

function slideRow(slides: readonly HandSlide[], reader: Reader): Html {
  return html`<tr><th scope="row">${noteName(slides[0]!.open.note.written, reader)}</th><td>${slides.map(
    ({ stopped, fingering, isSure }, i) =>
      html`${i > 0 && ', '}<span class="${isSure ? '' : 'doubt'}">${isSure ? '' : '≈ '}${noteName(stopped.note.written, reader)} ${fingering.printed || closedBy(fingering.band)}</span>`,
  )}</td></tr>
`;
}
