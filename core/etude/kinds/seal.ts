/** Long tones with the hand closed: does the bell stay sealed from beginning to end? */
import { type Bar, type Dynamic, FOUR_FOUR, type Meter, THREE_FOUR, withDynamic } from '../bar.ts';
import { type Figure, figure, inMeter, notesTaken, played } from '../figure.ts';
import { planPhrases } from '../harmony.ts';
import type { Level } from '../levels.ts';
import { drawMovingLine, type Place } from '../line.ts';
import { pick } from '../random.ts';
import type { Tone } from '../tone.ts';
import type { Draft, Workshop } from '../workshop.ts';
import type { KindOfEtude } from './kind.ts';

interface LongBar {
  readonly figure: Figure;
  readonly meter: Meter;
  readonly dynamic: Dynamic | null;
}

/** Four bars. A note that a bar does not change (`=`) is the note of the bar before. */
interface Pattern {
  readonly bars: readonly LongBar[];
  /** Bars that keep the note of the bar before, from 0. */
  readonly keeps: readonly number[];
}

function pattern(
  bars: readonly (readonly [string, Meter, Dynamic | null])[],
  keeps: readonly number[],
): Pattern {
  return { bars: bars.map(([text, meter, dynamic]) => ({ figure: figure(text), meter, dynamic })), keeps };
}

/**
 * Level 1 hears the open note first and closes over a rest; later the tones swell, join and take a hard beginning. Written
 * in four; on a sheet in another meter every bar has that.
 */
const PATTERNS: { readonly [level in Level]: readonly Pattern[] } = {
  1: [
    pattern(
      [
        ['o3 r1', FOUR_FOUR, 'mf'],
        ['s3_ r1', FOUR_FOUR, 'mf'],
        ['s3_-! r1', FOUR_FOUR, 'mf'],
        ['s3^_ r1', FOUR_FOUR, 'p'],
      ],
      [1],
    ),
    pattern(
      [
        ['o3 r1', FOUR_FOUR, 'mp'],
        ['s3_ r1', FOUR_FOUR, 'mp'],
        ['s3_<! r1', FOUR_FOUR, 'p'],
        ['s3_-! r1', FOUR_FOUR, 'mf'],
      ],
      [1],
    ),
    pattern(
      [
        ['o3 r1', FOUR_FOUR, 'p'],
        ['s3_<! r1', FOUR_FOUR, 'p'],
        ['s3_-! r1', FOUR_FOUR, 'mf'],
        ['s3^_ r1', FOUR_FOUR, 'p'],
      ],
      [1],
    ),
    pattern(
      [
        ['o3 r1', FOUR_FOUR, 'mf'],
        ['s3_ r1', FOUR_FOUR, 'mf'],
        ["s2( 's1) r1", FOUR_FOUR, 'p'],
        ['s3_-! r1', FOUR_FOUR, 'mf'],
      ],
      [1],
    ),
  ],
  2: [
    pattern(
      [
        ['o1 s3_', FOUR_FOUR, 'mf'],
        ['s4(<!', FOUR_FOUR, 'p'],
        ['s4)-!,', FOUR_FOUR, 'mf'],
        ['o1 s2^_ r1', FOUR_FOUR, 'p'],
      ],
      [],
    ),
    pattern(
      [
        ['s4(<!', FOUR_FOUR, 'p'],
        ['s4)-!,', FOUR_FOUR, 'f'],
        ['o2 s2_', FOUR_FOUR, 'mp'],
        ['s3^ r1', FOUR_FOUR, null],
      ],
      [],
    ),
    pattern(
      [
        ["s2(< 's2)!,", FOUR_FOUR, 'p'],
        ['o1 s3_', FOUR_FOUR, 'f'],
        ["s2(- 's2)!,", FOUR_FOUR, null],
        ['o1 s2^_ r1', FOUR_FOUR, 'mp'],
      ],
      [],
    ),
  ],
  3: [
    pattern(
      [
        ['o1 s3_,', FOUR_FOUR, 'mf'],
        ["s2(< 's2)!,", FOUR_FOUR, 'p'],
        ["s2(- 's1)!", THREE_FOUR, 'f'],
        ['o1 s2-! r1', FOUR_FOUR, 'mp'],
      ],
      [],
    ),
    pattern(
      [
        ['s4>-!', FOUR_FOUR, 'fp'],
        ['s3<!,', THREE_FOUR, 'p'],
        ["o1 s1_ 'o1", THREE_FOUR, 'mf'],
        ['s3-! r1', FOUR_FOUR, 'f'],
      ],
      [],
    ),
    pattern(
      [
        ["s1( 's3)<!", FOUR_FOUR, 'p'],
        ["s2>(- 's2)!,", FOUR_FOUR, 'f'],
        ["o1 s1_ 'o1", THREE_FOUR, 'mp'],
        ['s3-! r1', FOUR_FOUR, null],
      ],
      [],
    ),
  ],
};

/** Different notes in a phrase, at least: a bell is sealed on all of them, or on none. */
const FEWEST_NOTES = 3;

/** How far from the arch of the phrase a tone may lie, as a share of the range. */
const REACH: { readonly [level in Level]: number } = { 1: 0.6, 2: 0.6, 3: 0.6 };

function compose({ random, key, level, tones, length, meter: home }: Workshop): Draft {
  const made: Bar[] = [];
  let before: Tone | null = null;
  for (const { chords, ends, heights } of planPhrases(random, length / 4, key, false)) {
    const { bars, keeps } = pick(random, PATTERNS[level]);
    const long = home === FOUR_FOUR ? bars : bars.map((each) => barIn(each, home));
    const places: Place[] = [];
    long.forEach(({ figure: strokes }, i) => {
      const reach = REACH[level] * (random() - 0.5);
      for (let k = keeps.indexOf(i) >= 0 ? 1 : 0; k < notesTaken(strokes); k++)
        places.push({ chord: chords[i]!, firm: k === 0, height: heights[i]! + reach });
    });
    places[places.length - 1] = { ...places[places.length - 1]!, chord: ends, firm: true };
    const line: readonly Tone[] = drawMovingLine(random, tones, places, before, FEWEST_NOTES);
    let next = 0;
    long.forEach(({ figure: strokes, meter, dynamic }, i) => {
      if (keeps.indexOf(i) >= 0) next -= 1;
      const each = played(strokes, line.slice(next), meter);
      made.push(dynamic ? withDynamic(each, dynamic) : each);
      next += notesTaken(strokes);
    });
    before = line[line.length - 1]!;
  }
  return made;
}

function barIn(bar: LongBar, meter: Meter): LongBar {
  return bar.meter === meter ? bar : { ...bar, meter, figure: inMeter(bar.figure, meter) };
}

/** The kind, as the list of kinds has it. */
export const seal = {
  kind: 'seal',
  needs: 'notes',
  tempo: { 1: 60, 2: 60, 3: 66 },
  character: 'sostenuto',
  isRepetition: true,
  compose,
} as const satisfies KindOfEtude;
