/** A small picture of a glissando that the hand cannot make: where the music wants to go and where the hand goes. */

import {
  closedness,
  closesTo,
  type Examination,
  type ExaminedNote,
  type Finding,
  type Fingering,
  fingeringText,
  noteName,
  opensTo,
  type Pitch,
  pitchCents,
  type Reach,
  type Reader,
  reportWords,
  stateText,
} from '../../core/index.ts';
import { shareOfFall } from './handPath.ts';
import { type Html, html } from './html.ts';

/** What a picture shows, in written pitch. */
export interface GlissandoPath {
  readonly from: Pitch;
  readonly wanted: Pitch;
  /** Where the hand takes the first note, or null when nowhere that has a name. */
  readonly reached: Reach | null;
  readonly closes: boolean;
}

/** The path behind a finding, or null when it is about something else. */
export function glissandoPath(
  { id, noteIndex, otherIndex }: Finding,
  { notes }: Examination,
): GlissandoPath | null {
  if (id !== 'closes-upward' && id !== 'opens-downward' && id !== 'no-common-tube') return null;
  const from = notes[otherIndex!]!;
  const to = notes[noteIndex]!;
  const closes = closedness(to.reading.state) > closedness(from.reading.state);
  return { from: from.note.written, wanted: to.note.written, reached: reachedFrom(from, to, closes), closes };
}

/** Where the hand takes the first note on the fingering it would be played with, else on the first that leads anywhere. */
function reachedFrom(from: ExaminedNote, to: ExaminedNote, closes: boolean): Reach | null {
  const reaches = closes ? closesTo(from, to) : opensTo(from);
  return reaches.find(({ fingering }) => fingering === from.fingering) ?? reaches[0] ?? null;
}

const WIDTH = 300;
const HEIGHT = 132;
const TOP = 22;
const BOTTOM = 110;
const LEFT = 58;
const RIGHT = 210;

/** The picture, with its content in words for those who do not see it. */
export function glissandoPicture(path: GlissandoPath, id: string, reader: Reader): Html {
  const { glissando } = reportWords(reader);
  const named = (pitch: Pitch) => noteName(pitch, reader);
  const { from, wanted, reached, closes } = path;
  const cents = [from, wanted, ...(reached ? [reached.written] : [])].map(pitchCents);
  const low = Math.min(...cents);
  const span = Math.max(100, Math.max(...cents) - low);
  const yOf = (pitch: Pitch) => BOTTOM - ((pitchCents(pitch) - low) / span) * (BOTTOM - TOP);
  const startY = yOf(from);
  const wantedY = yOf(wanted);
  const reachedY = reached && yOf(reached.written);
  const { natural, stopped } = glissando;
  const [startWord, endWord] = closes ? [natural, stopped] : [stopped, natural];
  return html`<svg class="path" role="img" aria-labelledby="${id}" viewBox="0 0 ${WIDTH} ${HEIGHT}"><title id="${id}">${inWords(path, reader)}</title>
<path fill="none" stroke="currentColor" opacity=".35" d="M${LEFT} 8V${HEIGHT - 8}M${RIGHT} 8V${HEIGHT - 8}"/>
<path class="no" fill="none" stroke="currentColor" stroke-width="2.5" stroke-dasharray="6 5" d="M${LEFT} ${startY}L${RIGHT - 4} ${wantedY}"/>
<g class="no" stroke="currentColor" stroke-width="2.5"><path d="M${RIGHT - 6} ${wantedY - 6}l12 12m0-12l-12 12"/></g>
<text class="no" x="${RIGHT + 12}" y="${apart(wantedY, reachedY) + 4}">${glissando.wanted(named(wanted))}</text>
${reached && html`<path fill="none" stroke="currentColor" stroke-width="2.5" d="${curve(reached.fingering, closes, startY, reachedY!)}"/><circle cx="${RIGHT}" cy="${reachedY}" r="4.5" fill="currentColor"/><text x="${RIGHT + 12}" y="${reachedY! + 4}">${named(reached.written)} ${endWord}</text>`}
<circle cx="${LEFT}" cy="${startY}" r="4.5" fill="currentColor"/>
<text x="${LEFT - 10}" y="${startY + 4}" text-anchor="end">${named(from)}</text><text x="${LEFT - 10}" y="${startY + 18}" text-anchor="end">${startWord}</text>
</svg>`;
}

function inWords({ from, wanted, reached, closes }: GlissandoPath, reader: Reader): string {
  const { glissando } = reportWords(reader);
  const named = (pitch: Pitch) => noteName(pitch, reader);
  const [open, stopped] = [stateText('open', reader), stateText('stopped', reader)];
  const [start, end] = closes ? [open, stopped] : [stopped, open];
  const takes = closes ? glissando.closes : glissando.opens;
  const hand = reached
    ? takes(named(from), named(reached.written), fingeringText(reached.fingering, reader))
    : glissando.nowhere;
  return `${glissando.leads(named(from), start, named(wanted), end)} ${hand}`;
}

/** The hand's way from left to right. Opening runs along the way of closing backwards. */
function curve(fingering: Fingering, closes: boolean, startY: number, endY: number): string {
  const shares = shareOfFall(fingering);
  const done = closes ? shares : shares.map((_, i) => 1 - shares[shares.length - 1 - i]!);
  const points = done.map((share, i) => {
    const x = LEFT + (i / (done.length - 1)) * (RIGHT - LEFT);
    return `${Math.round(10 * x) / 10} ${Math.round(10 * (startY + share * (endY - startY))) / 10}`;
  });
  return `M${points.join('L')}`;
}

/** Keeps the label of the wanted note off the label of the reached one. */
function apart(wantedY: number, reachedY: number | null): number {
  if (reachedY === null || Math.abs(wantedY - reachedY) >= 14) return wantedY;
  return wantedY <= reachedY ? reachedY - 14 : reachedY + 14;
}
