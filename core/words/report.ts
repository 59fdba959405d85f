/** The report in words. */
import type { ReportWords } from './areas/report.ts';
import type { Reader } from './language.ts';
import { SAID } from './languages.ts';

/** What a report says to a reader of a whole part, before and between its music. */
export function reportWords({ language }: Pick<Reader, 'language'>): ReportWords {
  return SAID[language].pages.report;
}

export type { ReportWords } from './areas/report.ts';
