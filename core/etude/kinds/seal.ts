/** Long tones with the hand closed: does the bell stay sealed from beginning to end? */
import { asPhrase, type Bar, type Dynamic, FOUR_FOUR, type Meter, THREE_FOUR, withDynamic } from '../bar.ts';
import { type Figure, figure, inMeter, notesTaken, played } from '../figure.ts';
import { planPhrases } from '../harmony.ts';
import type { Level } from '../levels.ts';
import { drawMovingLine, type Place } from '../line.ts';
import { pick } from '../random.ts';
import { isGapped, type Tone } from '../tone.ts';
import type { Draft, Workshop } from '../workshop.ts';
import type { KindOfEtude } from './kind.ts';

interface LongBar {
  readonly figure: Figure;
  readonly meter: Meter;
  readonly dynamic: Dynamic | null;
  /** True when it begins with the note of the bar before: tied to it, or heard open there. */
  readonly isSame: boolean;
}

/** The bars of a phrase. */
type Pattern = readonly LongBar[];

const DYNAMICS: readonly string[] = ['p', 'mp', 'mf', 'f', 'fp'];

/**
 * Reads a phrase of figures: before the first word of a bar may stand `same` (it takes the note of the bar before, as a
 * bar that is tied to that does of itself), its dynamic, and `3/4` for a bar in three among those in four.
 */
function pattern(text: string): Pattern {
  let isHeld = false;
  return text.split(' | ').map((bar) => {
    const words = bar.split(' ');
    const isWord = (word: string) => word === 'same' || word === '3/4' || DYNAMICS.indexOf(word) >= 0;
    const strokes = figure(words.filter((word) => !isWord(word)).join(' '));
    const isSame = isHeld || words.indexOf('same') >= 0;
    isHeld = strokes[strokes.length - 1]!.marks.ties;
    return {
      figure: strokes,
      meter: words.indexOf('3/4') >= 0 ? THREE_FOUR : FOUR_FOUR,
      dynamic: (words.filter((word) => DYNAMICS.indexOf(word) >= 0)[0] ?? null) as Dynamic | null,
      isSame,
    };
  });
}

type Patterns = { readonly [level in Level]: readonly Pattern[] };

/**
 * Four bars. Level 1 hears the open note first and closes over a rest, with tones of a bar; then they are held over the
 * bar line, and swell and fade as they go: two bars, at last as many as a breath lasts. Written in four; on a sheet in
 * another meter every bar has that. From the second level on the last is for a tempo at which a breath is too short for
 * the others.
 */
const IN_FOUR_BARS: Patterns = {
  1: [
    'mf o3 r1 | same s3_ r1 | s3_-! r1 | p s3^_ r1',
    'mp o3 r1 | same s3_ r1 | p s3_<! r1 | mf s3_-! r1',
    'p o3 r1 | same s3_<! r1 | mf s3_-! r1 | p s3^_ r1',
    "mf o3 r1 | same s3_ r1 | p s2( 's1) r1 | mf s3_-! r1",
  ].map(pattern),
  2: [
    'mf o2 s2_, | p s4<!= | f s4-!, | mp s3^_ r1',
    'p s4<!= | f s4-!, | mf o2 s2_, | p s3^_ r1',
    'mf s4-= | s4!, | mp o1 s3_, | p s3^_ r1',
    'mf o1 s2_ r1 | p o1 s3_<!= | f s3-! r1 | mp s3^_ r1',
  ].map(pattern),
  3: [
    "mf o1 's2_ r1 | p s4<!= | s4= | s3-!^ r1",
    "p s4<!= | f s4= | s4-!, | f o1 's2^_ r1",
    "fp s4><= | s4= | s3! r1 | mf o1 's2^_ r1",
    'mf o1 s2> r1 | p s4<!= | f s4-!, | mp s3^_ r1',
  ].map(pattern),
};
/** Eight bars. */
const IN_EIGHT_BARS: Patterns = {
  1: [],
  2: [
    'p o1 s3_<!= | f s3-! r1 | p s4<!= | f s4-!, | mf o1 s3_= | s3 r1 | mf s4-= | s3!^ r1',
    'mf s4-= | s4!, | p s4<!= | f s4-!, | mp o2 s2_= | s3 r1 | p s4<!= | s3-!^ r1',
    'p s4<= | s4!, | f s4-= | s4!, | mf o1 s3_= | s3-! r1 | p s4<!= | s3-!^ r1',
    'p s4<!= | f s4= | s4-!, | mf o1 s3_-= | s3! r1 | p s4<!= | f s4-= | s3!^ r1',
    'mf o1 s3_= | s3-! r1 | p s4<= | s4!= | f s4-!, | f s4-= | s4= | s3!^ r1',
    'mf o2 s2_= | s3 r1 | p o1 s3_<!= | f s3-! r1 | mf o1 s3_= | s3-! r1 | p o2 s2_= | s3^ r1',
  ].map(pattern),
  3: [
    'p s4<!= | f s4= | s4-!, | fp s4><= | s4= | s3! r1 | f s4-= | s3!^ r1',
    'f s4-= | s4!, | p s4<= | s4!= | f s4-!, | mf s4>-= | s4= | s3!^ r1',
    'p s4<= | s4!= | f s4-= | s4!, | fp s4><= | s4!, | p s4<!= | s3-!^ r1',
    'f s4>-= | s4!, | p o1 s3_<= | s4!= | f s4-= | s3! r1 | p s4<!= | s3-!^ r1',
    'p o1 s3_<= | s4!= | s3-! r1 | f s4>-= | s4!, | p s4<!= | f s4-= | s3!^ r1',
    'p s4<!= | f 3/4 s3= | s4-!, | f s4>-= | 3/4 s3!, | p s4<= | 3/4 s3!= | s3-!^ r1',
    'f s4>-= | 3/4 s3= | s4!, | p s4<!= | 3/4 s3-!, | fp s4><= | 3/4 s3!= | s3-!^ r1',
    'f s4>-= | s4!, | p o1 s3_<!= | f s3-! r1 | f o1 s3>-= | s3! r1 | p s4<!= | s3-!^ r1',
  ].map(pattern),
};

/**
 * How long the longest tone of a phrase may last, in seconds. From memory: a player holds an open tone for a dozen; with
 * the hand in the air goes sooner.
 */
const LONGEST_SECONDS: { readonly [level in Level]: number } = { 1: 6, 2: 9, 3: 11.5 };

/** Different notes in a phrase, at least: a bell is sealed on all of them, or on none. */
const FEWEST_NOTES = 3;

/** How far from the arch of the phrase a tone may lie, as a share of the range. */
const REACH = 0.6;

function compose(workshop: Workshop): Draft {
  const { random, key, level, tones, length, meter: home } = workshop;
  const made: Bar[] = [];
  // Few tones are not tied to chords besides.
  const isFree = !isGapped(tones);
  let before: Tone | null = null;
  let last: Pattern | null = null;
  const counts = phraseLengths(length, level);
  planPhrases(random, counts.length, key, false).forEach(({ chords, ends, heights }, at) => {
    const bars: Pattern = pick(random, fitting(counts[at]!, last, workshop));
    last = bars;
    const long = bars.map((each) => barIn(each, home));
    const places: Place[] = [];
    long.forEach(({ figure: strokes, isSame }, i) => {
      // Eight bars have the harmony of four, each for as long again.
      const quarter = Math.floor((4 * i) / long.length);
      const reach = REACH * (random() - 0.5);
      for (let k = isSame ? 1 : 0; k < notesTaken(strokes); k++)
        places.push({ chord: chords[quarter]!, firm: k === 0 && isFree, height: heights[quarter]! + reach });
    });
    places[places.length - 1] = { ...places[places.length - 1]!, chord: ends, firm: true };
    const line: readonly Tone[] = drawMovingLine(random, tones, places, before, FEWEST_NOTES);
    let next = 0;
    const phrase = long.map(({ figure: strokes, meter, dynamic, isSame }) => {
      if (isSame) next -= 1;
      const each = played(strokes, line.slice(next), meter);
      next += notesTaken(strokes);
      return dynamic ? withDynamic(each, dynamic) : each;
    });
    made.push(...asPhrase(phrase));
    before = line[line.length - 1]!;
  });
  return made;
}

/** Bars of the phrases: four at the first level; then eight, since a tone takes two and more, and four for what is left. */
function phraseLengths(bars: number, level: Level): readonly number[] {
  if (level === 1) return new Array<number>(bars / 4).fill(4);
  return [...new Array<number>(Math.floor(bars / 8)).fill(8), ...(bars % 8 > 0 ? [4] : [])];
}

/** The patterns of so many bars that a breath is enough for, another than that of the phrase before. */
function fitting(bars: number, last: Pattern | null, { level, meter, tempo }: Workshop): readonly Pattern[] {
  const all = (bars === 8 ? IN_EIGHT_BARS : IN_FOUR_BARS)[level];
  const beatSeconds = 60 / (tempo * meter.beatQuarters);
  const usual = level === 1 ? all : all.slice(0, -1);
  const those = usual.filter(
    (each) => each !== last && longestTone(each, meter) * beatSeconds <= LONGEST_SECONDS[level] + 1e-6,
  );
  return those.length > 0 ? those : all.slice(-1);
}

/** The longest tone of a pattern in some meter, in quarters. */
function longestTone(bars: Pattern, meter: Meter): number {
  let [longest, tone] = [0, 0];
  for (const each of bars)
    for (const { hand, quarters, marks } of barIn(each, meter).figure) {
      tone += hand === null ? 0 : quarters;
      longest = Math.max(longest, tone);
      if (!marks.ties) tone = 0;
    }
  return longest;
}

function barIn(bar: LongBar, home: Meter): LongBar {
  return home === FOUR_FOUR || bar.meter === home
    ? bar
    : { ...bar, meter: home, figure: inMeter(bar.figure, home) };
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
