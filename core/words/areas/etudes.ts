/** What études and lessons say to their player. */

/** What one kind of étude is called and trains. */
export interface KindWords {
  /** In a few words, as in a list. */
  readonly name: string;
  readonly title: string;
  /** One line that says what it trains, without a word that rules a hand: it stands over the staff. */
  readonly trains: string;
  /** The same for a natural horn, where the hand makes what valves do not. */
  readonly trainsOnNaturalHorn: string;
}

/** Everything on a sheet but the music, whose tempo words are the trade's Italian everywhere. */
export interface EtudeWords {
  /** By the kind's word. */
  readonly kinds: { readonly [kind: string]: KindWords };
  readonly lesson: string;
  lessonOfWeek(week: number): string;
  /** The name at the head of a part. @param key as noteNames names it */
  hornIn(key: string): string;
  naturalHornIn(key: string): string;
  /** `C major`. @param tonic as noteNames names it */
  readonly key: { readonly [mode in 'major' | 'minor']: (tonic: string) => string };
  level(level: number, seed: number, difficulty: number): string;
  numbers(keys: string, semitones: number, changesPerMinute: number): string;
  readonly noRisk: string;
  risks(count: number): string;
  /** How the marks are read on a natural horn, and on one with a stopping valve. */
  readonly naturalLegend: string;
  readonly valveLegend: string;
  /** When to rest, and when to stop. */
  readonly advice: readonly [string, string];
  /** Why there is no étude, and what to choose instead; without a full stop. @param seconds as the language prints them */
  noTime(seconds: string, tempo: number): string;
  /** By what the kind needs. @param horn without an article @param count of those there are, from 0 */
  readonly tooFew: {
    readonly [needs in 'notes' | 'bends']: (low: string, high: string, horn: string, count: number) => string;
  };
  noHome(tonic: string, low: string, high: string, horn: string): string;
}
