/** The report in words. */
import type { ReportWords } from './areas/report.ts';
import { report as de } from './de.ts';
import { report as en } from './en.ts';
import { report as es } from './es.ts';
import { report as fr } from './fr.ts';
import { report as it } from './it.ts';
import type { Language, Reader } from './language.ts';

const WORDS: { readonly [language in Language]: ReportWords } = { en, de, fr, it, es };

/** What a report says to a reader of a whole part, before and between its music. */
export function reportWords({ language }: Reader): ReportWords {
  return WORDS[language];
}

export type { ReportWords } from './areas/report.ts';
