/** A part's music on the page: systems with remarks and their neighbours open, the rest folded away. */
import {
  ENGLISH_READER,
  type Examination,
  type Finding,
  findingText,
  isHandState,
  printPitch,
  reportWords,
} from '../../core/index.ts';
import type { HornPart, Score } from '../musicxml/read/score.ts';
import { type EngravedSystem, type Engraving, engrave } from './engrave.ts';
import { SEVERITY_CLASSES, SEVERITY_WORDS } from './findingEntries.ts';
import { glissandoPath, glissandoPicture } from './glissandoPicture.ts';
import { type Html, html } from './html.ts';
import { barId, noteId, onePartText, type PagePlace } from './onePart.ts';
import { type Remark, systemView } from './systemView.ts';

/**
 * Widths of a system in tenths of a millimetre at full size: about an A4 page of a part, and what a telephone shows
 * in the same size of print.
 */
const SYSTEM_WIDTHS = { wide: 1750, narrow: 800 } as const;

/** For which screen the music is engraved. */
export type Screen = keyof typeof SYSTEM_WIDTHS;

export interface MusicOfPart {
  /** The score with its marks. */
  readonly marked: Score;
  readonly horn: HornPart;
  readonly examination: Examination;
  /** The part's place on the page, from 0. */
  readonly part: number;
  /** Remarks of the parts before, which are numbered already. */
  readonly numbered: number;
  /** True to fold nothing away. */
  readonly isWhole: boolean;
}

/** @throws {EngravingError} when the part cannot be engraved */
export async function partMusic(
  music: MusicOfPart,
  screen: Screen,
): Promise<{ readonly content: Html; readonly engraving: Engraving }> {
  const { marked, horn, examination, part, numbered } = music;
  const place: PagePlace = screen === 'wide' ? `${part}` : `${part}n`;
  const flagged = [...new Set(examination.findings.map(({ noteIndex }) => noteIndex))];
  const engraving = await engrave(onePartText(marked, horn, place, flagged), {
    width: SYSTEM_WIDTHS[screen],
    keepsBreaks: false,
  });
  const remarks = examination.findings.map((finding, i) => {
    const number = numbered + i + 1;
    const isMore = isMoreOf(finding, examination.findings[i + 1]);
    return remarkOf(
      finding,
      examination,
      place,
      number,
      screen === 'wide' ? `${number}` : `${number}n`,
      isMore,
    );
  });
  return {
    content: html`<div class="on-${screen}">${systemViews(engraving.systems, remarks, music, place)}</div>`,
    engraving,
  };
}

function systemViews(
  systems: readonly EngravedSystem[],
  remarks: readonly Remark[],
  { examination: { notes }, isWhole }: MusicOfPart,
  place: PagePlace,
): readonly Html[] {
  const shares = shareOut(systems, remarks);
  const measures = new Map(notes.map(({ note }) => [barId(place, note.measureIndex), note.measure]));
  const doubtful = new Set<string>();
  const stopped = new Map<string, number>();
  for (const { note, reading, verdict } of notes) {
    const bar = barId(place, note.measureIndex);
    if (verdict !== 'sure') doubtful.add(bar);
    if (isHandState(reading.state)) stopped.set(bar, (stopped.get(bar) ?? 0) + 1);
  }
  const isTold = systems.map(
    ({ bars }, i) => shares[i]!.length > 0 || [...bars.keys()].some((bar) => doubtful.has(bar)),
  );
  const isOpen = (i: number) => isWhole || isTold[i - 1] || isTold[i] || isTold[i + 1];
  const isWide = remarks.length === 0;
  const view = (i: number) =>
    systemView(systems[i]!, shares[i]!, systemLabel([systems[i]!], measures), isWide);
  const views: Html[] = [];
  for (let i = 0; i < systems.length; ) {
    let end = i;
    while (end < systems.length && !isOpen(end)) end += 1;
    if (end === i) {
      views.push(view(i));
      i += 1;
      continue;
    }
    const run = systems.slice(i, end);
    const count = run
      .flatMap(({ bars }) => [...bars.keys()])
      .reduce((sum, bar) => sum + (stopped.get(bar) ?? 0), 0);
    views.push(html`<details><summary>${systemLabel(run, measures)}: ${reportWords(ENGLISH_READER).folded(count)}</summary>
${run.map((_, k) => view(i + k))}</details>
`);
    i = end;
  }
  return views;
}

/** True for findings of the same kind with the same remedy in a row: the remedy is told after the last. */
function isMoreOf(finding: Finding, next: Finding | undefined): boolean {
  return (
    next?.id === finding.id &&
    findingText(next, ENGLISH_READER).remedy === findingText(finding, ENGLISH_READER).remedy
  );
}

function remarkOf(
  finding: Finding,
  examination: Examination,
  place: PagePlace,
  number: number,
  id: string,
  isRemedyBelow: boolean,
): Remark {
  const { note } = examination.notes[finding.noteIndex]!;
  const { brief, message, remedy } = findingText(finding, ENGLISH_READER);
  const path = glissandoPath(finding, examination);
  const className = SEVERITY_CLASSES[finding.severity];
  return {
    number,
    id,
    noteId: noteId(place, finding.noteIndex),
    barId: barId(place, note.measureIndex),
    label: `Bar ${note.measure}: ${brief}`,
    className,
    content: html`<h4><a href="#ring-${id}">${number}. Bar ${note.measure}, beat ${beatText(note.beat)}</a>, ${printPitch(note.written)} <span class="${className}">${SEVERITY_WORDS[finding.severity]}</span></h4>
<p>${message}</p>${path && glissandoPicture(path, `path-${id}`)}${!isRemedyBelow && html`<p class="remedy">${remedy}</p>`}`,
  };
}

/** Beats as they are spoken of: `2`, `2½`, or with a decimal. */
function beatText(beat: number): string {
  const whole = Math.floor(beat);
  const rest = Math.round((beat - whole) * 1000) / 1000;
  const fraction = FRACTIONS[rest];
  return fraction === undefined ? String(Math.round(beat * 100) / 100) : `${whole}${fraction}`;
}

const FRACTIONS: { readonly [rest: number]: string } = {
  0: '',
  0.25: '¼',
  0.5: '½',
  0.75: '¾',
  0.333: '⅓',
  0.667: '⅔',
};

/** Gives every remark to the system that has its bar; a bar inside a rest of many bars goes to the system before it. */
function shareOut(systems: readonly EngravedSystem[], remarks: readonly Remark[]): readonly Remark[][] {
  const shares: Remark[][] = systems.map(() => []);
  let last = 0;
  for (const remark of remarks) {
    const at = systems.findIndex(({ bars }) => bars.has(remark.barId));
    if (at >= 0) last = at;
    shares[last]!.push(remark);
  }
  return shares;
}

/** Names systems by their bars. Bars of rest have no notes to take a number from. */
function systemLabel(systems: readonly EngravedSystem[], measures: ReadonlyMap<string, string>): string {
  const bars = systems.flatMap((system) => [...system.bars.keys()]);
  const numbers = bars.map((id) => measures.get(id) ?? String(Number(id.replace(/^.*-/, '')) + 1));
  const [first, last] = [numbers[0], numbers[numbers.length - 1]];
  if (first === undefined) return 'Music';
  return first === last ? `Bar ${first}` : `Bars ${first} to ${last}`;
}
