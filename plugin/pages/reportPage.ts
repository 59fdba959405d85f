/** The report: a horn part as a marked proof, its findings beside their bars, its fingerings in a table. */

import {
  ENGLISH_READER,
  type Examination,
  type Finding,
  findingText,
  isHandState,
  marksFor,
  printPitch,
  type Severity,
} from '../../core/index.ts';
import { readScore } from '../musicxml/read/readScore.ts';
import type { HornPart, Score } from '../musicxml/read/score.ts';
import { writeMarks } from '../musicxml/write/writeMarks.ts';
import { type EngravedSystem, type Engraving, engrave } from './engrave.ts';
import { fingeringTable } from './fingeringTable.ts';
import { glissandoPath, glissandoPicture } from './glissandoPicture.ts';
import { type Html, html } from './html.ts';
import { barId, noteId, onePartText } from './onePart.ts';
import { pageText } from './page.ts';
import { type Remark, systemView } from './systemView.ts';

/** What a report is made from. */
export interface ReportSource {
  /** The file's name, as the page's title has it. */
  readonly name: string;
  readonly score: Score;
  /** One for each of `score.horns`. */
  readonly examinations: readonly Examination[];
  /** What the reader should know of how the score was read. */
  readonly remarks: readonly string[];
}

/** A system's width on the page, in tenths of a millimetre at full size: about an A4 page of a part. */
const SYSTEM_WIDTH = 1750;

/**
 * The text of a report: one page that needs no other file, no network and no script.
 * @throws {EngravingError} when a part cannot be engraved
 */
export async function reportPage({ name, score, examinations, remarks }: ReportSource): Promise<string> {
  const marked = markedScore(score, examinations);
  const parts: PartView[] = [];
  let number = 0;
  for (let i = 0; i < examinations.length; i++) {
    const horn = marked.horns[i]!;
    const view = await partView(marked, horn, examinations[i]!, i, number);
    number += view.remarkCount;
    parts.push(view);
  }
  const { horn } = examinations[0]!.settings;
  return pageText({
    title: `Stopped notes in ${name}`,
    header: html`<h1>Stopped notes in ${name}</h1>
<p>Read for a ${horn.label}. ${countsText(examinations)}</p>
${remarks.map((remark) => html`<p class="quiet">${remark}</p>`)}
<nav aria-label="On this page"><ul>${parts.map(({ link }) => link)}<li><a href="#reading">How to read this page</a></li></ul></nav>`,
    main: html`${parts.map(({ content }) => content)}${HOW_TO_READ}`,
    footer: html`<p>Made by Bellhand. The page needs no network and no script; print it as it is.</p>`,
    engravings: parts.map(({ engraving }) => engraving).filter((engraving) => engraving !== null),
  });
}

/** The score with the marks of all its horns, read again, so that places are those of the marked text. */
function markedScore(score: Score, examinations: readonly Examination[]): Score {
  const parts = examinations.map((examination, i) => ({
    partId: score.horns[i]!.id,
    marks: marksFor(examination),
  }));
  return readScore(writeMarks(score, parts), { parts: score.horns.map(({ id }) => id) });
}

interface PartView {
  readonly link: Html;
  readonly content: Html;
  /** Null for a part with nothing to show. */
  readonly engraving: Engraving | null;
  readonly remarkCount: number;
}

async function partView(
  marked: Score,
  horn: HornPart,
  examination: Examination,
  part: number,
  numbered: number,
): Promise<PartView> {
  const { findings, notes } = examination;
  const id = `part-${part + 1}`;
  const used = notes.filter(({ reading }) => isHandState(reading.state));
  if (used.length + findings.length === 0) return quietPart(horn.name, id);
  const flagged = [...new Set(findings.map(({ noteIndex }) => noteIndex))];
  const engraving = await engrave(onePartText(marked, horn, part, flagged), {
    width: SYSTEM_WIDTH,
    keepsBreaks: false,
  });
  const remarks = findings.map((finding, i) => remarkOf(finding, examination, part, numbered + i + 1));
  const measures = new Map(notes.map(({ note }) => [barId(part, note.measureIndex), note.measure]));
  const busyBars = new Set(used.map(({ note }) => barId(part, note.measureIndex)));
  return {
    link: html`<li><a href="#${id}">${horn.name}</a></li><li><a href="#${id}-fingerings">Fingerings of ${horn.name}</a></li>`,
    content: html`<section aria-labelledby="${id}"><h2 id="${id}">${horn.name}</h2>
<p>${partCounts(examination)}</p>
${systemViews(engraving.systems, shareOut(engraving.systems, remarks), busyBars, measures)}
</section>
<section aria-labelledby="${id}-fingerings"><h2 id="${id}-fingerings">Fingerings of ${horn.name}</h2>
${fingeringTable(examination, part)}</section>`,
    engraving,
    remarkCount: remarks.length,
  };
}

function quietPart(name: string, id: string): PartView {
  return {
    link: html`<li><a href="#${id}">${name}</a></li>`,
    content: html`<section aria-labelledby="${id}"><h2 id="${id}">${name}</h2><p>Nothing is stopped in this part.</p></section>`,
    engraving: null,
    remarkCount: 0,
  };
}

/** So many systems in a row without a stopped note are folded away. */
const FOLDED_FROM = 3;

function systemViews(
  systems: readonly EngravedSystem[],
  shares: readonly (readonly Remark[])[],
  busyBars: ReadonlySet<string>,
  measures: ReadonlyMap<string, string>,
): readonly Html[] {
  const isWide = shares.every((remarks) => remarks.length === 0);
  const isQuiet = systems.map(
    ({ bars }, i) => shares[i]!.length === 0 && ![...bars.keys()].some((bar) => busyBars.has(bar)),
  );
  const view = (i: number) =>
    systemView(systems[i]!, shares[i]!, systemLabel([systems[i]!], measures), isWide);
  const views: Html[] = [];
  for (let i = 0; i < systems.length; ) {
    let end = i;
    while (end < systems.length && isQuiet[end]) end += 1;
    const run = systems.slice(i, end);
    if (run.length < FOLDED_FROM) {
      views.push(view(i));
      i += 1;
      continue;
    }
    views.push(html`<details><summary>${systemLabel(run, measures)}: nothing stopped</summary>
${run.map((_, k) => view(i + k))}</details>
`);
    i = end;
  }
  return views;
}

const CLASS_NAMES: { readonly [severity in Severity]: Remark['className'] } = {
  impossible: 'no',
  risky: 'doubt',
  advice: 'advice',
};
const SEVERITY_WORDS: { readonly [severity in Severity]: string } = {
  impossible: '× cannot be played',
  risky: '≈ risky',
  advice: 'for the page',
};

function remarkOf(finding: Finding, examination: Examination, part: number, number: number): Remark {
  const { note } = examination.notes[finding.noteIndex]!;
  const { brief, message, remedy } = findingText(finding, ENGLISH_READER);
  const path = glissandoPath(finding, examination);
  const className = CLASS_NAMES[finding.severity];
  const place = `Bar ${note.measure}, beat ${beatText(note.beat)}`;
  return {
    number,
    noteId: noteId(part, finding.noteIndex),
    barId: barId(part, note.measureIndex),
    label: `Bar ${note.measure}: ${brief}`,
    className,
    content: html`<h3><a href="#ring-${number}">${number}. ${place}</a>, ${printPitch(note.written)} <span class="${className}">${SEVERITY_WORDS[finding.severity]}</span></h3>
<p>${message}</p>${path && glissandoPicture(path, `path-${number}`)}<p class="remedy">${remedy}</p>`,
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

function countsText(examinations: readonly Examination[]): string {
  const stopped = examinations
    .flatMap(({ notes }) => notes)
    .filter(({ reading }) => isHandState(reading.state));
  return examinations.length > 1
    ? `${examinations.length} parts, ${plural(stopped.length, 'stopped note')}.`
    : '';
}

function partCounts({ notes, findings }: Examination): Html {
  const stopped = notes.filter(({ reading }) => isHandState(reading.state));
  const of = (wanted: string) => notes.filter(({ verdict }) => verdict === wanted).length;
  const [impossible, risky] = [of('impossible'), of('risky')];
  return html`${plural(stopped.length, 'stopped note')}: <span class="no">${impossible} cannot be played (×)</span>, <span class="doubt">${risky} risky (≈)</span>. ${findings.length === 0 ? 'Nothing was found.' : `${plural(findings.length, 'remark')}, each beside its bar.`}`;
}

function plural(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? '' : 's'}`;
}

const HOW_TO_READ = html`<section aria-labelledby="reading"><h2 id="reading">How to read this page</h2>
<p>Over every stopped note stand two lines. The lower, nearest the note, is what the player fingers: the note to think of and the valves, with T for the B♭ side. The upper, after a small o, is the natural pitch: what would sound on that fingering with the hand open.</p>
<p><span class="no"><span class="sign">×</span>vermillion</span>: no hand can do this as written. <span class="doubt"><span class="sign">≈</span>blue</span>: it can be played with luck. A ring under a note carries the number of the remark beside it; the remark leads back to the ring.</p>
<p>Pitches are written pitches. A drop is how far the hand brings the tone down; “off by” is how far the result lies from the note, + being sharp. A hundred cents (¢) are a semitone.</p></section>`;
