/** Stopped scales and broken chords in a key. */
import { type Pitch, pitchCents } from '../pitch/pitch.ts';
import { type EtudeNote, FOUR_FOUR, note, rest, withBreath, withDynamic } from './bar.ts';
import type { PhrasePlan } from './harmony.ts';
import type { Degree } from './key.ts';
import type { Level } from './level.ts';
import { pick } from './random.ts';
import { type Draft, hasTimeFor, type KindOfEtude, type Workshop } from './workshop.ts';

/** The kind, as the list of kinds has it. */
export const scale = {
  kind: 'scale',
  name: 'scales and chords',
  title: 'Stairs in the Dark',
  trains: 'Scales and broken chords with the hand closed: know the fingerings, centre every note.',
  trainsOnNaturalHorn:
    'Scales and broken chords by hand: bring what the hand makes close to what the horn gives.',
  tempo: 72,
  needs: 'notes',
  onNaturalHorn: true,
  compose: composeScale,
} as const satisfies KindOfEtude;

/** One bar of moving notes, in quarters, by level. */
const RHYTHMS: { readonly [level in Level]: readonly number[] } = {
  1: [1, 1, 1, 1],
  2: [0.5, 0.5, 1, 0.5, 0.5, 1],
  3: [0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5],
};

/** A walk over the notes at hand, as indices into them, that ends near `home`; `length` notes long. */
type Walk = (notes: readonly Degree[], home: number, length: number, plan: PhrasePlan) => readonly number[];

/** Composes scales and broken chords by turns. At the first level each is heard open before it is stopped. */
function composeScale(workshop: Workshop): Draft {
  const { random, notes, level, phrases, hand, hasOpenModel } = workshop;
  const home = homeOf(notes);
  const rhythm = RHYTHMS[hasOpenModel ? level : fastestLevel(workshop)];
  const walks = pick(random, [
    [ladder, brokenChords, thirds, brokenChords],
    [brokenChords, ladder, thirds, brokenChords],
    [thirds, brokenChords, ladder, brokenChords],
  ] as const);
  const bars: (readonly EtudeNote[])[] = [];
  let written: readonly (readonly EtudeNote[])[] = [];
  phrases.forEach((plan, i) => {
    const isByPairs = level === 1 && hasOpenModel;
    const isOpenModel = isByPairs && i % 2 === 0 && i + 1 < phrases.length;
    const isAnswer = isByPairs && i % 2 === 1;
    if (!isAnswer) {
      const turn = isByPairs ? i / 2 : i;
      const walk = walks[Math.floor(turn) % walks.length]!;
      written = phraseOf(notes, hand, home, rhythm, walk(notes, home, 3 * rhythm.length, plan));
    }
    bars.push(...(isOpenModel ? written.map((bar) => bar.map(opened)) : written));
  });
  return { meter: FOUR_FOUR, bars };
}

/** On a natural horn the hand moves from note to note, so that a quick tempo calls for longer notes. */
function fastestLevel({ level, tempo }: Workshop): Level {
  const levels: readonly Level[] = [3, 2, 1];
  const fits = (each: Level) => each <= level && hasTimeFor(Math.min(...RHYTHMS[each]), { level: 3, tempo });
  return levels.filter(fits)[0] ?? 1;
}

function opened(each: EtudeNote): EtudeNote {
  return each.written ? { ...each, sign: 'open' } : each;
}

/** The index where the walks come home: the lowest tonic with three notes above it, else any tonic, else the lowest note. */
function homeOf(notes: readonly Degree[]): number {
  const tonics = notes.map(({ degree }, i) => (degree === 0 ? i : -1)).filter((i) => i >= 0);
  return tonics.filter((i) => i + 3 < notes.length)[0] ?? tonics[0] ?? 0;
}

function phraseOf(
  notes: readonly Degree[],
  hand: Workshop['hand'],
  home: number,
  rhythm: readonly number[],
  walk: readonly number[],
): readonly (readonly EtudeNote[])[] {
  const bars = [0, 1, 2].map((bar) =>
    rhythm.map((quarters, i) => {
      const { written } = notes[walk[bar * rhythm.length + i]!]!;
      return note(written, quarters, hand(written));
    }),
  );
  return [
    withDynamic(bars[0]!, 'mf'),
    withBreath(bars[1]!),
    bars[2]!,
    homeward(notes, hand, home, walk[walk.length - 1]!),
  ];
}

/** The closing bar: by step to the home note, which is held. */
function homeward(
  notes: readonly Degree[],
  hand: Workshop['hand'],
  home: number,
  last: number,
): readonly EtudeNote[] {
  const way: number[] = [];
  for (let i = last; i !== home; ) {
    i += i < home ? 1 : -1;
    way.push(i);
  }
  // At most three notes lead home; from further off they leap evenly.
  const count = Math.min(3, way.length);
  const steps = Array.from(
    { length: count },
    (_, i) => notes[way[Math.ceil(((i + 1) * way.length) / count) - 1]!]!.written,
  );
  const by = (written: Pitch, quarters: number) => note(written, quarters, hand(written));
  if (steps.length === 0) return [by(notes[home]!.written, 3), rest(1)];
  const held = 3 - (steps.length - 1);
  return [...steps.map((written, i) => by(written, i === steps.length - 1 ? held : 1)), rest(1)];
}

/**
 * Up and down between two turning points. They are chosen so that the walk covers as much as it can and ends within
 * three steps of home.
 */
const ladder: Walk = (notes, home, length) => {
  let best: readonly number[] = [];
  let bestScore = Number.NEGATIVE_INFINITY;
  for (let low = 0; low <= home; low++) {
    for (let high = home + 1; high < notes.length; high++) {
      const walk = between(low, high, home, length);
      const left = Math.abs(walk[length - 1]! - home);
      const span = high - low;
      // Nine notes are as much as a phrase carries; a walk that is already home, or far from it, closes badly.
      const score = (left >= 1 && left <= 3 ? 10 : 0) + Math.min(span, 8) - 0.2 * (home - low);
      if (score > bestScore) {
        bestScore = score;
        best = walk;
      }
    }
  }
  return best.length > 0 ? best : between(0, notes.length - 1, home, length);
};

function between(low: number, high: number, start: number, length: number): readonly number[] {
  const walk: number[] = [];
  let at = start;
  let step = 1;
  for (let i = 0; i < length; i++) {
    walk.push(at);
    if (at + step > high || at + step < low) step = -step;
    at = Math.min(high, Math.max(low, at + step));
  }
  return walk;
}

/** Broken thirds up, then down; broken chords where the notes at hand end too soon. */
const thirds: Walk = (notes, home, length, plan) => {
  const pairs = length / 2;
  const room = notes.length - 1 - home;
  const up = Math.min(Math.ceil(pairs / 2), room - 2);
  const down = pairs - up;
  const top = home + down + 2;
  if (up < 2 || top > notes.length - 1) return brokenChords(notes, home, length, plan);
  const walk: number[] = [];
  for (let i = 0; i < up; i++) walk.push(home + i, home + i + 2);
  for (let i = 0; i < down; i++) walk.push(top - i, top - i - 2);
  return walk;
};

/** Each bar breaks its chord up and down, from the chord note nearest to where the last bar ended. */
const brokenChords: Walk = (notes, home, length, plan) => {
  const perBar = length / 3;
  const walk: number[] = [];
  for (let bar = 0; bar < 3; bar++) {
    const chord = plan.chords[bar]!;
    const tones = notes.map(({ degree }, i) => (chord.indexOf(degree) >= 0 ? i : -1)).filter((i) => i >= 0);
    if (tones.length < 3) return ladder(notes, home, length, plan);
    // The last bar turns back towards home, so that the close is near; no bar begins with a leap beyond the octave.
    const starts = tones.slice(0, -2).map((_, i) => i);
    const near = walk[walk.length - 1] ?? home;
    const inReach = starts.filter((i) => Math.abs(semitones(notes, tones[i]!, near)) <= 12);
    const lowest = nearestTo(bar === 2 ? home : near, inReach.length > 0 ? inReach : starts, tones);
    const highest = Math.min(tones.length - 1, lowest + (perBar > 6 ? 3 : 2));
    walk.push(...between(lowest, highest, lowest, perBar).map((i) => tones[i]!));
  }
  return walk;
};

/** The one of some indices into `tones` whose note lies nearest to a note's place. */
function nearestTo(place: number, indices: readonly number[], tones: readonly number[]): number {
  let best = indices[0]!;
  for (const i of indices) if (Math.abs(tones[i]! - place) < Math.abs(tones[best]! - place)) best = i;
  return best;
}

function semitones(notes: readonly Degree[], from: number, to: number): number {
  return (pitchCents(notes[to]!.written) - pitchCents(notes[from]!.written)) / 100;
}
