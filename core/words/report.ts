/** The report in words. */
import type { ReportWords } from './areas/report.ts';
import type { Reader } from './language.ts';
import { PAGE_WORDS } from './languages.ts';

/** What a report says to a reader of a whole part, before and between its music. */
export function reportWords({ language }: Reader): ReportWords {
  return PAGE_WORDS[language].report;
}

export type { ReportWords } from './areas/report.ts';
