/** The report: the verdict first, then what was found and what to do, then the music as a marked proof, and its fingerings. */

import {
  ENGLISH_READER,
  type Examination,
  hornText,
  isHandState,
  marksFor,
  reportWords,
} from '../../core/index.ts';
import { readScore } from '../musicxml/read/readScore.ts';
import type { HornPart, Score } from '../musicxml/read/score.ts';
import { scoreTitle } from '../musicxml/read/scoreTitle.ts';
import { writeMarks } from '../musicxml/write/writeMarks.ts';
import type { Engraving } from './engrave.ts';
import { entryList } from './findingEntries.ts';
import { fingeringTable } from './fingeringTable.ts';
import { type Html, html } from './html.ts';
import { pageText } from './page.ts';
import { partMusic } from './partMusic.ts';
import { verdictBox } from './verdictBox.ts';

/** What a report is made from. */
export interface ReportSource {
  /** The file's name, told at the foot of the page. */
  readonly name: string;
  readonly score: Score;
  /** One for each of `score.horns`. */
  readonly examinations: readonly Examination[];
  /** What the reader should know of how the score was read. */
  readonly remarks: readonly string[];
  /** True to show all the music; without it, what is in order is folded away. */
  readonly isWhole?: boolean;
  /** True to let glissandos that the hand cannot make be heard as it makes them. */
  readonly hasSound?: boolean;
}

/**
 * The text of a report: one page that needs no other file, no network and no script.
 * @throws {EngravingError} when a part cannot be engraved
 */
export async function reportPage(source: ReportSource): Promise<string> {
  const { name, score, examinations, remarks, isWhole = false, hasSound = false } = source;
  const words = reportWords(ENGLISH_READER);
  const marked = markedScore(score, examinations);
  const parts: PartView[] = [];
  let numbered = 0;
  for (let part = 0; part < examinations.length; part++) {
    const examination = examinations[part]!;
    parts.push(
      await partView(marked, marked.horns[part]!, examination, part, numbered, { isWhole, hasSound }),
    );
    numbered += examination.findings.length;
  }
  const [first, ...others] = score.horns;
  const title = scoreTitle(score);
  const part = others.length === 0 ? first!.name : null;
  const heading = [title, part].filter((piece) => piece !== null).join(', ') || first!.name;
  const { horn } = examinations[0]!.settings;
  return pageText({
    title: words.stoppedNotesIn(heading),
    header: html`<h1>${heading}</h1>
<p>${words.readFor(hornText(horn, ENGLISH_READER))}</p>
${verdictBox(examinations)}
${remarks.map((remark) => html`<p class="quiet">${remark}</p>`)}
<div class="on-paper reading">${READING}</div>
<nav aria-label="On this page"><ul>${parts.map(({ link }) => link)}<li><a href="#reading">How to read this page</a></li></ul></nav>`,
    main: html`${parts.map(({ content }) => content)}<section class="on-screen" aria-labelledby="reading"><h2 id="reading">How to read this page</h2>${READING}</section>`,
    footer: html`<p>Made by Bellhand from ${name}. The page needs no network and no script; print it as it is.</p>`,
    engravings: parts.flatMap(({ engravings }) => engravings),
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
  /** None for a part with nothing to show. */
  readonly engravings: readonly Engraving[];
}

async function partView(
  marked: Score,
  horn: HornPart,
  examination: Examination,
  part: number,
  numbered: number,
  { isWhole, hasSound }: Required<Pick<ReportSource, 'isWhole' | 'hasSound'>>,
): Promise<PartView> {
  const { findings, notes } = examination;
  const id = `part-${part + 1}`;
  const isUsed = notes.some(({ reading }) => isHandState(reading.state));
  if (!isUsed && findings.length === 0) return quietPart(horn.name, id);
  const music = { marked, horn, examination, part, numbered, isWhole };
  const wide = await partMusic(music, 'wide');
  const narrow = await partMusic(music, 'narrow');
  const words = reportWords(ENGLISH_READER);
  return {
    link: html`<li><a href="#${id}">${horn.name}</a></li><li><a href="#${id}-fingerings">Fingerings of ${horn.name}</a></li>`,
    content: html`<section aria-labelledby="${id}"><h2 id="${id}">${horn.name}: ${words.findings}</h2>
${entryList(examination, part, hasSound)}
<h3 class="over-music">The music</h3>
${wide.content}${narrow.content}
</section>
<section aria-labelledby="${id}-fingerings"><h2 id="${id}-fingerings">Fingerings of ${horn.name}</h2>
${fingeringTable(examination, part)}</section>`,
    engravings: [wide.engraving, narrow.engraving],
  };
}

function quietPart(name: string, id: string): PartView {
  return {
    link: html`<li><a href="#${id}">${name}</a></li>`,
    content: html`<section aria-labelledby="${id}"><h2 id="${id}">${name}</h2><p>${reportWords(ENGLISH_READER).nothingStopped}</p></section>`,
    engravings: [],
  };
}

const READING = html`<p>Over every stopped note stand two lines. The lower, nearest the note, is what the player fingers: the note to think of and the valves, with T for the B♭ side. The upper, in round brackets, is the natural pitch: what would sound on that fingering with the hand open.</p>
<p><span class="no"><span class="sign">×</span>vermillion</span>: no hand can do this as written. <span class="doubt"><span class="sign">≈</span>blue</span>: it can be played with luck. A ring under a note carries the number of the remark beside it; the remark leads back to the ring.</p>
<p>Pitches are written pitches. A drop is how far the hand brings the tone down; “off by” is how far the result lies from the note, + being sharp. A hundred cents (¢) are a semitone.</p>`;
