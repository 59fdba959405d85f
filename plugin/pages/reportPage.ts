/** The report: the verdict first, then what was found and what to do, then the music as a marked proof, and its fingerings. */

import {
  ENGLISH_READER,
  type Examination,
  hornText,
  isHandState,
  keyText,
  marksFor,
  type Reader,
  reportWords,
  SHOW_USUAL,
} from '../../core/index.ts';
import { readScore } from '../musicxml/read/readScore.ts';
import type { HornPart, Score } from '../musicxml/read/score.ts';
import { scoreHeading } from '../musicxml/read/scoreTitle.ts';
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
  /** Whoever reads the page; English by default. */
  readonly reader?: Reader;
}

/**
 * The text of a report: one page that needs no other file, no network and no script.
 * @throws {EngravingError} when a part cannot be engraved
 */
export async function reportPage(source: ReportSource): Promise<string> {
  const {
    name,
    score,
    examinations,
    remarks,
    isWhole = false,
    hasSound = false,
    reader = ENGLISH_READER,
  } = source;
  const words = reportWords(reader);
  const marked = markedScore(score, examinations, reader);
  const parts: PartView[] = [];
  let numbered = 0;
  for (let part = 0; part < examinations.length; part++) {
    const examination = examinations[part]!;
    parts.push(
      await partView(marked, marked.horns[part]!, examination, part, numbered, { isWhole, hasSound, reader }),
    );
    numbered += examination.findings.length;
  }
  const heading = scoreHeading(score) || score.horns[0]!.name;
  const { horn } = examinations[0]!.settings;
  return pageText({
    title: words.stoppedNotesIn(heading),
    header: html`<h1>${heading}</h1>
<p>${words.readFor(hornText(horn, reader))}</p>
${verdictBox(examinations, reader)}
${remarks.map((remark) => html`<p class="quiet">${remark}</p>`)}
<div class="on-paper reading">${readingOf(reader)}</div>
<nav aria-label="${words.page.onThisPage}"><ul>${parts.map(({ link }) => link)}<li><a href="#reading">${words.page.howToRead}</a></li></ul></nav>`,
    main: html`${parts.map(({ content }) => content)}<section class="on-screen" aria-labelledby="reading"><h2 id="reading">${words.page.howToRead}</h2>${readingOf(reader)}</section>`,
    footer: html`<p>${words.page.madeFrom(name)}</p>`,
    engravings: parts.flatMap(({ engravings }) => engravings),
    reader,
  });
}

/** The score with the marks of all its horns, read again, so that places are those of the marked text. */
function markedScore(score: Score, examinations: readonly Examination[], reader: Reader): Score {
  const parts = examinations.map((examination, i) => ({
    partId: score.horns[i]!.id,
    marks: marksFor(examination, SHOW_USUAL, reader),
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
  { isWhole, hasSound, reader }: Required<Pick<ReportSource, 'isWhole' | 'hasSound' | 'reader'>>,
): Promise<PartView> {
  const { findings, notes } = examination;
  const id = `part-${part + 1}`;
  const isUsed = notes.some(({ reading }) => isHandState(reading.state));
  if (!isUsed && findings.length === 0) return quietPart(horn.name, id, reader);
  const music = { marked, horn, examination, part, numbered, isWhole, reader };
  const wide = await partMusic(music, 'wide');
  const narrow = await partMusic(music, 'narrow');
  const words = reportWords(reader);
  return {
    link: html`<li><a href="#${id}">${horn.name}</a></li><li><a href="#${id}-fingerings">${words.page.fingeringsOf(horn.name)}</a></li>`,
    content: html`<section aria-labelledby="${id}"><h2 id="${id}">${horn.name}: ${words.findings}</h2>
${entryList(examination, part, hasSound, reader)}
<h3 class="over-music">${words.page.music}</h3>
${wide.content}${narrow.content}
</section>
<section aria-labelledby="${id}-fingerings"><h2 id="${id}-fingerings">${words.page.fingeringsOf(horn.name)}</h2>
${fingeringTable(examination, part, reader)}</section>`,
    engravings: [wide.engraving, narrow.engraving],
  };
}

function quietPart(name: string, id: string, reader: Reader): PartView {
  return {
    link: html`<li><a href="#${id}">${name}</a></li>`,
    content: html`<section aria-labelledby="${id}"><h2 id="${id}">${name}</h2><p>${reportWords(reader).nothingStopped}</p></section>`,
    engravings: [],
  };
}

function readingOf(reader: Reader): Html {
  const { lines, vermillion, impossible, blue, risky, rings, pitches } = reportWords(reader).reading;
  return html`<p>${lines(keyText('Bb', reader))}</p>
<p><span class="no"><span class="sign">×</span>${vermillion}</span>: ${impossible} <span class="doubt"><span class="sign">≈</span>${blue}</span>: ${risky} ${rings}</p>
<p>${pitches}</p>`;
}
