/** The report of a score, as tests look at it, and that of the bundled part. */
import { readFileSync } from 'node:fs';
import { examine } from '../../core/rules/examine.ts';
import { readScore } from '../../plugin/musicxml/index.ts';
import { reportPage } from '../../plugin/pages/reportPage.ts';

export const DEMO = readFileSync(
  new URL('../../plugin/batch/demo/low-water.musicxml', import.meta.url),
  'utf8',
);

export async function reportOf(text: string, name = 'low-water.musicxml') {
  const score = readScore(text);
  const examinations = score.horns.map(({ passage }) => examine(passage));
  return { examinations, page: await reportPage({ name, score, examinations, remarks: [] }) };
}

/** The bundled part's. */
export const demo = await reportOf(DEMO);
