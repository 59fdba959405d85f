/** What a page on a stand holds: one étude, or the exercises of a lesson, and what the player is told about them. */

import type { Reader } from '../words/language.ts';
import type { Difficulty } from './difficulty.ts';
import type { Etude } from './etude.ts';

/** A page. */
export interface Sheet {
  readonly title: string;
  /** The horn the part is written for: `Horn in F`, or the crook. */
  readonly instrument: string;
  /** What the player is told, a line each: how hard it is and why, how to read it, when to rest. */
  readonly lines: readonly string[];
  /** Whoever reads the page. */
  readonly reader: Reader;
  /** In the order in which they are practised; numbered where there are several. */
  readonly etudes: readonly Etude[];
  /** One line for each, that says what it trains. */
  readonly trains: readonly string[];
}

/** The mean of several measures, by which sheets are told apart. */
export function meanDifficulty(etudes: readonly Etude[]): Difficulty {
  const mean = (of: keyof Difficulty) =>
    etudes.reduce((sum, { difficulty }) => sum + difficulty[of], 0) / Math.max(1, etudes.length);
  return {
    changesPerMinute: mean('changesPerMinute'),
    rangeSemitones: Math.max(...etudes.map(({ difficulty }) => difficulty.rangeSemitones)),
    leapsInHundred: mean('leapsInHundred'),
    signs: mean('signs'),
    riskyInHundred: mean('riskyInHundred'),
    notesPerMinute: mean('notesPerMinute'),
    longestToneSeconds: Math.max(...etudes.map(({ difficulty }) => difficulty.longestToneSeconds)),
    score: mean('score'),
  };
}
