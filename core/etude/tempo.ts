/** Tempos, and their words in the trade's Italian. */
import type { Meter } from './bar.ts';
import { FASTEST_TEMPO, SLOWEST_TEMPO } from './etude.ts';
import type { KindOfEtude } from './kinds/kind.ts';
import type { Level } from './levels.ts';

/**
 * How quick a kind goes, in the meter's beats a minute: a quarter is as long in every meter.
 * @param pace how much quicker than usual, as a factor
 */
export function tempoIn({ tempo }: KindOfEtude, level: Level, { beatQuarters }: Meter, pace = 1): number {
  return Math.min(FASTEST_TEMPO, Math.max(SLOWEST_TEMPO, Math.round((tempo[level] * pace) / beatQuarters)));
}

/** From how many beats a minute each word is used. @source commonPractice (metronomes differ by a few beats) */
const WORDS: readonly (readonly [from: number, word: string])[] = [
  [40, 'Lento'],
  [54, 'Adagio'],
  [66, 'Andante'],
  [84, 'Moderato'],
  [104, 'Allegretto'],
  [120, 'Allegro'],
];

/** As in `Adagio sostenuto`. @param beatsPerMinute 40–132 */
export function tempoWords(beatsPerMinute: number, character: string): string {
  const [, word] = WORDS.filter(([from]) => beatsPerMinute >= from).slice(-1)[0] ?? WORDS[0]!;
  return `${word} ${character}`;
}
