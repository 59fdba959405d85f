/** The verdict in one box: how many notes cannot be played or are risky, and where. */
import {
  countNotes,
  countText,
  type Examination,
  type Reader,
  reportWords,
  totalOf,
  type Verdict,
} from '../../core/index.ts';
import { barLinks, barsOfNotes } from './barLinks.ts';
import { type Html, html } from './html.ts';
import { VERDICT_SIGNS } from './verdicts.ts';

/** @param examinations of all parts, by their place on the page */
export function verdictBox(examinations: readonly Examination[], reader: Reader): Html {
  const words = reportWords(reader);
  const counts = countNotes(examinations);
  const impossible = counts.stopped.impossible + counts.open.impossible;
  const risky = counts.stopped.risky + counts.open.risky;
  if (totalOf(counts.stopped) + impossible + risky === 0)
    return html`<div class="box"><p class="lead">${words.nothingStopped}</p></div>`;
  return html`<div class="box${impossible > 0 && ' alarm'}">
${impossible > 0 ? line('impossible', words.cannotBePlayed(impossible), examinations, reader) : html`<p class="lead">${words.canBePlayed}.</p>`}
${risky > 0 && line('risky', words.areRisky(risky), examinations, reader)}
<p class="quiet counts">${countText(counts, reader)}</p></div>`;
}

function line(wanted: Verdict, text: string, examinations: readonly Examination[], reader: Reader): Html {
  const { sign, className } = VERDICT_SIGNS[wanted];
  return html`<p class="lead"><span class="${className}"><span class="sign" aria-hidden="true">${sign}</span>${text}</span>: ${placesOf(wanted, examinations, reader)}</p>`;
}

/** `bars 3, 7`; with several parts a line for each that has some, `Horn 1, bar 3`. */
function placesOf(wanted: Verdict, examinations: readonly Examination[], reader: Reader): Html {
  const pieces = examinations.flatMap(({ passage, notes }, part) => {
    const bars = barsOfNotes(notes.filter(({ verdict }) => verdict === wanted).map(({ note }) => note));
    if (bars.length === 0) return [];
    const name = examinations.length > 1 ? `${passage.name}, ` : '';
    return [html`${name}${reportWords(reader).bars(bars.length)} ${barLinks(part, bars)}`];
  });
  return pieces.length > 1
    ? html`${pieces.map((piece) => html`<span class="place">${piece}</span> `)}`
    : html`${pieces}`;
}
