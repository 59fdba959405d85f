/** A phrase and its stopped echo: first as a singer would play it, then from far away. */
import { note, rest } from './bar.ts';
import { type EtudeNote, FOUR_FOUR, type Level, type Meter, SIX_EIGHT, THREE_FOUR } from './etude.ts';
import { CHORDS, type Chord } from './harmony.ts';
import type { Degree } from './key.ts';
import { drawLine, type Place } from './line.ts';
import { pick, type Random } from './random.ts';
import type { Draft, Workshop } from './workshop.ts';

/** Lengths in quarters; a rest is negative. */
type Rhythm = readonly number[];

/** Moving bars and closing bars of each meter, the plainer first. */
const METERS: readonly {
  readonly meter: Meter;
  readonly moving: readonly Rhythm[];
  readonly closing: readonly Rhythm[];
}[] = [
  {
    meter: FOUR_FOUR,
    moving: [
      [2, 1, 1],
      [1, 1, 1, 1],
      [1.5, 0.5, 1, 1],
      [1, 0.5, 0.5, 1, 1],
      [1.5, 0.5, 1.5, 0.5],
    ],
    closing: [
      [3, -1],
      [1, 2, -1],
      [1, 1, 1, -1],
      [0.5, 0.5, 2, -1],
    ],
  },
  {
    meter: THREE_FOUR,
    moving: [
      [2, 1],
      [1, 1, 1],
      [1.5, 0.5, 1],
      [1, 0.5, 0.5, 1],
      [1, 1, 0.5, 0.5],
    ],
    closing: [
      [2, -1],
      [1, 1, -1],
      [1, 1, -1],
      [0.5, 0.5, 1, -1],
    ],
  },
  {
    meter: SIX_EIGHT,
    moving: [
      [1.5, 1.5],
      [1, 0.5, 1.5],
      [1, 0.5, 1, 0.5],
      [1.5, 0.5, 0.5, 0.5],
      [0.5, 0.5, 0.5, 1.5],
    ],
    closing: [
      [1.5, 0.5, -1],
      [1, 0.5, 0.5, -1],
      [1, 0.5, 0.5, -1],
      [0.5, 0.5, 0.5, 0.5, -1],
    ],
  },
];

/** How many of the rhythms, plainest first, each level draws from. */
const RHYTHMS_BY_LEVEL: { readonly [level in Level]: number } = { 1: 3, 2: 4, 3: 5 };

const { I, ii, IV, V, vi } = CHORDS;

/** The two bars of each phrase of an étude in turn; the last comes home. */
const OPENINGS: readonly (readonly [Chord, Chord])[] = [
  [I, V],
  [I, IV],
  [I, vi],
];
const MIDDLES: readonly (readonly [Chord, Chord])[] = [
  [IV, V],
  [ii, V],
  [vi, V],
];
const LAST: readonly [Chord, Chord] = [V, I];

/** A phrase of two bars. */
interface Phrase {
  readonly rhythms: readonly Rhythm[];
  readonly line: readonly Degree[];
}

/** Composes phrases of two bars, each with its echo. The second phrase answers the first in its own rhythm. */
export function composePhrase({ random, notes, level, phrases: { length } }: Workshop): Draft {
  const { meter, moving, closing } = pick(random, METERS);
  const choice = RHYTHMS_BY_LEVEL[level];
  const rhythmOf = () => [
    pick(random, moving.slice(0, choice)),
    pick(random, closing.slice(0, Math.min(choice, closing.length))),
  ];
  const first = rhythmOf();
  const second = rhythmOf();
  const bars: (readonly EtudeNote[])[] = [];
  let before: Phrase | null = null;
  for (let i = 0; i < length; i++) {
    const isLast = i === length - 1;
    const chords = isLast
      ? LAST
      : i % 4 === 2
        ? pick(random, MIDDLES)
        : i === 1
          ? ([V, I] as const)
          : pick(random, OPENINGS);
    const rhythms: readonly Rhythm[] = i % 4 === 2 ? second : first;
    const height = i % 4 === 2 ? 0.65 : 0.45;
    const sequence: readonly Degree[] | null =
      before && i % 4 === 1 && !isLast ? oneStepOn(random, notes, before.line) : null;
    const line: readonly Degree[] =
      sequence ?? lineOf(random, notes, rhythms, chords, height, isLast, before);
    before = { rhythms, line };
    bars.push(...played(before, 'open', 'mf', level), ...played(before, 'stopped', 'p', level));
  }
  return { meter, bars };
}

function lineOf(
  random: Random,
  notes: readonly Degree[],
  rhythms: readonly Rhythm[],
  chords: readonly [Chord, Chord],
  height: number,
  isLast: boolean,
  before: Phrase | null,
): readonly Degree[] {
  const places: Place[] = [];
  rhythms.forEach((rhythm, bar) => {
    const sounding = rhythm.filter((quarters) => quarters > 0);
    sounding.forEach((_, i) => {
      const isEnd = bar === 1 && i === sounding.length - 1;
      places.push({
        chord: isEnd && isLast ? [0] : chords[bar]!,
        firm: i === 0 || isEnd,
        height: height + (bar === 0 ? 0.08 * i : -0.06 * i),
      });
    });
  });
  return drawLine(random, notes, places, before ? before.line[before.line.length - 1]! : null);
}

/** The same line a step higher or lower in the key, or null where the notes at hand do not allow it. */
function oneStepOn(
  random: Random,
  notes: readonly Degree[],
  line: readonly Degree[],
): readonly Degree[] | null {
  const step = random() < 0.5 ? 1 : -1;
  for (const by of [step, -step]) {
    const moved = line.map((each) => notes[notes.indexOf(each) + by]);
    const isWhole = moved.every(
      (each, i) => each && (each.degree - line[i]!.degree + 7) % 7 === (by + 7) % 7,
    );
    if (isWhole) return moved as readonly Degree[];
  }
  return null;
}

function played(
  { rhythms, line }: Phrase,
  sign: 'open' | 'stopped',
  dynamic: 'p' | 'mf',
  level: Level,
): readonly (readonly EtudeNote[])[] {
  let next = 0;
  return rhythms.map((rhythm, bar) => {
    const music = rhythm.map((quarters, i): EtudeNote => {
      if (quarters < 0) return rest(-quarters);
      const each = note(line[next++]!.written, quarters, sign);
      return bar === 0 && i === 0 ? { ...each, dynamic } : each;
    });
    return level === 1 ? music : slurred(music);
  });
}

/** Slurs each run of short notes with the note it leads to. */
function slurred(bar: readonly EtudeNote[]): readonly EtudeNote[] {
  const music = bar.slice();
  for (let i = 0; i + 1 < music.length; i++) {
    const here = music[i]!;
    const next = music[i + 1]!;
    if (
      !here.written ||
      !next.written ||
      here.slur ||
      next.quarters > here.quarters + 1 ||
      next.quarters >= 2
    )
      continue;
    if (here.quarters <= next.quarters && here.quarters > 0.5) continue;
    music[i] = { ...here, slur: 'start' };
    music[i + 1] = { ...next, slur: 'stop' };
    i += 1;
  }
  return music;
}
