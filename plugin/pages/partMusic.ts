/** A part's music on the page: systems with remarks and their neighbours open, the rest folded away. */
import {
  barText,
  capital,
  type Examination,
  type Finding,
  findingText,
  isHandState,
  noteName,
  placeText,
  type Reader,
  reportWords,
} from '../../core/index.ts';
import type { HornPart, Score } from '../musicxml/read/score.ts';
import { type EngravedSystem, type Engraving, engrave } from './engrave.ts';
import { SEVERITY_CLASSES, severityWords } from './findingEntries.ts';
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
  readonly reader: Reader;
}

/** @throws {EngravingError} when the part cannot be engraved */
export async function partMusic(
  music: MusicOfPart,
  screen: Screen,
): Promise<{ readonly content: Html; readonly engraving: Engraving }> {
  const { marked, horn, examination, part, numbered, reader } = music;
  const place: PagePlace = screen === 'wide' ? `${part}` : `${part}n`;
  const flagged = [...new Set(examination.findings.map(({ noteIndex }) => noteIndex))];
  const engraving = await engrave(onePartText(marked, horn, place, flagged), {
    width: SYSTEM_WIDTHS[screen],
    keepsBreaks: false,
  });
  const remarks = examination.findings.map((finding, i) => {
    const number = numbered + i + 1;
    const isMore = isMoreOf(finding, examination.findings[i + 1], reader);
    return remarkOf(
      finding,
      examination,
      place,
      number,
      screen === 'wide' ? `${number}` : `${number}n`,
      isMore,
      reader,
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
  { examination: { notes }, isWhole, reader }: MusicOfPart,
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
    systemView(systems[i]!, shares[i]!, systemLabel([systems[i]!], measures, reader), isWide, reader);
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
    views.push(html`<details><summary>${systemLabel(run, measures, reader)}: ${reportWords(reader).folded(count)}</summary>
${run.map((_, k) => view(i + k))}</details>
`);
    i = end;
  }
  return views;
}

/** True for findings of the same kind with the same remedy in a row: the remedy is told after the last. */
function isMoreOf(finding: Finding, next: Finding | undefined, reader: Reader): boolean {
  return next?.id === finding.id && findingText(next, reader).remedy === findingText(finding, reader).remedy;
}

function remarkOf(
  finding: Finding,
  examination: Examination,
  place: PagePlace,
  number: number,
  id: string,
  isRemedyBelow: boolean,
  reader: Reader,
): Remark {
  const { note } = examination.notes[finding.noteIndex]!;
  const { brief, message, remedy } = findingText(finding, reader);
  const path = glissandoPath(finding, examination);
  const className = SEVERITY_CLASSES[finding.severity];
  return {
    number,
    id,
    noteId: noteId(place, finding.noteIndex),
    barId: barId(place, note.measureIndex),
    label: `${capital(barText(note.measure, reader))}: ${brief}`,
    className,
    content: html`<h4><a href="#ring-${id}">${number}. ${capital(placeText(note.measure, note.beat, reader))}</a>, ${noteName(note.written, reader)} <span class="${className}">${severityWords(finding.severity, reader)}</span></h4>
<p>${message}</p>${path && glissandoPicture(path, `path-${id}`, reader)}${!isRemedyBelow && html`<p class="remedy">${remedy}</p>`}`,
  };
}

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
function systemLabel(
  systems: readonly EngravedSystem[],
  measures: ReadonlyMap<string, string>,
  reader: Reader,
): string {
  const { page } = reportWords(reader);
  const bars = systems.flatMap((system) => [...system.bars.keys()]);
  const numbers = bars.map((id) => measures.get(id) ?? String(Number(id.replace(/^.*-/, '')) + 1));
  const [first, last] = [numbers[0], numbers[numbers.length - 1]];
  if (first === undefined || last === undefined) return page.music;
  return capital(first === last ? barText(first, reader) : page.barsTo(first, last));
}
