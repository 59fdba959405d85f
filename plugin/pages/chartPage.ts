/** The fingering chart as a page: one card for each note, made for an A4 sheet on the stand. */

import {
  type FingeringReason,
  pitchCents,
  printPitch,
  type Settings,
  signedCents,
} from '../../core/index.ts';
import { type ChartNote, chartNotes } from './chartNotes.ts';
import { chartScoreText } from './chartScore.ts';
import { type EngravedSystem, type Engraving, engrave } from './engrave.ts';
import { centsText, fingeredText, naturalText } from './fingeringTable.ts';
import { Html, html } from './html.ts';
import { pageText } from './page.ts';
import { VERDICT_INKS, VERDICT_SIGNS } from './verdicts.ts';

/** Width of one card's staff, in tenths of a millimetre at full size. */
const CARD_WIDTH = 460;
/** Written G3: below, players read the bass clef, here at its real pitch. @source commonPractice */
const BASS_CLEF_BELOW_CENTS = 5500;
/** Other ways beyond so many do not fit a card. */
const MOST_OTHERS = 3;

/** The text of a chart for one player's horn. */
export async function chartPage(player: Settings): Promise<string> {
  const notes = chartNotes(player);
  const title = chartTitle(player);
  const look = { title, notesALine: 1, hasDetails: false } as const;
  // Each clef by itself: engraved together, a change of clef would be announced at the end of the line before.
  const isLow = ({ examined }: ChartNote) => pitchCents(examined.note.written) < BASS_CLEF_BELOW_CENTS;
  const engravings: Engraving[] = [];
  for (const clef of ['bass', 'treble'] as const) {
    const those = notes.filter((note) => isLow(note) === (clef === 'bass'));
    if (those.length === 0) continue;
    const text = chartScoreText(those, player, { ...look, clef });
    engravings.push(await engrave(text, { width: CARD_WIDTH, keepsBreaks: true }));
  }
  const systems = engravings.flatMap((engraving) => engraving.systems);
  return pageText({
    title,
    header: html`<h1>${title}</h1><p>${SUMMARY}</p>`,
    main: html`<h2 class="unseen" id="chart">The chart</h2><ol class="cards" aria-labelledby="chart">${notes.map((note, i) => card(note, systems[i]!))}</ol>`,
    footer: html`<p>${NOTES_BELOW}</p>`,
    engravings,
    style: CHART_STYLE,
  });
}

/** The chart's title: `Stopped notes on a double horn in F and B♭`. */
export function chartTitle({ horn }: Settings): string {
  return `Stopped notes on a ${horn.label}`;
}

function card({ examined }: ChartNote, system: EngravedSystem): Html {
  const { note, namedFrom, fingering, candidates, verdict } = examined;
  const { sign, className } = VERDICT_SIGNS[verdict];
  const name = printPitch(note.written);
  const chosen = fingering!;
  const others = candidates.filter((other) => other !== chosen);
  const ways = others
    .slice(0, MOST_OTHERS)
    .map(
      (other) =>
        html`<li>${fingeredText(namedFrom, other)} <span class="quiet">${signedCents(other.deviationCents)}</span></li>`,
    );
  const rest =
    others.length > MOST_OTHERS ? html`<li class="quiet">${others.length - MOST_OTHERS} more</li>` : null;
  return html`<li class="card paper"><svg class="music" role="img" aria-label="${name}, stopped" viewBox="0 0 ${system.width} ${system.height}">${new Html(system.content)}</svg>
<h3><span class="name">${name}</span> <span class="${className}"><span aria-hidden="true">${sign}</span> ${fingeredText(namedFrom, chosen)}</span></h3>
<p>${naturalText(namedFrom, chosen)}, ${fallText(chosen.dropCents)}${Math.round(chosen.deviationCents) !== 0 && html`, <span class="quiet">${signedCents(chosen.deviationCents)}</span>`}</p>
${chosen.reasons.map((reason) => html`<p class="why ${className}">${SHORT_REASONS[reason]}</p>`)}
${others.length > 0 && html`<ul aria-label="Other ways to play ${name}">${ways}${rest}</ul>`}</li>
`;
}

function fallText(dropCents: number): string {
  return Math.round(dropCents) === 0 ? 'does not fall' : `falls ${centsText(dropCents)}`;
}

/** Two words for a card; the foot of the page says more. */
const SHORT_REASONS: { readonly [reason in FingeringReason]: string } = {
  'wants-to-rise': 'slips upward',
  'lip-only': 'lip only',
  'below-the-hand': 'out of reach',
  'nothing-changes': 'no bend',
  'off-pitch': 'off pitch',
  'unusual-degree': 'unusual degree',
};

const SUMMARY =
  'Written notes, lowest first. In bold: the note to finger and the valves, T being the B♭ side. In round brackets: the natural pitch, which sounds when the hand opens, and how far the hand brings it down, in cents (¢).';
const NOTES_BELOW =
  'Small numbers are cents off the written note, + being sharp. Below each note stand other ways to play it, the more usual first. ≈ marks what is played with luck: so low that the closing hand lets the tone slip upward, or that the lip alone holds it; so high that closing bends nothing; or off pitch. The bass clef is meant as it sounds on the page, not an octave low. Made by Bellhand.';

const CHART_STYLE = `
.unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
.cards { list-style: none; margin: 1.5rem 0 0; padding: 0; display: grid; grid-template-columns: repeat(auto-fill, minmax(11rem, 1fr)); gap: .75rem; }
.card { padding: .4rem .8rem .7rem; line-height: 1.3; --no: ${VERDICT_INKS.impossible}; --doubt: ${VERDICT_INKS.risky}; --faint: #5f5b54; }
.card svg.music { min-width: 0; } .card .mNum { display: none; }
.card h3 { font-size: 1.15rem; display: flex; justify-content: space-between; gap: .5rem; white-space: nowrap; }
.card .name { font-weight: normal; }
.card p { font-size: .88rem; margin: .1rem 0 0; }
.card .why { font-size: .8rem; line-height: 1.2; }
.card ul { list-style: none; margin: .3rem 0 0; padding: .25rem 0 0; border-top: 1px solid #d8d4c8; font-size: .82rem; }
@media print {
  @page { margin: 11mm; }
  body { font-size: 8pt; line-height: 1.2; }
  h1 { font-size: 15pt; } header p { max-width: none; font-size: 8pt; margin: 0; }
  .cards { grid-template-columns: repeat(6, 1fr); gap: 1mm 4mm; margin-top: 2mm; }
  .card { padding: 0 0 .8mm; border-bottom: 1px solid #bbb; line-height: 1.15; }
  .card h3 { font-size: 10pt; gap: 1mm; } .card p { font-size: 7.5pt; margin: 0; }
  .card .why { font-size: 7pt; line-height: 1.1; } .card ul { font-size: 7pt; margin: 0; padding: 0; border: 0; }
  .card li { display: inline; } .card li + li::before { content: ", "; }
  footer { padding-top: 2mm; font-size: 7pt; } footer p { max-width: none; margin: 0; }
}
`;
