/** Tempo words, in the trade's Italian. */

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
