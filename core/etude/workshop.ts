/** What every kind of étude is made from, and what each makes of it. */
import { type Bar, type Meter, quartersOf } from './bar.ts';
import { changesIn, type Figure } from './figure.ts';
import type { Key } from './key.ts';
import type { Level, LevelPlan } from './levels.ts';
import { pick, type Random } from './random.ts';
import type { Bend, Tone } from './tone.ts';

/** Everything at hand when an étude is composed. */
export interface Workshop {
  readonly random: Random;
  readonly key: Key;
  readonly level: Level;
  readonly plan: LevelPlan;
  /** Beats a minute. */
  readonly tempo: number;
  /** The meter in which it begins and ends; between, the level may mix them. */
  readonly meter: Meter;
  /** How many bars it is to have: a multiple of four. */
  readonly length: number;
  /** The tones of the key in the range, lowest first: those that can be heard open and closed, on a natural horn all. */
  readonly tones: readonly Tone[];
  /** Every bend in the range, the smallest first; empty unless the kind asks for them. */
  readonly bends: readonly Bend[];
  readonly isNatural: boolean;
  /** True where the music goes to other keys and comes home: not on a horn that has the notes of few keys. */
  readonly wanders: boolean;
  /** The least time from one note to the next where the hand changes, in seconds: of the level, or of a slower player. */
  readonly handSeconds: number;
  /** A tone as another key has it; the tone itself where it cannot be played so. */
  toneIn(tone: Tone, key: Key): Tone;
}

/** The bars of an étude. */
export type Draft = readonly Bar[];

/** True when there is time to change the hand after so many quarters. */
export function hasTimeFor(
  quarters: number,
  { handSeconds, tempo, meter }: Pick<Workshop, 'handSeconds' | 'tempo' | 'meter'>,
): boolean {
  return (quarters * 60) / (tempo * meter.beatQuarters) >= handSeconds - 1e-9;
}

/** True when a figure changes the hand only where level and tempo let it. */
export function fits(figure: Figure, workshop: Workshop): boolean {
  const { changeAfterQuarters, changeGridBeats } = workshop.plan;
  const grid = changeGridBeats * workshop.meter.beatQuarters;
  return changesIn(figure).every(
    ({ after, at, overRest }) =>
      hasTimeFor(after, workshop) &&
      (overRest || after >= changeAfterQuarters - 1e-9) &&
      (grid === 0 || Math.abs(at / grid - Math.round(at / grid)) < 1e-6),
  );
}

/** One of the figures that level and tempo allow, or the last, which every table makes the calmest. */
export function pickFitting(figures: readonly Figure[], workshop: Workshop): Figure {
  const fitting = figures.filter((each) => fits(each, workshop));
  return fitting.length > 0 ? pick(workshop.random, fitting) : figures[figures.length - 1]!;
}

/** True when a figure fills a bar. */
export function fills(figure: Figure, meter: Meter): boolean {
  const quarters = figure.reduce((sum, stroke) => sum + stroke.quarters, 0);
  return Math.abs(quarters - quartersOf(meter)) < 1e-6;
}
