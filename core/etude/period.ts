/** Questions and answers: how long phrases are, over which chords they go, in what rhythm, and where they lie. */
import { type Meter, quartersOf } from './bar.ts';
import { CHORDS, type Chord, CLOSE_DEGREES, chordIn, PAUSE_DEGREES, restsIn } from './harmony.ts';
import type { Key } from './key.ts';
import type { Level } from './levels.ts';
import type { Place } from './line.ts';
import { pick, type Random } from './random.ts';
import type { Rhythm, Rhythms } from './rhythms.ts';

/** What one phrase is to be like. */
export interface PhraseWish {
  readonly bars: readonly {
    readonly rhythm: Rhythm;
    readonly meter: Meter;
    readonly chord: Chord;
    readonly key: Key;
  }[];
  /** The chords it begins with, as in its home key. */
  readonly start: readonly Chord[];
  readonly ends: Chord;
  /** How high it lies, 0 to 1. */
  readonly height: number;
}

/**
 * Bars of each phrase: threes, fours and, after the first weeks, fives where so many find room on a line; two phrases at
 * least where there is room, to ask and answer, the last as long as any, so that its line is filled.
 */
export function phraseLengths(
  random: Random,
  bars: number,
  level: Level,
  choices: readonly Rhythms[],
): readonly number[] {
  if (bars <= 5) return [bars];
  const found: number[][] = [];
  const isRoomy = choices.some(({ meter }) => quartersOf(meter) <= 3);
  const sizes = level === 1 || !isRoomy ? [3, 4] : [3, 4, 5];
  const fill = (left: number, taken: number[]): void => {
    if (left === 0) found.push(taken);
    else if (found.length < 200)
      for (const size of sizes) if (size <= left) fill(left - size, [...taken, size]);
  };
  fill(bars, []);
  const filled = found.filter((lengths) => lengths.every((each) => each <= lengths[lengths.length - 1]!));
  return filled.length > 0 ? pick(random, filled) : [bars];
}

const { I, ii, IV, V, vi } = CHORDS;
const OPENINGS: readonly (readonly Chord[])[] = [
  [I, V, I],
  [I, IV, I],
  [I, vi, IV],
  [I, ii, vi],
];

/**
 * What a phrase is to be like.
 * @param choices what its bars are drawn from, in turn
 * @param opening the question that it answers, or null where it asks
 * @param isAnswer true when it comes home
 * @param abroad the key it goes to, or that its question has gone to
 */
export function wishFor(
  random: Random,
  choices: readonly Rhythms[],
  count: number,
  isAnswer: boolean,
  opening: PhraseWish | null,
  home: Key,
  abroad: Key,
): PhraseWish {
  const start = opening?.start ?? pick(random, OPENINGS);
  const bars = Array.from({ length: count }, (_, i) => {
    const isLast = i === count - 1;
    const { meter, moving, closing } = choices[isLast ? 0 : i % choices.length]!;
    const left = count - 1 - i;
    const chord = isAnswer
      ? left === 0
        ? I
        : left === 1
          ? V
          : left === 2 && i > 0
            ? pick(random, [IV, ii])
            : start[i % 3]!
      : isLast
        ? V
        : left === 1 && i > 0
          ? pick(random, [IV, ii])
          : start[i % 3]!;
    // A question leads abroad, and the answer back: what it takes up stands at home.
    const key = (isAnswer ? left >= 2 && i > 0 : left < 2) ? abroad : home;
    // An answer takes up how the question began.
    const kept = opening && i === 0 ? opening.bars[0]!.rhythm : null;
    const rhythm = isLast ? pick(random, closing) : (kept ?? pick(random, moving));
    return {
      rhythm,
      meter,
      chord: chordIn(chord, home, key),
      key,
    };
  });
  const pauses = abroad === home ? PAUSE_DEGREES : restsIn(home, abroad);
  return { bars, start, ends: isAnswer ? CLOSE_DEGREES : pauses, height: isAnswer ? 0.55 : 0.45 };
}

/** Where the notes of a phrase lie: it rises to its height in the second third, and falls to its end. */
export function placesOf({ bars, ends, height }: PhraseWish): readonly Place[] {
  const places: Place[] = [];
  const total = bars.length;
  const notes = bars.reduce((sum, { rhythm }) => sum + soundingIn(rhythm), 0);
  bars.forEach(({ rhythm, chord }, at) => {
    const sounding = soundingIn(rhythm);
    for (let i = 0; i < sounding; i++) {
      const isEnd = at === total - 1 && i === sounding - 1;
      const place = places.length / Math.max(1, notes - 1);
      const arch = place < 0.6 ? place / 0.6 : (1 - place) / 0.4;
      // The last bar leads from the chord before it to its end.
      const leads = at === total - 1 && at > 0 ? bars[at - 1]!.chord : chord;
      places.push({
        chord: isEnd ? ends : leads,
        firm: i === 0 || isEnd,
        height: height - 0.3 + 0.7 * arch,
      });
    }
  });
  return places;
}

/** Notes and rests of a phrase. */
export function eventsIn({ bars }: PhraseWish): number {
  return bars.reduce((sum, { rhythm }) => sum + rhythm.length, 0);
}

/** Notes of a rhythm. */
export function soundingIn(rhythm: Rhythm): number {
  return rhythm.filter((quarters) => quarters > 0).length;
}
