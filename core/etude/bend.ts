/** A tone closed and opened on one fingering: the hand alone makes the glissando, down when it closes, up when it opens. */
import type { HandSign } from '../part/passage.ts';
import { type Pitch, pitchCents } from '../pitch/pitch.ts';
import { type EtudeNote, FOUR_FOUR, note, rest, withDynamic } from './bar.ts';
import { type Key, scaleBetween } from './key.ts';
import type { Level } from './level.ts';
import type { Bend } from './palette.ts';
import { pick, pickWeighted, type Random } from './random.ts';
import { type Draft, hasTimeFor, type KindOfEtude, type Workshop } from './workshop.ts';

/** The kind, as the list of kinds has it. */
export const bend = {
  kind: 'bend',
  name: 'a tone bent',
  title: 'Leaning on the Door',
  trains: 'Keep valves and lip still: the closing hand lets the tone sink, the opening hand lets it rise.',
  tempo: 60,
  needs: 'bends',
  onNaturalHorn: true,
  compose: composeBend,
} as const satisfies KindOfEtude;

/** Two bars of one bend, or a bar each of two. */
interface Figure {
  readonly first: HandSign;
  /** Lengths in quarters, the hand in turn open and stopped and sliding from note to note until the rest (negative). */
  readonly strokes: readonly (readonly (readonly number[])[])[];
}

const CLOSE_HOLD_OPEN: Figure = {
  first: 'open',
  strokes: [
    [
      [2, 2],
      [3, -1],
    ],
  ],
};
const FIGURES: { readonly [level in Level]: readonly Figure[] } = {
  1: [CLOSE_HOLD_OPEN],
  2: [
    CLOSE_HOLD_OPEN,
    {
      first: 'open',
      strokes: [
        [
          [1, 1, 1, 1],
          [3, -1],
        ],
      ],
    },
    { first: 'open', strokes: [[[1, 1, 1, -1]], [[1, 1, 1, -1]]] },
  ],
  3: [
    {
      first: 'open',
      strokes: [
        [
          [1, 1, 1, 1],
          [3, -1],
        ],
      ],
    },
    {
      first: 'stopped',
      strokes: [
        [
          [2, 2],
          [3, -1],
        ],
      ],
    },
    { first: 'open', strokes: [[[1, 1, 1, -1]], [[1, 1, 1, -1]]] },
    { first: 'open', strokes: [[[0.5, 0.5, 0.5, 0.5, 1, -1]], [[0.5, 0.5, 0.5, 0.5, 1, -1]]] },
  ],
};

/** Composes bends that follow each other valve by valve where they can, each phrase with one figure. */
function composeBend(workshop: Workshop): Draft {
  const { random, key, level, bends, phrases } = workshop;
  const figures = FIGURES[level].filter((figure) => hasTimeFor(shortestStroke(figure), workshop));
  const bars: (readonly EtudeNote[])[] = [];
  let before: Bend | null = null;
  phrases.forEach(({ closes }, i) => {
    // The last phrase lets the tone settle.
    const figure = i === phrases.length - 1 || figures.length === 0 ? CLOSE_HOLD_OPEN : pick(random, figures);
    for (let half = 0; half < 2; half++) {
      figure.strokes.forEach((stroke, j) => {
        const isEnd = half === 1 && j === figure.strokes.length - 1;
        const place = !closes
          ? 'inside'
          : isEnd
            ? 'close'
            : half === 1 || figure.strokes.length === 1
              ? 'before-close'
              : 'inside';
        const bend: Bend = nextBend(random, bends, before, key, place);
        const music = strokeOf(bend, figure.first, stroke);
        bars.push(...music.map((bar, k) => (half + j + k === 0 ? withDynamic(bar, 'mf') : bar)));
        before = bend;
      });
    }
  });
  return { meter: FOUR_FOUR, bars };
}

function shortestStroke({ strokes }: Figure): number {
  const lengths = ([] as number[]).concat(...strokes.map((bars) => ([] as number[]).concat(...bars)));
  return Math.min(...lengths.filter((quarters) => quarters > 0));
}

function strokeOf(
  bend: Bend,
  first: HandSign,
  lengths: readonly (readonly number[])[],
): readonly (readonly EtudeNote[])[] {
  let sign = first;
  return lengths.map((bar, b) =>
    bar.map((quarters, i): EtudeNote => {
      if (quarters < 0) return rest(-quarters);
      const isLast = b === lengths.length - 1 && bar[i + 1] === -1;
      const each = { ...note(sign === 'open' ? bend.open : bend.stopped, quarters, sign), slides: !isLast };
      sign = sign === 'open' ? 'stopped' : 'open';
      return each;
    }),
  );
}

/** How near the next bend likes to lie, by semitones between the open notes. */
const STEP_WEIGHTS = [0.01, 1, 1, 0.5, 0.5, 0.3, 0.1, 0.2] as const;

/** Where in its phrase a bend stands. */
type Placing = 'inside' | 'before-close' | 'close';

function nextBend(
  random: Random,
  bends: readonly Bend[],
  before: Bend | null,
  key: Key,
  placing: Placing,
): Bend {
  const weights = bends.map((bend) => {
    const degree = degreeIn(key, bend.open);
    const fits = fitOf(degree, placing);
    if (!before) return degree === 0 || degree === 4 ? 1 : degree === 2 ? 0.5 : 0.02;
    const distance = Math.abs(Math.round((pitchCents(bend.open) - pitchCents(before.open)) / 100));
    const step = STEP_WEIGHTS[distance] ?? (distance <= 12 ? 0.001 : 1e-9);
    return step * fits * (bend.harmonic === before.harmonic ? 2 : 1);
  });
  return bends[Math.max(0, pickWeighted(random, weights))]!;
}

/** How well an open note of a degree (−1: outside the key) fits a place: a close rests on the tonic or on its chord. */
function fitOf(degree: number, placing: Placing): number {
  if (placing === 'close') return degree === 0 ? 30 : degree === 4 || degree === 2 ? 6 : 0.02;
  if (degree < 0) return 0.15;
  return placing === 'before-close' && degree === 0 ? 0.1 : 1;
}

/** The scale degree of a note in a key, or −1. */
function degreeIn(key: Key, written: Pitch): number {
  const found = scaleBetween(key, written, written)[0];
  return found ? found.degree : -1;
}
