/** The fingerings of a part, each once, in order of pitch, with the bars that use it. */

import {
  closingText,
  ENGLISH_READER,
  type Examination,
  type ExaminedNote,
  type Fingering,
  fingeredPitch,
  isHandState,
  naturalName,
  naturalPitch,
  noteClassName,
  type Pitch,
  pitchCents,
  printPitch,
  type Reader,
  signedCents,
  UNCHANGED_CENTS,
} from '../../core/index.ts';
import { type BarPlace, barLinks } from './barLinks.ts';
import { type Html, html } from './html.ts';
import { VERDICT_SIGNS } from './verdicts.ts';

interface Row {
  readonly examined: ExaminedNote;
  /** Measure indexes that use it, in order, each once. */
  readonly bars: BarPlace[];
  count: number;
}

/** Bars beyond so many are counted, not listed. */
const MOST_BARS = 8;
/** Alternatives beyond so many help nobody at the stand. */
const MOST_ALTERNATIVES = 4;

/**
 * The table of one part.
 * @param part the part's place on the page, from 0
 */
export function fingeringTable(examination: Examination, part: number): Html {
  const rows = rowsOf(examination);
  if (rows.length === 0) return html`<p>No note of this part is stopped.</p>`;
  return html`<div class="scroll" role="region" aria-label="Table of the fingerings of ${examination.passage.name}" tabindex="0"><table class="by-rows">
<caption>Every stopped note once for each way it is played, from the lowest. Pitches are written pitches.</caption>
<thead><tr><th scope="col">Note</th><th scope="col">Hand</th><th scope="col">Fingered as</th><th scope="col">Natural pitch</th><th scope="col" class="number">Drop</th><th scope="col" class="number">Off by</th><th scope="col">Verdict</th><th scope="col">Other ways</th><th scope="col">Bars</th></tr></thead>
<tbody>${rows.map((row) => tableRow(row, part))}</tbody></table></div>`;
}

function tableRow({ examined, bars, count }: Row, part: number): Html {
  const { note, namedFrom, reading, fingering, candidates, verdict } = examined;
  const { sign, words, className } = VERDICT_SIGNS[verdict];
  const others = candidates.filter((other) => other !== fingering);
  return html`<tr><th scope="row">${printPitch(note.written)}</th><td data-label="Hand">${reading.state.replace('-', ' ')}</td>
<td data-label="Fingered as">${fingering ? fingeredText(namedFrom, fingering) : '–'}</td><td data-label="Natural pitch">${fingering ? naturalText(namedFrom, fingering) : '–'}</td>
<td data-label="Drop" class="number">${fingering ? centsText(fingering.dropCents) : ''}</td><td data-label="Off by" class="number">${fingering ? signedCents(fingering.deviationCents) : ''}</td>
<td data-label="Verdict" class="${className}"><span class="sign" aria-hidden="true">${sign}</span>${words}</td>
<td data-label="Other ways">${otherWays(namedFrom, others)}</td><td data-label="Bars">${barList(bars, count, part)}</td></tr>`;
}

/** Fingered note and valves: `B 2`; on a natural horn the degree of closing stands first. */
export function fingeredText(written: Pitch, fingering: Fingering, reader: Reader = ENGLISH_READER): string {
  const band = fingering.band && closingText(fingering.band, reader);
  return [band, noteClassName(fingeredPitch(written, fingering), reader), fingering.printed]
    .filter((piece) => piece !== null && piece !== '')
    .join(' ');
}

/** The natural pitch in round brackets: `(C♯)`. */
export function naturalText(written: Pitch, fingering: Fingering, reader: Reader = ENGLISH_READER): string {
  return `(${naturalName(naturalPitch(written, fingering), reader)})`;
}

/** Other ways to play a note, the usual first: `1 (+12), T23 (−8)`, in cents off. */
export function otherWays(written: Pitch, others: readonly Fingering[]): string {
  if (others.length === 0) return '–';
  const named = others
    .slice(0, MOST_ALTERNATIVES)
    .map((other) => `${fingeredText(written, other)} (${signedCents(other.deviationCents)})`);
  return (
    named.join(', ') +
    (others.length > MOST_ALTERNATIVES ? `, ${others.length - MOST_ALTERNATIVES} more` : '')
  );
}

/** How far a fingering is off, where that is heard: `+31`, else nothing. */
export function audibleCents({ deviationCents }: Fingering): string {
  return Math.abs(deviationCents) < UNCHANGED_CENTS ? '' : signedCents(deviationCents);
}

/** Cents without a sign: `167`. */
export function centsText(cents: number): string {
  return `${Math.round(cents)} ¢`;
}

function barList(bars: Row['bars'], count: number, part: number): Html {
  const links = barLinks(part, bars.slice(0, MOST_BARS));
  const more = bars.length > MOST_BARS ? ` and ${bars.length - MOST_BARS} more` : '';
  return html`${links}${more}${count > bars.length ? ` (${count} notes)` : ''}`;
}

function rowsOf({ notes }: Examination): readonly Row[] {
  const rows = new Map<string, Row>();
  for (const examined of notes) {
    const { note, reading, fingering, verdict } = examined;
    if (!isHandState(reading.state)) continue;
    const key = [
      printPitch(note.written),
      reading.state,
      fingering?.printed,
      fingering?.harmonic,
      fingering?.band,
      verdict,
      examined.soundingCents,
    ].join(' ');
    const row = rows.get(key) ?? { examined, bars: [], count: 0 };
    rows.set(key, row);
    row.count += 1;
    if (row.bars[row.bars.length - 1]?.index !== note.measureIndex) {
      row.bars.push({ index: note.measureIndex, number: note.measure });
    }
  }
  return [...rows.values()].sort(
    (a, b) => pitchCents(a.examined.note.written) - pitchCents(b.examined.note.written),
  );
}
