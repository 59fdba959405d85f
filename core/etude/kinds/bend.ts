/** A tone closed and opened on one fingering: the hand alone makes the glissando, down when it closes, up when it opens. */
import {
  type Bar,
  bar,
  type EtudeNote,
  type Meter,
  note,
  rest,
  SIX_EIGHT,
  THREE_FOUR,
  withDynamic,
} from '../bar.ts';
import { type Figure, figure } from '../figure.ts';
import type { Level } from '../levels.ts';
import { pick, type Random } from '../random.ts';
import type { Bend } from '../tone.ts';
import { type Draft, fits, type Workshop } from '../workshop.ts';
import type { KindOfEtude } from './kind.ts';

/** What is done with one bend: a bar, or two. */
type Treatment = readonly Figure[];

type Treatments = { readonly [level in Level]: readonly Treatment[] };

const read = (...treatments: readonly string[]): readonly Treatment[] =>
  treatments.map((bars) => bars.split(' | ').map(figure));

/** One bar each, the calmest last. */
const IN_ONE_BAR: Treatments = {
  1: read('o2~ s1^ r1', 's2~ o1^ r1', 'o2~ s2_,', 's2~ o2_,', 'o2~ s2^,'),
  2: read('o1~ s1~ o1^ r1', 's1~ o1~ s1^ r1', 'o1~ s2^ r1', 's1~ o2_ r1', 'o2~ s1^ r1', 'o2~ s2^,'),
  3: read(
    'o.5~ s.5~ o.5~ s.5~ o1^ r1',
    'o1/3~ s1/3~ o1/3~ s1~ o1 r1',
    'o.5~ s.5~ o2^ r1',
    's1z~ o1~ s1^ r1',
    's1~ o2^ r1',
    'o1~ s1~ o1^ r1',
    'o2~ s2^,',
  ),
};
const IN_ONE_BAR_OF_THREE: Treatments = {
  1: read('o2~ s1^,'),
  2: read('o1~ s1~ o1^,', 's1~ o1~ s1^,', 'o1~ s1^ r1', 's1~ o1_ r1', 'o2~ s1^,', 'o1~ s2^,'),
  3: read(
    'o.5~ s.5~ o.5~ s.5~ o1^,',
    'o1/3~ s1/3~ o1/3~ s1~ o1,',
    'o.5~ s.5~ o1^ r1',
    's1z~ o1~ s1^,',
    's1~ o1^ r1',
    'o1~ s1~ o1^,',
    'o1~ s2^,',
  ),
};
const IN_ONE_BAR_OF_SIX: Treatments = {
  1: read('o1.5~ s1.5^,'),
  2: read('o1.5~ s1.5^,', 's1.5~ o1.5_,', 'o1.5~ s1^ r.5', 's1.5~ o1_ r.5', 'o1.5~ s1.5_,'),
  3: read(
    'o.5~ s.5~ o.5~ s1.5^,',
    'o.5~ s.5~ o.5~ s.5~ o1^ r.5',
    'o1~ s.5~ o1^ r.5',
    's1z~ o.5~ s1^ r.5',
    's1.5~ o1_ r.5',
    'o1.5~ s1.5^,',
  ),
};
/** Two bars each, the calmest last. */
const IN_TWO_BARS: Treatments = {
  1: read(
    'o3^ r1 | s2~ o2^,',
    's2~ o2~ | s3^ r1',
    'o4^, | o2~ s2^,',
    'o2~ s2_, | s2~ o2^,',
    'o2~< s2!~ | o3^ r1',
    'o2~ s2~ | o3^ r1',
  ),
  2: read('o1~ s1~ o1~ s1~ | o3^ r1', 'o2~ s1~ o1~ | s3^ r1', 's1~ o1~ s1~ o1~ | s3^ r1', 'o2~ s2~ | o3^ r1'),
  3: read(
    'o1~ s1~ o.5~ s.5~ o.5~ s.5~ | o2^ r2',
    'o.5~ s.5~ o.5~ s.5~ o1~ s1~ | o3^ r1',
    's1z~ o1~ s.5~ o.5~ s.5~ o.5~ | s3^ r1',
    'o2~ s2~ | o3^ r1',
  ),
};
const IN_TWO_BARS_OF_THREE: Treatments = {
  1: read('o2~ s1^, | o2~ s1^,'),
  2: read('o1~ s1~ o1~ | s2^ r1', 'o2~ s1~ | o2^ r1'),
  3: read('o1~ s1~ o.5~ s.5~ | o2^ r1', 'o.5~ s.5~ o.5~ s.5~ o1~ | s2^ r1', 'o2~ s1~ | o2^ r1'),
};

const IN_TWO_BARS_OF_SIX: Treatments = {
  1: read('o1.5~ s1.5^, | o1.5~ s1.5^,'),
  2: read('o1.5~ s1.5~ | o1.5^ r1.5', 's1.5~ o1.5~ | s1.5^ r1.5'),
  3: read(
    'o1~ s.5~ o.5~ s.5~ o.5~ | s1.5^ r1.5',
    'o.5~ s.5~ o.5~ s.5~ o.5~ s.5~ | o1.5^ r1.5',
    'o1.5~ s1.5~ | o1.5^ r1.5',
  ),
};

/** Composes bends from the smallest on, valve by valve on one harmonic, then on the next that bends further. */
function compose(workshop: Workshop): Draft {
  const { random, bends, level, length, meter } = workshop;
  // The last two bars of every eight let a bend settle.
  const doubles = Math.floor(length / 8);
  const chosen = chooseBends(random, bends, length - doubles, level);
  const [single, double] =
    meter === SIX_EIGHT
      ? [IN_ONE_BAR_OF_SIX, IN_TWO_BARS_OF_SIX]
      : meter === THREE_FOUR
        ? [IN_ONE_BAR_OF_THREE, IN_TWO_BARS_OF_THREE]
        : [IN_ONE_BAR, IN_TWO_BARS];
  const one = fitting(single[level], workshop);
  const two = fitting(double[level], workshop);
  const bars: Bar[] = [];
  let treated: Treatment | null = null;
  const said: { readonly bend: Bend; readonly treatment: Treatment }[] = [];
  chosen.forEach((bend, i) => {
    const isDouble = bars.length % 8 === 6;
    const isSaid = (each: Treatment | null) =>
      said.some((one) => one.bend === bend && one.treatment === each);
    const fresh = one.filter((each) => each !== treated && !isSaid(each));
    // The first goes down, as the hand closes.
    const falling = fresh.filter((each) => i > 1 || each[0]![0]!.hand === 'open');
    const choice = isDouble ? two : falling.length > 0 ? falling : fresh.length > 0 ? fresh : one;
    // A treatment is kept for two bends, so that the hand learns it.
    const made: Treatment =
      isDouble || i % 2 === 0 || !treated || isSaid(treated) ? pick(random, choice) : treated;
    treated = isDouble ? null : made;
    said.push({ bend, treatment: made });
    made.forEach((strokes, j) => {
      const each = barOf(bend, strokes, meter);
      bars.push(j === 0 && bars.length % 4 === 0 ? withDynamic(each, 'mf') : each);
    });
  });
  return bars;
}

function fitting(treatments: readonly Treatment[], workshop: Workshop): readonly Treatment[] {
  const those = treatments.filter((bars) => bars.every((each) => fits(each, workshop)));
  return those.length > 0 ? those : treatments.slice(-1);
}

function barOf(bend: Bend, strokes: Figure, meter: Meter): Bar {
  return bar(
    meter,
    strokes.map(({ hand, quarters, marks }): EtudeNote => {
      if (hand === null) return rest(quarters);
      return hand === 'open'
        ? { ...note(bend.open, quarters, 'open'), ...marks }
        : { ...note(bend.stopped, quarters, bend.hand), ...marks };
    }),
  );
}

/** As many tubes as a bend is practised on: 0, 2, 1, 12, 23 and 13. */
export const BEND_TUBES = 6;

/** Harmonics that can be bent on fewer tubes are used only where there is nothing else. */
const FEWEST_TUBES = 3;

/** The bends of one harmonic, from the shortest tube. */
type Run = readonly Bend[];

/** In what order the tubes are tried, given from the shortest: a new one each week, as the first level has six bends in all. */
const ORDERS: readonly ((tubes: readonly string[]) => readonly string[])[] = [
  (tubes) => tubes,
  (tubes) => tubes.slice().reverse(),
  // Every other, then those between.
  (tubes) => [...tubes.filter((_, i) => i % 2 === 0), ...tubes.filter((_, i) => i % 2 === 1)],
  // From both ends to the middle.
  (tubes) => tubes.map((_, i) => tubes[i % 2 === 0 ? i / 2 : tubes.length - (i + 1) / 2]!),
];

/**
 * So many bends, from the smallest drop: first one harmonic through its tubes, then those that drop further; at the
 * third level every second bend drops further, while the tubes go on. All on one side of the horn, the one with most.
 */
function chooseBends(random: Random, bends: readonly Bend[], count: number, level: Level): readonly Bend[] {
  const sides = distinct(bends.map(({ side }) => side));
  const side = sides.reduce((best, each) => (countOf(bends, each) > countOf(bends, best) ? each : best));
  const ours = bends.filter((bend) => bend.side === side);
  const all = distinct(ours.map(({ harmonic }) => harmonic)).map(
    (harmonic): Run =>
      ours.filter((bend) => bend.harmonic === harmonic).sort((a, b) => a.semitones - b.semitones),
  );
  // A harmonic that is in tune on a tube or two is left to them.
  const long = all.filter((run) => run.length >= FEWEST_TUBES);
  const runs = tubesOf(long).length >= Math.min(BEND_TUBES, tubesOf(all).length) ? long : all;
  const tubes = pick(random, ORDERS)(tubesOf(runs));
  // The smallest that has all its tubes, and from there on those that drop further.
  const first = Math.max(
    0,
    runs.findIndex((run) => run.length >= Math.min(tubes.length, BEND_TUBES)),
  );
  const order = level === 3 ? runs : runs.slice(first);
  // Where the side lacks a tube, the other lends one: it is a smaller bend, and comes first.
  const lent = bends.filter((bend) => bend.side !== side && bend.dropCents < ours[0]!.dropCents);
  const chosen: Bend[] = lent.slice(0, Math.max(0, Math.min(count - 1, BEND_TUBES - tubes.length)));
  const before = chosen.length;
  for (let i = 0; i < count - before; i++) {
    const isTried = ({ valves }: Bend) => chosen.some((each) => each.side === side && each.valves === valves);
    const next = order.findIndex((run) => run.some((bend) => !isTried(bend)));
    // When every tube has had its turn come bends that drop further, be they on one tube alone.
    const wider = ours.filter(
      (bend) => chosen.indexOf(bend) < 0 && bend.dropCents > order[0]![0]!.dropCents + CLEARLY,
    );
    if (level < 3 && next < 0 && wider.length > 0) {
      chosen.push(pick(random, wider.slice(0, WIDER_CHOICE)));
      continue;
    }
    const round = Math.floor(i / tubes.length) % order.length;
    const at = level === 3 ? Math.floor((i * order.length) / (count - before)) : next >= 0 ? next : round;
    const wanted = tubes[i % tubes.length]!;
    const run = order[at]!;
    const fresh = run.filter((bend) => chosen.indexOf(bend) < 0);
    const untried = fresh.filter((bend) => !isTried(bend));
    const best = untried.filter(({ valves }) => valves === wanted)[0] ?? untried[0];
    // When all have had their turn one comes back that was there least.
    const times = (bend: Bend) => chosen.filter((each) => each === bend).length;
    const least = Math.min(...run.map(times));
    chosen.push(
      best ??
        fresh[0] ??
        pick(
          random,
          run.filter((bend) => times(bend) === least),
        ),
    );
  }
  return sorted(chosen, all);
}

/** So many of the bends that drop further are drawn from. */
const WIDER_CHOICE = 3;

/** What counts as dropping further, in cents. */
const CLEARLY = 20;

/** The valves of some runs, from the shortest tube. */
function tubesOf(runs: readonly Run[]): readonly string[] {
  const bends = ([] as Bend[]).concat(...runs).sort((a, b) => a.semitones - b.semitones);
  return distinct(bends.map(({ valves }) => valves));
}

/** Harmonic after harmonic, the tubes of each as they came. */
function sorted(chosen: readonly Bend[], runs: readonly Run[]): readonly Bend[] {
  const inRuns = runs.map((run) => chosen.filter((bend) => run.indexOf(bend) >= 0));
  return chosen.filter((bend) => runs.every((run) => run.indexOf(bend) < 0)).concat(...inRuns);
}

function distinct<T>(things: readonly T[]): readonly T[] {
  return things.filter((each, i) => things.indexOf(each) === i);
}

function countOf(bends: readonly Bend[], side: string): number {
  return bends.filter((bend) => bend.side === side).length;
}

/** The kind, as the list of kinds has it. */
export const bend = {
  kind: 'bend',
  needs: 'bends',
  tempo: { 1: 60, 2: 60, 3: 69 },
  character: 'portando',
  compose,
} as const satisfies KindOfEtude;
