/** The rhythms of phrases, by meter and level. */
import { FIVE_FOUR, FOUR_FOUR, type Meter, SIX_EIGHT, THREE_FOUR } from './bar.ts';
import type { Level } from './levels.ts';
import { pick, type Random } from './random.ts';

/** Lengths in quarters; a rest is negative. */
export type Rhythm = readonly number[];

/** Moving and closing bars of a meter, the plainer first. */
export interface Rhythms {
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
    [1, 1, 1, -1],
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
    [1.5, 1, -0.5],
    [1, 0.5, 1, -0.5],
    [0.5, 0.5, 0.5, 1, -0.5],
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
const ALL: readonly Rhythms[] = [FOURS, THREES, SIXES, FIVES];

/** From which of the rhythms, plainest first, each level draws. */
const CHOICE: { readonly [level in Level]: readonly [from: number, to: number] } = {
  1: [0, 3],
  2: [0, 5],
  3: [2, 8],
};

/** Where a level mixes meters, a phrase in one goes through others and comes back: the bars in turn, the last in its own. */
const MIXED: readonly (readonly Rhythms[])[] = [
  [FOURS, THREES],
  [FOURS, FOURS, THREES],
  [FOURS, FIVES],
  [THREES, FOURS],
  [THREES, THREES, FOURS],
  [SIXES],
  [FIVES],
];

/** What the bars of phrases in a meter are drawn from, in turn. */
export function metersThrough(
  random: Random,
  home: Meter,
  level: Level,
  isMixed: boolean,
): readonly Rhythms[] {
  const own = choiceOf(ALL.filter(({ meter }) => meter === home)[0] ?? FOURS, level);
  if (!isMixed) return [own];
  return pick(
    random,
    MIXED.filter(([first]) => first!.meter === home),
  ).map((each) => choiceOf(each, level));
}

function choiceOf({ meter, moving, closing }: Rhythms, level: Level): Rhythms {
  return { meter, moving: moving.slice(...CHOICE[level]), closing: closing.slice(0, level + 2) };
}
