/** A phrase and its stopped echo: say it, then say it from far away. */

import { pitchCents } from '../../pitch/pitch.ts';
import {
  asPhrase,
  type Bar,
  bar,
  type Dynamic,
  FIVE_FOUR,
  FOUR_FOUR,
  type Meter,
  note,
  rest,
  SIX_EIGHT,
  THREE_FOUR,
  withBreath,
  withDynamic,
} from '../bar.ts';
import { CHORDS, type Chord, CLOSE_DEGREES, PAUSE_DEGREES } from '../harmony.ts';
import { type Key, neighbourKeys } from '../key.ts';
import type { Level } from '../levels.ts';
import { type LineDrawer, lineDrawer, type Place } from '../line.ts';
import { slurred, swelling } from '../marking.ts';
import { type Melody, melodyFaults } from '../melody.ts';
import { pick, type Random } from '../random.ts';
import type { Tone } from '../tone.ts';
import type { Draft, Workshop } from '../workshop.ts';
import type { KindOfEtude } from './kind.ts';

/** Lengths in quarters; a rest is negative. */
type Rhythm = readonly number[];

/** Moving and closing bars of a meter, the plainer first. */
interface Rhythms {
  readonly meter: Meter;
  readonly moving: readonly Rhythm[];
  readonly closing: readonly Rhythm[];
}

const T = 1 / 3;

const FOURS: Rhythms = {
  meter: FOUR_FOUR,
  moving: [
    [2, 1, 1],
    [1, 1, 2],
    [1, 1, 1, 1],
    [1.5, 0.5, 1, 1],
    [1, 0.5, 0.5, 1, 1],
    [0.5, 0.5, 1, 1.5, 0.5],
    [1, T, T, T, 1, 1],
    [1.5, 0.5, T, T, T, 1],
  ],
  closing: [
    [3, -1],
    [1, 2, -1],
    [0.5, 0.5, 2, -1],
  ],
};
const THREES: Rhythms = {
  meter: THREE_FOUR,
  moving: [
    [2, 1],
    [1, 2],
    [1, 1, 1],
    [1.5, 0.5, 1],
    [1, 0.5, 0.5, 1],
    [1, 1, 0.5, 0.5],
    [1, T, T, T, 1],
  ],
  closing: [
    [2, -1],
    [1, 1, -1],
    [0.5, 0.5, 1, -1],
  ],
};
const SIXES: Rhythms = {
  meter: SIX_EIGHT,
  moving: [
    [1.5, 1.5],
    [1, 0.5, 1.5],
    [1, 0.5, 1, 0.5],
    [1.5, 0.5, 0.5, 0.5],
    [0.5, 0.5, 0.5, 1.5],
    [0.5, 0.5, 0.5, 1, 0.5],
  ],
  closing: [
    [1.5, 0.5, -1],
    [1, 1, -1],
    [1, 0.5, 0.5, -1],
  ],
};
const FIVES: Rhythms = {
  meter: FIVE_FOUR,
  moving: [
    [2, 1, 2],
    [1, 1, 1, 2],
    [1.5, 0.5, 1, 1, 1],
    [1, 1, 1, 1.5, 0.5],
    [2, 1, 1, 0.5, 0.5],
  ],
  closing: [
    [3, -2],
    [1, 3, -1],
    [1, 1, 2, -1],
  ],
};

/** The meters of a phrase's bars: one throughout, or at the third level by turns. */
const METERS: { readonly [level in Level]: readonly (readonly Rhythms[])[] } = {
  1: [[FOURS], [THREES]],
  2: [[FOURS], [THREES], [SIXES]],
  3: [[FOURS, THREES], [FIVES], [SIXES], [THREES, FOURS], [FOURS, FOURS, THREES]],
};
/** From which of the rhythms, plainest first, each level draws. */
const CHOICE: { readonly [level in Level]: readonly [from: number, to: number] } = {
  1: [0, 3],
  2: [0, 5],
  3: [2, 8],
};

const { I, ii, IV, V, vi } = CHORDS;
const OPENINGS: readonly (readonly Chord[])[] = [
  [I, V, I],
  [I, IV, I],
  [I, vi, IV],
  [I, ii, vi],
];

/** What one phrase is to be like. */
interface Wish {
  readonly bars: readonly {
    readonly rhythm: Rhythm;
    readonly meter: Meter;
    readonly chord: Chord;
    readonly key: Key;
  }[];
  readonly ends: Chord;
  /** How high it lies, 0 to 1. */
  readonly height: number;
}

/** Drafts of a phrase at most; the first that sings is taken. With few tones none may, and it is soon known. */
const DRAFTS = 60;
const FEW_TONES = 6;
const DRAFTS_OF_FEW = 12;

function compose(workshop: Workshop): Draft {
  const { random, key, level, plan, tones, length } = workshop;
  const lengths = lengthsOf(random, length / 2, level);
  const rhythms = pick(random, METERS[level]);
  const away = plan.isMixed ? neighbourKeys(key) : [];
  const way = Math.floor(random() * 2);
  const bars: Bar[] = [];
  let before: Tone | null = null;
  let opening: Wish | null = null;
  lengths.forEach((count, i) => {
    const isAnswer = i % 2 === 1 || i === lengths.length - 1;
    const isLast = i === lengths.length - 1;
    const abroad = !isLast && away.length > 0 ? away[(way + i) % away.length]! : key;
    const wish = wishFor(random, rhythms, level, count, isAnswer, opening, key, abroad);
    opening = isAnswer ? null : wish;
    let shown: readonly Tone[] = [];
    let fewest = Number.POSITIVE_INFINITY;
    const draw: LineDrawer<Tone> = lineDrawer(tones, placesOf(wish));
    const drafts = tones.length < FEW_TONES ? DRAFTS_OF_FEW : DRAFTS;
    for (let draft = 0; draft < drafts && fewest > 0; draft++) {
      const line: readonly Tone[] = draw(random, before);
      const faults = melodyFaults(melodyOf(wish, line)).length;
      if (faults < fewest) [shown, fewest] = [line, faults];
    }
    bars.push(...asPhrase(voiced(workshop, wish, shown, 'open', 'mf')));
    bars.push(...asPhrase(voiced(workshop, wish, shown, 'closed', isLast ? 'pp' : 'p')));
    before = shown[shown.length - 1]!;
  });
  return bars;
}

/** Bars of each phrase: threes, fours and, after the first weeks, fives; two phrases at least where there is room, to ask and answer. */
function lengthsOf(random: Random, bars: number, level: Level): readonly number[] {
  if (bars <= 5) return [bars];
  const found: number[][] = [];
  const sizes = level === 1 ? [3, 4] : [3, 4, 5];
  const fill = (left: number, taken: number[]): void => {
    if (left === 0) found.push(taken);
    else if (found.length < 200)
      for (const size of sizes) if (size <= left) fill(left - size, [...taken, size]);
  };
  fill(bars, []);
  return found.length > 0 ? pick(random, found) : [bars];
}

function wishFor(
  random: Random,
  rhythms: readonly Rhythms[],
  level: Level,
  count: number,
  isAnswer: boolean,
  opening: Wish | null,
  home: Key,
  abroad: Key,
): Wish {
  const start = opening ? opening.bars.map(({ chord }) => chord) : pick(random, OPENINGS);
  const bars = Array.from({ length: count }, (_, i) => {
    const isLast = i === count - 1;
    const { meter, moving, closing } = rhythms[i % rhythms.length]!;
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
    // An answer takes up how the question began.
    const kept = opening && i === 0 ? opening.bars[0]!.rhythm : null;
    const rhythm = isLast
      ? pick(random, closing.slice(0, level + 1))
      : (kept ?? pick(random, moving.slice(...CHOICE[level])));
    return {
      rhythm,
      meter,
      chord,
      key: !isAnswer && left < 2 ? abroad : isAnswer && left >= 2 && i > 0 ? abroad : home,
    };
  });
  return { bars, ends: isAnswer ? CLOSE_DEGREES : PAUSE_DEGREES, height: isAnswer ? 0.55 : 0.45 };
}

/** Rises to its height in the second third, and falls to its end. */
function placesOf({ bars, ends, height }: Wish): Place[] {
  const places: Place[] = [];
  const total = bars.length;
  const notes = bars.reduce((sum, { rhythm }) => sum + rhythm.filter((quarters) => quarters > 0).length, 0);
  bars.forEach(({ rhythm, chord }, at) => {
    const sounding = rhythm.filter((quarters) => quarters > 0).length;
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

function melodyOf({ bars, ends }: Wish, tones: readonly Tone[]): Melody {
  return {
    notes: tones,
    barLengths: bars.map(({ rhythm }) => rhythm.filter((quarters) => quarters > 0).length),
    ends,
  };
}

function voiced(
  { toneIn, level, isNatural }: Workshop,
  wish: Wish,
  line: readonly Tone[],
  voice: 'open' | 'closed',
  dynamic: Dynamic,
): readonly Bar[] {
  let next = 0;
  const cents = line.map(({ written }) => pitchCents(written));
  const top = cents.indexOf(Math.max(...cents));
  let topBar = 0;
  const bars = wish.bars.map(({ rhythm, meter, key }, at) => {
    const notes = rhythm.map((quarters) => {
      if (quarters < 0) return rest(-quarters);
      if (next === top) topBar = at;
      const tone = toneIn(line[next++]!, key);
      return note(tone.written, quarters, voice === 'open' && !isNatural ? 'open' : tone.hand);
    });
    return slurred(bar(meter, notes), level === 1 ? 2 : level === 2 ? 3 : 4);
  });
  const half = bars.length - 2;
  const shaped =
    topBar > 0
      ? [
          ...swelling(bars.slice(0, topBar), 'crescendo'),
          bars[topBar]!,
          ...swelling(bars.slice(topBar + 1), 'diminuendo'),
        ]
      : [bars[0]!, ...swelling(bars.slice(1), 'diminuendo')];
  return shaped.map((each, i) =>
    i === 0 ? withDynamic(each, dynamic) : i === half && bars.length > 3 ? withBreath(each) : each,
  );
}

/** The kind, as the list of kinds has it. */
export const phrase = {
  kind: 'phrase',
  needs: 'notes',
  tempo: { 1: 72, 2: 80, 3: 92 },
  character: 'cantabile',
  compose,
} as const satisfies KindOfEtude;
