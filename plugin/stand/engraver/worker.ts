/** The worker that engraves, and composes courses: what is large or slow, away from the page's own thread. */
import {
  composeCourse,
  type Examination,
  examine,
  isHandState,
  marksFor,
  readerOf,
} from '../../../core/index.ts';
import { narrowText } from '../../etude/narrowText.ts';
import { sheetText } from '../../etude/sheetText.ts';
import { treeText } from '../../etude/treeText.ts';
import { inKey } from '../../musicxml/read/keyed.ts';
import { readScore } from '../../musicxml/read/readScore.ts';
import { writeMarks } from '../../musicxml/write/writeMarks.ts';
import { type Engraving, EngravingError, engrave } from '../../pages/engrave.ts';
import { partMusic } from '../../pages/partMusic.ts';
import type { Answer, Order, SystemPicture } from './orders.ts';

/** One order after another: the engraver holds one score at a time. */
let earlier: Promise<void> = Promise.resolve();

addEventListener('message', ({ data }: MessageEvent<Order>) => {
  earlier = earlier.then(() => obey(data));
});

async function obey(order: Order): Promise<void> {
  try {
    if (order.kind === 'sheet') await engraveSheet(order);
    else if (order.kind === 'course') composePages(order);
    else await engravePart(order);
  } catch (fault) {
    tell({ kind: 'fault', ticket: order.ticket, isUnreadable: fault instanceof EngravingError });
  }
}

async function engraveSheet(order: Extract<Order, { kind: 'sheet' }>): Promise<void> {
  const { ticket, text, width, isNarrow } = order;
  const look = { width, keepsBreaks: true, fillsLines: isNarrow };
  const engraving = await engrave(isNarrow ? narrowText(text) : text, look);
  const systems = engraving.systems.map(({ width, height, content }): SystemPicture => {
    return { width, height, content, isFirst: content.includes('class="tempo"') };
  });
  tell({ kind: 'systems', ticket, systems, ...shared(engraving) });
}

function composePages({ ticket, request, reader, copy }: Extract<Order, { kind: 'course' }>): void {
  const result = composeCourse({ ...request, reader: readerOf(reader.language, reader.noteNaming) });
  if (!result.ok) {
    tell({ kind: 'refused', ticket, reason: result.reason });
    return;
  }
  const pages = result.sheets.map((sheet) => ({
    title: sheet.title,
    lines: sheet.lines,
    trains: sheet.trains,
    text: sheetText(sheet, request.player, copy, treeText),
  }));
  tell({ kind: 'course', ticket, pages });
}

/** A part with its remarks, as the report has it; one part of a score after another. */
async function engravePart(order: Extract<Order, { kind: 'part' }>): Promise<void> {
  const { ticket, text, partIds, key, settings, show, screens } = order;
  const reader = readerOf(order.reader.language, order.reader.noteNaming);
  const score = readScore(text, { parts: partIds });
  const examinations = score.horns.map(({ passage }) => examine(inKey(passage, key), settings));
  const marks = score.horns.map(({ id }, i) => ({
    partId: id,
    marks: marksFor(examinations[i]!, show, reader),
  }));
  const marked = readScore(writeMarks(score, marks), { parts: partIds });
  for (const screen of screens) {
    let numbered = 0;
    for (let part = 0; part < examinations.length; part++) {
      const examination = examinations[part]!;
      if (isWorthShowing(examination)) {
        const horn = marked.horns[part]!;
        const music = { marked, horn, examination, part, numbered, isWhole: true, reader };
        const { content, engraving } = await partMusic(music, screen);
        tell({ kind: 'part', ticket, part, screen, html: content.text, ...shared(engraving) });
      }
      numbered += examination.findings.length;
    }
  }
  tell({ kind: 'done', ticket });
}

function isWorthShowing({ findings, notes }: Examination): boolean {
  return findings.length > 0 || notes.some(({ reading }) => isHandState(reading.state));
}

function shared({ glyphs, fontFace }: Engraving) {
  return { glyphs: [...glyphs], fontFace };
}

function tell(answer: Answer): void {
  postMessage(answer);
}
