/** Stopped scales and broken chords in a key. */
import {
  asPhrase,
  type Bar,
  bar,
  type EtudeNote,
  type Meter,
  note,
  rest,
  SIX_EIGHT,
  THREE_FOUR,
  withBreath,
} from '../bar.ts';
import { type PhrasePlan, planPhrases } from '../harmony.ts';
import type { Key } from '../key.ts';
import type { Level } from '../levels.ts';
import { shaped, slurred } from '../marking.ts';
import { melodic } from '../melodicMinor.ts';
import { pick } from '../random.ts';
import { brokenChords, CELLS, type Cell, walkOf } from '../walk.ts';
import { type Draft, hasTimeFor, type Workshop } from '../workshop.ts';
import type { KindOfEtude } from './kind.ts';

const T = 1 / 3;
const Q = 0.25;

/** Moving bars in quarters, by level; the calmest last. */
const FOURS: { readonly [level in Level]: readonly (readonly number[])[] } = {
  1: [
    [1, 1, 1, 1],
    [2, 1, 1],
    [1, 1, 2],
    [2, 2],
  ],
  2: [
    [0.5, 0.5, 1, 0.5, 0.5, 1],
    [1, 0.5, 0.5, 1, 0.5, 0.5],
    [0.5, 0.5, 0.5, 0.5, 1, 1],
    [1.5, 0.5, 1, 1],
    [1, 1, 1, 1],
    [2, 2],
  ],
  3: [
    [Q, Q, Q, Q, 1, Q, Q, Q, Q, 1],
    [T, T, T, 1, T, T, T, 1],
    [0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5],
    [0.5, 0.5, Q, Q, Q, Q, 1, 1],
    [T, T, T, T, T, T, 1, 1],
    [1, 1, 1, 1],
    [2, 2],
  ],
};

const THREES: typeof FOURS = {
  1: [
    [1, 1, 1],
    [2, 1],
  ],
  2: [
    [0.5, 0.5, 0.5, 0.5, 0.5, 0.5],
    [1, 0.5, 0.5, 1],
    [0.5, 0.5, 1, 1],
    [1.5, 0.5, 1],
    [1, 1, 1],
    [2, 1],
  ],
  3: [
    [Q, Q, Q, Q, 1, 1],
    [T, T, T, T, T, T, 1],
    [0.5, 0.5, 0.5, 0.5, 0.5, 0.5],
    [0.5, 0.5, Q, Q, Q, Q, 1],
    [T, T, T, 1, 1],
    [1, 1, 1],
    [2, 1],
  ],
};

const SIXES: typeof FOURS = {
  1: [[1.5, 1.5]],
  2: [
    [0.5, 0.5, 0.5, 0.5, 0.5, 0.5],
    [1, 0.5, 1, 0.5],
    [1.5, 0.5, 0.5, 0.5],
    [0.5, 0.5, 0.5, 1, 0.5],
    [1, 0.5, 1.5],
    [1.5, 1.5],
  ],
  3: [
    [0.5, Q, Q, Q, Q, 1.5],
    [Q, Q, Q, Q, Q, Q, 1.5],
    [0.5, 0.5, 0.5, Q, Q, Q, Q, 0.5],
    [0.5, 0.5, 0.5, 0.5, 0.5, 0.5],
    [1, 0.5, 0.5, 0.5, 0.5],
    [1, 0.5, 1, 0.5],
    [1.5, 1.5],
  ],
};

/** Closing bars of one note and more, the last held; a rest is negative. */
const CLOSING_SIXES: readonly (readonly number[])[] = [
  [1.5, -1.5],
  [1.5, 1, -0.5],
  [1, 0.5, 1, -0.5],
  [0.5, 0.5, 0.5, 1, -0.5],
];

/** A closing bar for so many notes; none where they are too many. */
function closingBar(notes: number, { beats, beatType }: Meter): readonly number[] | null {
  if (beatType === 8) return CLOSING_SIXES[notes - 1] ?? null;
  return notes < beats ? [...new Array<number>(notes - 1).fill(1), beats - notes, -1] : null;
}

/** Notes shorter than this are out of the hand's business: the tongue's. In seconds; from memory. */
const SHORTEST_SECONDS = 0.15;

/** Composes a scale, then broken chords or figures that climb, a phrase each. At the first level each is heard open before it is stopped. */
function compose(workshop: Workshop): Draft {
  const { random, key, level, length, isNatural, wanders } = workshop;
  const isByPairs = level === 1 && !isNatural;
  // Four bars a phrase; where each is heard open first, what is left over makes a pair of two.
  const counts = isByPairs
    ? [...new Array<number>(Math.floor(length / 8)).fill(4), ...(length % 8 > 0 ? [2] : [])]
    : new Array<number>(length / 4).fill(4);
  const plans = planPhrases(random, counts.length, key, wanders);
  const bars: Bar[] = [];
  const cells: (Cell | null)[] = [];
  plans.forEach((phrase, i) => {
    let cell = i % 3 === 0 ? CELLS.scale : pick(random, i % 3 === 1 ? CHORDS_FIRST : FIGURES);
    if (cell === cells[cells.length - 1]) cell = CELLS.turns;
    cells.push(cell);
    const closed = phraseOf(workshop, phrase, cell, counts[i]!);
    if (isByPairs) bars.push(...asPhrase(closed.map(opened)));
    bars.push(...asPhrase(closed));
  });
  return bars;
}

/** Notes under one slur, at most. */
const MOST_SLURRED = 6;

/** Null stands for broken chords. */
const CHORDS_FIRST: readonly (Cell | null)[] = [null, null, CELLS.thirds];
const FIGURES: readonly (Cell | null)[] = [CELLS.thirds, CELLS.turns, CELLS.fours, CELLS.fourths];

function phraseOf(workshop: Workshop, phrase: PhrasePlan, cell: Cell | null, count: number): readonly Bar[] {
  const { random, key, tones, level, meter } = workshop;
  const moving = count - 1;
  const rhythms = rhythmsFor(workshop);
  const main = pick(random, rhythms);
  const others = rhythms.filter((each) => each !== main);
  const other = others.length > 0 ? pick(random, others) : main;
  const used = Array.from({ length: moving }, (_, i) => (i === 1 ? other : main));
  const barLengths = used.map((rhythm) => rhythm.length);
  const total = barLengths.reduce((sum, each) => sum + each, 0);
  const wish = { length: total, barLengths, begins: [0, 2, 4], ends: phrase.ends };
  let walk = cell
    ? walkOf(random, tones, cell, wish)
    : brokenChords(random, tones, phrase.chords, barLengths);
  if (walk.length === 0) walk = walkOf(random, tones, CELLS.scale, wish);
  const way = wayHome(workshop, phrase, walk[walk.length - 1]!);
  const keyOf = barLengths.map((length, i) => new Array<Key>(length).fill(phrase.keys[i]!));
  const keys = [...([] as Key[]).concat(...keyOf), ...way.map(() => phrase.keys[3]!)];
  const singing = melodic(
    [...walk, ...way].map((index, i) => ({ tone: tones[index]!, key: keys[i]! })),
    key,
    workshop.toneIn,
  );
  let next = 0;
  const sung = (quarters: number): EtudeNote => {
    const tone = singing[next++]!;
    return note(tone.written, quarters, tone.hand);
  };
  const made = used.map((rhythm) => bar(meter, rhythm.map(sung)));
  const closing = closingBar(way.length, meter)!;
  const end = bar(
    meter,
    closing.map((quarters) => (quarters < 0 ? rest(-quarters) : sung(quarters))),
  );
  const joined = [...made, end].map((each) => (level > 1 ? slurred(each, MOST_SLURRED) : each));
  const half = Math.ceil(joined.length / 2) - 1;
  return shaped(joined).map((each, i) => (i === half && joined.length > 2 ? withBreath(each) : each));
}

/** Rhythms for level and tempo: on a natural horn the hand moves from note to note and needs its time. */
function rhythmsFor(workshop: Workshop): readonly (readonly number[])[] {
  const { level, tempo, plan, isNatural, meter } = workshop;
  const all = (meter === SIX_EIGHT ? SIXES : meter === THREE_FOUR ? THREES : FOURS)[level];
  const those = all.slice(0, -1).filter((rhythm) => {
    const shortest = Math.min(...rhythm);
    if ((shortest * 60) / (tempo * meter.beatQuarters) < SHORTEST_SECONDS) return false;
    return !isNatural || (shortest >= plan.changeAfterQuarters && hasTimeFor(shortest, workshop));
  });
  return those.length > 0 ? those : all.slice(-1);
}

/** By step to where the phrase rests, in a bar that ends with a rest; a slow hand goes there at once. */
function wayHome(workshop: Workshop, phrase: PhrasePlan, last: number): readonly number[] {
  const { tones, isNatural, level, meter } = workshop;
  const goals = tones
    .map(({ degree }, i) => (phrase.ends.indexOf(degree) >= 0 ? i : -1))
    .filter((i) => i >= 0);
  // The end is not the note the walk has just left, if there is another.
  const distance = (goal: number) => (goal === last ? tones.length : Math.abs(goal - last));
  let goal = goals[0] ?? last;
  for (const each of goals) if (distance(each) < distance(goal)) goal = each;
  const way: number[] = [];
  for (let at = last; at !== goal; ) {
    at += goal > at ? 1 : -1;
    way.push(at);
  }
  const isSlow = isNatural && level === 1;
  return way.length > 0 && closingBar(way.length, meter) && !isSlow ? way : [goal];
}

function opened(of: Bar): Bar {
  return { ...of, notes: of.notes.map((each) => (each.written ? { ...each, hand: 'open' } : each)) };
}

/** The kind, as the list of kinds has it. */
export const scale = {
  kind: 'scale',
  needs: 'notes',
  needsSteps: true,
  tempo: { 1: 66, 2: 72, 3: 84 },
  character: 'legato',
  compose,
} as const satisfies KindOfEtude;
