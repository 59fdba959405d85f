/** Stopped scales and broken chords in a key. */
import {
  asPhrase,
  type Bar,
  bar,
  type EtudeNote,
  note,
  rest,
  THREE_FOUR,
  withBreath,
  withDynamic,
} from '../bar.ts';
import { type PhrasePlan, planPhrases } from '../harmony.ts';
import { type Key, neighbourKeys } from '../key.ts';
import type { Level } from '../levels.ts';
import { slurred, swelling } from '../marking.ts';
import { pick } from '../random.ts';
import type { Tone } from '../tone.ts';
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

/** Notes shorter than this are out of the hand's business: the tongue's. In seconds; from memory. */
const SHORTEST_SECONDS = 0.15;

/** Composes a scale, then broken chords or figures that climb, a phrase each. At the first level each is heard open before it is stopped. */
function compose(workshop: Workshop): Draft {
  const { random, key, level, plan, length, isNatural } = workshop;
  const isByPairs = level === 1 && !isNatural;
  // Four bars a phrase; where each is heard open first, what is left over makes a pair of two.
  const counts = isByPairs
    ? [...new Array<number>(Math.floor(length / 8)).fill(4), ...(length % 8 > 0 ? [2] : [])]
    : new Array<number>(length / 4).fill(4);
  const plans = planPhrases(random, counts.length, key, plan.isMixed);
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
  const { random, tones, level, meter } = workshop;
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
  const singing = melodic(
    workshop,
    [...walk, ...way].map((index) => tones[index]!),
  );
  let next = 0;
  const sung = (quarters: number, key: Key): EtudeNote => {
    const sounding = singing[next++]!;
    const tone = key === workshop.key ? sounding : workshop.toneIn(sounding, key);
    return note(tone.written, quarters, tone.hand);
  };
  const made = used.map((rhythm, i) =>
    bar(
      meter,
      rhythm.map((quarters) => sung(quarters, phrase.keys[i]!)),
    ),
  );
  const held = way.map((_, i) => sung(i === way.length - 1 ? meter.beats - way.length : 1, phrase.keys[3]!));
  const end = bar(meter, [...held, rest(1)]);
  const joined = [...made, end].map((each) => (level > 1 ? slurred(each, MOST_SLURRED) : each));
  return marked(joined, walk, tones);
}

/** A minor scale goes up to its tonic by its raised sixth and seventh, and turns or comes down without them. */
function melodic(workshop: Workshop, line: readonly Tone[]): readonly Tone[] {
  const { key } = workshop;
  if (key.mode === 'major') return line;
  const raised: Key = { ...key, mode: 'major', fifths: key.fifths + 3 };
  const lowered = neighbourKeys(key)[0]!;
  const isUpper = (tone: Tone | undefined) => tone !== undefined && tone.degree >= 5;
  const made: Tone[] = [];
  for (let from = 0; from < line.length; ) {
    let to = from;
    while (isUpper(line[to])) to += 1;
    const run = line.slice(from, to);
    const both = run.some(({ degree }) => degree === 5) && run.some(({ degree }) => degree === 6);
    const leadsHome = run[run.length - 1]?.degree === 6 && line[to]?.degree !== 4;
    const way = !both ? null : leadsHome ? (raised.fifths <= 7 ? raised : null) : lowered;
    made.push(...run.map((tone) => (way ? workshop.toneIn(tone, way) : tone)));
    if (to === from) made.push(line[to++]!);
    from = to;
  }
  return made;
}

/** Rhythms for level and tempo: on a natural horn the hand moves from note to note and needs its time. */
function rhythmsFor(workshop: Workshop): readonly (readonly number[])[] {
  const { level, tempo, plan, isNatural, meter } = workshop;
  const all = (meter === THREE_FOUR ? THREES : FOURS)[level];
  const those = all.slice(0, -1).filter((rhythm) => {
    const shortest = Math.min(...rhythm);
    if ((shortest * 60) / tempo < SHORTEST_SECONDS) return false;
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
  const distance = (goal: number) => (goal === last ? 3.5 : Math.abs(goal - last));
  let goal = goals[0] ?? last;
  for (const each of goals) if (distance(each) < distance(goal)) goal = each;
  const way: number[] = [];
  for (let at = last; at !== goal; ) {
    at += goal > at ? 1 : -1;
    way.push(at);
  }
  const isSlow = isNatural && level === 1;
  return way.length > 0 && way.length < meter.beats && !isSlow ? way : [goal];
}

/** Louder as it climbs, softer as it falls, a breath half way. */
function marked(bars: readonly Bar[], walk: readonly number[], tones: readonly Tone[]): readonly Bar[] {
  const top = walk.indexOf(Math.max(...walk)) / walk.length;
  const half = Math.ceil(bars.length / 2);
  const shaped =
    tones.length < 4
      ? bars
      : [
          ...swelling(bars.slice(0, half), top > 0.3 ? 'crescendo' : 'diminuendo'),
          ...swelling(bars.slice(half), top > 0.3 ? 'diminuendo' : 'crescendo'),
        ];
  return shaped.map((each, i) =>
    i === 0
      ? withDynamic(each, top > 0.3 ? 'mp' : 'mf')
      : i === half - 1 && bars.length > 2
        ? withBreath(each)
        : each,
  );
}

function opened(of: Bar): Bar {
  return { ...of, notes: of.notes.map((each) => (each.written ? { ...each, hand: 'open' } : each)) };
}

/** The kind, as the list of kinds has it. */
export const scale = {
  kind: 'scale',
  needs: 'notes',
  tempo: { 1: 66, 2: 72, 3: 84 },
  character: 'legato',
  compose,
} as const satisfies KindOfEtude;
