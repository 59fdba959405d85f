/** The fingerings of a part, each once, in order of pitch, with the bars that use it. */

import {
  type ClosingBand,
  closingText,
  type Examination,
  type ExaminedNote,
  type Fingering,
  fingeredPitch,
  formatPitch,
  isHandState,
  moreText,
  naturalName,
  naturalPitch,
  noteClassName,
  noteName,
  type Pitch,
  pitchCents,
  type Reader,
  reportWords,
  signedCents,
  stateText,
  UNCHANGED_CENTS,
  verdictText,
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
export function fingeringTable(examination: Examination, part: number, reader: Reader): Html {
  const { table } = reportWords(reader);
  const rows = rowsOf(examination);
  if (rows.length === 0) return html`<p>${table.none}</p>`;
  return html`<div class="scroll" role="region" aria-label="${table.labelOf(examination.passage.name)}" tabindex="0"><table class="by-rows">
<caption>${table.caption}</caption>
<thead><tr><th scope="col">${table.note}</th><th scope="col">${table.hand}</th><th scope="col">${table.fingeredAs}</th><th scope="col">${table.natural}</th><th scope="col" class="number">${table.drop}</th><th scope="col" class="number">${table.offBy}</th><th scope="col">${table.verdict}</th><th scope="col">${table.otherWays}</th><th scope="col">${table.bars}</th></tr></thead>
<tbody>${rows.map((row) => tableRow(row, part, reader))}</tbody></table></div>`;
}

function tableRow({ examined, bars, count }: Row, part: number, reader: Reader): Html {
  const { table } = reportWords(reader);
  const { note, namedFrom, reading, fingering, candidates, verdict } = examined;
  const { sign, className } = VERDICT_SIGNS[verdict];
  const others = candidates.filter((other) => other !== fingering);
  return html`<tr><th scope="row">${noteName(note.written, reader)}</th><td data-label="${table.hand}">${stateText(reading.state, reader)}</td>
<td data-label="${table.fingeredAs}">${fingering ? fingeredText(namedFrom, fingering, reader) : '–'}</td><td data-label="${table.natural}">${fingering ? naturalText(namedFrom, fingering, reader) : '–'}</td>
<td data-label="${table.drop}" class="number">${fingering ? centsText(fingering.dropCents) : ''}</td><td data-label="${table.offBy}" class="number">${fingering ? signedCents(fingering.deviationCents) : ''}</td>
<td data-label="${table.verdict}" class="${className}"><span class="sign" aria-hidden="true">${sign}</span>${verdictText(verdict, reader)}</td>
<td data-label="${table.otherWays}">${otherWays(namedFrom, others, reader)}</td><td data-label="${table.bars}">${barList(bars, count, part, reader)}</td></tr>`;
}

/** Fingered note and valves: `B 2`; on a natural horn the degree of closing stands first. */
export function fingeredText(written: Pitch, fingering: Fingering, reader: Reader): string {
  const band = fingering.band && closingText(fingering.band, reader);
  return [band, noteClassName(fingeredPitch(written, fingering), reader), fingering.printed]
    .filter((piece) => piece !== null && piece !== '')
    .join(' ');
}

/** How far a natural horn's hand closes, as its parts have it. */
export function closedBy(band: ClosingBand | null): string {
  return band === null || band === 'full' ? '+' : band;
}

/** The natural pitch in round brackets: `(C♯)`. */
export function naturalText(written: Pitch, fingering: Fingering, reader: Reader): string {
  return `(${naturalName(naturalPitch(written, fingering), reader)})`;
}

/** Other ways to play a note, the usual first: `1 (+12), T23 (−8)`, in cents off. */
export function otherWays(written: Pitch, others: readonly Fingering[], reader: Reader): string {
  if (others.length === 0) return '–';
  const named = others
    .slice(0, MOST_ALTERNATIVES)
    .map((other) => `${fingeredText(written, other, reader)} (${signedCents(other.deviationCents)})`);
  const more = others.length - MOST_ALTERNATIVES;
  return (more > 0 ? [...named, moreText(more, reader)] : named).join(', ');
}

/** How far a fingering is off, where that is heard: `+31`, else nothing. */
export function audibleCents({ deviationCents }: Fingering): string {
  return Math.abs(deviationCents) < UNCHANGED_CENTS ? '' : signedCents(deviationCents);
}

/** Cents without a sign: `167`. */
export function centsText(cents: number): string {
  return `${Math.round(cents)} ¢`;
}

function barList(bars: Row['bars'], count: number, part: number, reader: Reader): Html {
  const links = barLinks(part, bars.slice(0, MOST_BARS));
  const more = bars.length - MOST_BARS;
  const notes = reportWords(reader).table.notes(count);
  return html`${links}${more > 0 && `, ${moreText(more, reader)}`}${count > bars.length && ` (${notes})`}`;
}

function rowsOf({ notes }: Examination): readonly Row[] {
  const rows = new Map<string, Row>();
  for (const examined of notes) {
    const { note, reading, fingering, verdict } = examined;
    if (!isHandState(reading.state)) continue;
    const key = [
      formatPitch(note.written),
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
