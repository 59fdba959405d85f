/** Faults of score files in words. */
import type { ScoreWords } from './areas/scores.ts';
import type { Reader } from './language.ts';
import { WORDS } from './languages.ts';

/** What is said to a reader of a score file that cannot be read. */
export function scoreWords({ language }: Reader): ScoreWords {
  return WORDS[language].scores;
}

export type { ScoreWords } from './areas/scores.ts';
