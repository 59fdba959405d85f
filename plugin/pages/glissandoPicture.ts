/** A small picture of a glissando that the hand cannot make: where the music wants to go and where the hand goes. */

import type { Examination } from '../../core/examine.ts';
import type { ExaminedNote } from '../../core/examinedNote.ts';
import { closedness } from '../../core/handStates.ts';
import { type Pitch, pitchCents, printPitch } from '../../core/pitch.ts';
import { closesTo, opensTo, type Reach } from '../../core/rules/handJoin.ts';
import type { Finding } from '../../core/rules/rule.ts';
import { type Html, html } from './html.ts';

/** What a picture shows, in written pitch. */
export interface GlissandoPath {
  readonly from: Pitch;
  readonly wanted: Pitch;
  /** Where the hand takes the first note, or null when nowhere that has a name. */
  readonly reached: Reach | null;
  readonly closes: boolean;
}

/** The findings that are about a glissando, slide or bend. */
const ABOUT_GLISSANDI = ['closes-upward', 'opens-downward', 'no-common-tube'];

/** The path behind a finding, or null when it is about something else. */
export function glissandoPath(finding: Finding, { notes }: Examination): GlissandoPath | null {
  if (!ABOUT_GLISSANDI.includes(finding.id)) return null;
  const to = notes[finding.noteIndex]!;
  const from = notes.find(({ note }) =>
    note.joins.some(
      ({ kind, to: end }) => end === finding.noteIndex && (kind === 'glissando' || kind === 'bend'),
    ),
  );
  if (!from) return null;
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
export function glissandoPicture({ from, wanted, reached, closes }: GlissandoPath, id: string): Html {
  const cents = [from, wanted, ...(reached ? [reached.written] : [])].map(pitchCents);
  const [low, high] = [Math.min(...cents), Math.max(...cents)];
  const yOf = (pitch: Pitch) =>
    BOTTOM - ((pitchCents(pitch) - low) / Math.max(100, high - low)) * (BOTTOM - TOP);
  const [startY, wantedY] = [yOf(from), yOf(wanted)];
  const [startWord, endWord] = closes ? ['open', 'stopped'] : ['stopped', 'open'];
  const description = [
    `The music leads from ${printPitch(from)} ${startWord} to ${printPitch(wanted)} ${endWord}.`,
    reached
      ? `The hand, ${closes ? 'closing' : 'opening'}, takes ${printPitch(from)} to ${printPitch(reached.written)} on ${reached.fingering.printed}.`
      : 'The hand reaches no note that has a name.',
  ].join(' ');
  const middle = (LEFT + RIGHT) / 2;
  return html`<svg class="path" role="img" aria-labelledby="${id}" viewBox="0 0 ${WIDTH} ${HEIGHT}"><title id="${id}">${description}</title>
<g fill="none" stroke="currentColor" stroke-width="1" opacity=".35"><path d="M${LEFT} 8V${HEIGHT - 8}M${RIGHT} 8V${HEIGHT - 8}"/></g>
<path class="no" fill="none" stroke="currentColor" stroke-width="2.5" stroke-dasharray="6 5" d="M${LEFT} ${startY}L${RIGHT - 4} ${wantedY}"/>
<g class="no" stroke="currentColor" stroke-width="2.5"><path d="M${RIGHT - 6} ${wantedY - 6}l12 12m0-12l-12 12"/></g>
${reached && html`<path fill="none" stroke="currentColor" stroke-width="2.5" d="M${LEFT} ${startY}C${middle} ${startY} ${middle} ${yOf(reached.written)} ${RIGHT} ${yOf(reached.written)}"/><circle cx="${RIGHT}" cy="${yOf(reached.written)}" r="4.5" fill="currentColor"/>`}
<circle cx="${LEFT}" cy="${startY}" r="4.5" fill="currentColor"/>
<text x="${LEFT - 10}" y="${startY + 4}" text-anchor="end">${printPitch(from)}</text><text x="${LEFT - 10}" y="${startY + 18}" text-anchor="end" opacity=".75">${startWord}</text>
<text class="no" x="${RIGHT + 12}" y="${clear(wantedY, reached && yOf(reached.written)) + 4}">${printPitch(wanted)} wanted</text>
${reached && html`<text x="${RIGHT + 12}" y="${yOf(reached.written) + 4}">${printPitch(reached.written)} played</text>`}
</svg>`;
}

/** Keeps the label of the wanted note off the label of the reached one. */
function clear(wantedY: number, reachedY: number | null): number {
  if (reachedY === null || Math.abs(wantedY - reachedY) >= 14) return wantedY;
  return wantedY <= reachedY ? reachedY - 14 : reachedY + 14;
}
