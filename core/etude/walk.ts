/** Walks over the notes at hand: scales, broken thirds and chords, and figures that climb or fall by steps. */
import { pitchCents } from '../pitch/pitch.ts';
import type { Degree } from './key.ts';
import type { Random } from './random.ts';

/** What is repeated a step higher or lower: places above its first note, in steps of the scale. */
export type Cell = readonly number[];

/** The cells, by what a teacher calls them. */
export const CELLS: { readonly [name in 'scale' | 'thirds' | 'turns' | 'fours' | 'fourths']: Cell } = {
  scale: [0],
  thirds: [0, 2],
  turns: [0, 1, 2, 0],
  fours: [0, 1, 2, 3],
  fourths: [0, 3],
};

/** So many walks are drawn; with more they would all be alike. */
const DRAWS = 48;

/** What a walk must serve. */
export interface WalkPlan {
  readonly length: number;
  /** Notes in each bar, to see that no bar says what another has said. */
  readonly barLengths: readonly number[];
  /** Degrees on which it may begin, and one of which its end should lie next to. */
  readonly begins: readonly number[];
  readonly ends: readonly number[];
}

/**
 * A walk of a cell up and down: the best of several drawn by chance.
 * @returns indices into `notes`, `plan.length` of them; empty where the notes at hand are too few for the cell
 */
export function walkOf(
  random: Random,
  notes: readonly Degree[],
  cell: Cell,
  plan: WalkPlan,
): readonly number[] {
  const candidates: { readonly walk: readonly number[]; readonly score: number }[] = [];
  const reach = Math.max(...cell);
  const narrowest = Math.max(reach + 1, Math.min(4, notes.length - 1));
  if (narrowest >= notes.length) return [];
  for (let draw = 0; draw < DRAWS; draw++) {
    const low = Math.floor(random() * (notes.length - narrowest));
    const high = low + narrowest + Math.floor(random() * (notes.length - narrowest - low));
    const start = low + Math.floor(random() * (high - low + 1));
    const walk = bounce(cell, low, high, start, random() < 0.5 ? 1 : -1, plan.length);
    if (walk.length === plan.length) candidates.push({ walk, score: scoreOf(notes, walk, plan) });
  }
  if (candidates.length === 0) return [];
  const best = Math.max(...candidates.map(({ score }) => score));
  return candidates.filter(({ score }) => score === best)[0]!.walk;
}

/** Up and down between two turning points; going down the cell is turned over. */
function bounce(
  cell: Cell,
  low: number,
  high: number,
  start: number,
  up: 1 | -1,
  length: number,
): readonly number[] {
  const walk: number[] = [];
  const reach = Math.max(...cell);
  let at = start;
  let direction: number = up;
  let turns = 0;
  while (walk.length < length) {
    const end = at + direction * reach;
    if (end > high || end < low) {
      direction = -direction;
      turns += 1;
      // A figure turned over begins a step from where it left off: a note said twice breaks the line.
      at = walk.length > 0 ? walk[walk.length - 1]! + direction : at;
      if (turns > 8) return [];
      continue;
    }
    turns = 0;
    for (const step of cell) if (walk.length < length) walk.push(at + direction * step);
    at += direction;
  }
  return walk;
}

function scoreOf(
  notes: readonly Degree[],
  walk: readonly number[],
  { barLengths, begins, ends }: WalkPlan,
): number {
  const first = notes[walk[0]!]!;
  const last = walk[walk.length - 1]!;
  const goals = notes.map(({ degree }, i) => (ends.indexOf(degree) >= 0 ? i : -1)).filter((i) => i >= 0);
  const left = goals.length > 0 ? Math.min(...goals.map((goal) => Math.abs(goal - last))) : 0;
  const span = Math.max(...walk) - Math.min(...walk);
  let leaps = 0;
  for (let i = 1; i < walk.length; i++) {
    const cents = Math.abs(pitchCents(notes[walk[i]!]!.written) - pitchCents(notes[walk[i - 1]!]!.written));
    if (cents > 700 || cents === 0) leaps += cents > 1200 ? 10 : 2;
  }
  const bars: string[] = [];
  let at = 0;
  for (const length of barLengths) {
    bars.push(walk.slice(at, at + length).join(' '));
    at += length;
  }
  const same = bars.length - new Set(bars).size;
  return (
    (begins.indexOf(first.degree) >= 0 ? 3 : 0) +
    (left >= 1 && left <= 2 ? 5 : left <= 3 ? 2 : -3) +
    Math.min(span, 9) * 0.5 -
    3 * leaps -
    6 * same
  );
}

/**
 * Broken chords: each bar breaks its chord up or down, from the chord note nearest to where the last bar ended.
 * @param chords the chord of each bar, as degrees
 * @returns indices into `notes`; empty where a chord has too few of its notes at hand
 */
export function brokenChords(
  random: Random,
  notes: readonly Degree[],
  chords: readonly (readonly number[])[],
  barLengths: readonly number[],
): readonly number[] {
  const walk: number[] = [];
  for (let bar = 0; bar < barLengths.length; bar++) {
    const tones = notes
      .map(({ degree }, i) => (chords[bar]!.indexOf(degree) >= 0 ? i : -1))
      .filter((i) => i >= 0);
    if (tones.length < 2) return [];
    const before = walk[walk.length - 1];
    let at =
      before === undefined ? Math.floor(random() * Math.min(2, tones.length)) : nearestOf(tones, before);
    let direction = at === 0 ? 1 : at === tones.length - 1 ? -1 : random() < 0.5 ? 1 : -1;
    for (let i = 0; i < barLengths[bar]!; i++) {
      walk.push(tones[at]!);
      if (at + direction < 0 || at + direction >= tones.length) direction = -direction;
      at += direction;
    }
  }
  return walk;
}

/** The place in `tones` that lies nearest to an index, but not at it. */
function nearestOf(tones: readonly number[], index: number): number {
  let best = 0;
  tones.forEach((tone, i) => {
    const distance = tone === index ? 99 : Math.abs(tone - index);
    const known = tones[best] === index ? 99 : Math.abs(tones[best]! - index);
    if (distance < known) best = i;
  });
  return best;
}
