/** The report of a long part, against what the engraver alone takes to draw it. */
import { examine } from '../../core/rules/examine.ts';
import { readScore } from '../../plugin/musicxml/index.ts';
import { engrave } from '../../plugin/pages/engrave.ts';
import { onePartText } from '../../plugin/pages/onePart.ts';
import { reportPage } from '../../plugin/pages/reportPage.ts';
import { generatePart } from '../musicxml/generate.ts';
import type { BenchRow } from './benchRow.ts';

const NOTES = 2000;
const LIMIT_MS = 10_000;
const LIMIT_BYTES = 5_000_000;
/** A report has its music twice, for wide screens and for narrow ones, in tenths of a millimetre. */
const WIDTHS = [1750, 800] as const;
/** Reading, examining, marking and the page may cost no more than drawing the bare part for both once more. */
const MOST_RATIO = 2;
const ROUNDS = 3;

export async function reportBench(): Promise<BenchRow[]> {
  const text = generatePart(NOTES);
  const report = async (): Promise<string> => {
    const score = readScore(text);
    const examinations = score.horns.map(({ passage }) => examine(passage));
    return reportPage({ name: 'part.musicxml', score, examinations, remarks: [] });
  };
  const draw = async (): Promise<void> => {
    const score = readScore(text);
    for (const width of WIDTHS)
      await engrave(onePartText(score, score.horns[0]!, '0', []), { width, keepsBreaks: false });
  };
  const page = await report();
  await draw();
  const times: { report: number[]; draw: number[] } = { report: [], draw: [] };
  for (let round = 0; round < ROUNDS; round++) {
    times.report.push(await milliseconds(report));
    times.draw.push(await milliseconds(draw));
  }
  const [reported, drawn] = [median(times.report), median(times.draw)];
  const bytes = Buffer.byteLength(page);
  const name = `report of ${NOTES.toLocaleString('en')} notes`;
  return [
    {
      name,
      value: reported,
      unit: 'ms',
      baseline: 'reading and engraving the bare part at both widths',
      ratio: reported / drawn,
      limit: `under ${LIMIT_MS.toLocaleString('en')} ms, ratio at most ${MOST_RATIO}`,
      ok: reported < LIMIT_MS && reported / drawn <= MOST_RATIO,
    },
    {
      name: `${name}, the page`,
      value: bytes / 1e6,
      unit: 'MB',
      baseline: '',
      limit: 'under 5 MB',
      ok: bytes < LIMIT_BYTES,
    },
  ];
}

async function milliseconds(work: () => Promise<unknown>): Promise<number> {
  const start = performance.now();
  await work();
  return performance.now() - start;
}

function median(times: readonly number[]): number {
  return times.slice().sort((a, b) => a - b)[Math.floor(times.length / 2)]!;
}
