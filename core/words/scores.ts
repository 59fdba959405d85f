/** Faults of score files in words. */
import type { ScoreWords } from './areas/scores.ts';
import type { Reader } from './language.ts';

/** What is said to a reader of a score file that cannot be read. */
export function scoreWords({ words }: Reader): ScoreWords {
  return words.scores;
}

export type { ScoreWords } from './areas/scores.ts';
