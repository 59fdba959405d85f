/** Open and stopped in turn on one note, in ever shorter notes: the hand learns to be in time. */
import { type Bar, repeated, SIX_EIGHT, THREE_FOUR, withBreath, withDynamic } from '../bar.ts';
import { type Figure, figure, inMeter, played } from '../figure.ts';
import { planPhrases } from '../harmony.ts';
import type { Level } from '../levels.ts';
import { drawMovingLine, type Place } from '../line.ts';
import { pick } from '../random.ts';
import { pairsOf, type Tone } from '../tone.ts';
import { type Draft, fits, hasTimeFor, type Workshop } from '../workshop.ts';
import type { KindOfEtude } from './kind.ts';

const read = (texts: readonly string[]) => texts.map(figure);

/** Bars of ever quicker steps. */
type Steps = { readonly [level in Level]: readonly (readonly Figure[])[] };

/** From the slowest: each step is quicker than the one before. In each the hand ends on something longer. */
const FOURS: Steps = {
  1: [
    read(['o2 s2>', 's2> o2']),
    read(['o1 r1 s1> r1', 's1> r1 o1 r1']),
    read(['o.5 r.5 s.5> r.5 o1 r1', 's.5> r.5 o.5 r.5 s1> r1']),
  ],
  2: [
    read(['o2 s2z', 's2> o2']),
    read(['o1 s1> o2', 'o1 s1> o1 s1>', 's1> o1 s2']),
    read(['o.5 o.5 s.5> s.5 o1 s1>', 'o1 s.5> s.5 o.5 o.5 s1>', 's.5> s.5 o1 s.5> s.5 o1']),
  ],
  3: [
    read(['o1 s1z o1 s1>', 's1> o1 s2', 'o2 s1z o1']),
    read(['o.5 s.5 o.5 s.5 o1 s1>', 'o1 s.5 o.5 s1> o1', 's.5 o.5 s1> o.5 s.5 o1']),
    read(['o1/3 s1/3 o1/3 s1 o1 s1>', 'o1 s1/3 o1/3 s1/3 o2', 's1/3 o1/3 s1/3 o1 s1/3 o1/3 s1/3 o1']),
    read(['o.25 s.25 o.25 s.25 o1 s1> o1', 'o1 s.25 o.25 s.25 o.25 s2>', 's.25 o.25 s.25 o.25 s1> o1 s1>']),
  ],
};

const THREES: Steps = {
  1: [read(['o2 s1>', 's2> o1']), read(['o1 r1 s1>', 's1> r1 o1'])],
  2: [
    read(['o2 s1z', 's2> o1']),
    read(['o1 s1> o1', 's1> o1 s1']),
    read(['o.5 o.5 s.5> s.5 o1', 'o1 s.5> s.5 o1', 's.5> s.5 o.5 o.5 s1>']),
  ],
  3: [
    read(['o1 s1z o1', 's1> o1 s1']),
    read(['o.5 s.5 o.5 s.5 o1', 'o1 s.5 o.5 s1>', 's.5 o.5 s1> o1']),
    read(['o1/3 s1/3 o1/3 s1 o1', 'o1 s1/3 o1/3 s1/3 o1', 's1/3 o1/3 s1/3 o1 s1>']),
    read(['o.25 s.25 o.25 s.25 o1 s1>', 'o1 s.25 o.25 s.25 o.25 s1>', 's.25 o.25 s.25 o.25 s1> o1']),
  ],
};

/** On the second level the hand moves with the beat while the notes get shorter. */
const SIXES: Steps = {
  1: [read(['o1.5 s1.5>', 's1.5> o1.5'])],
  2: [
    read(['o1.5 s1.5z', 's1.5> o1.5']),
    read(['o1 o.5 s1> s.5', 's1> s.5 o1 o.5', 'o1.5 s1> s.5']),
    read(['o.5 o.5 o.5 s.5> s.5 s.5', 's.5> s.5 s.5 o.5 o.5 o.5', 'o1 o.5 s.5> s.5 s.5']),
  ],
  3: [
    read(['o1.5 s1.5z', 's1.5> o1.5']),
    read(['o1 s.5 o1 s.5>', 's1> o.5 s1 o.5', 'o1 s.5 o1.5']),
    read(['o.5 s.5 o.5 s1.5>', 's.5 o.5 s.5 o1.5', 's.5 o.5 s.5> o.5 s.5 o.5']),
    read(['o.25 s.25 o.25 s.25 o.5 s1.5>', 's.25 o.25 s.25 o.25 s.5 o1.5', 'o1.5 s.25 o.25 s.25 o.25 s.5>']),
  ],
};

/** Different notes in a phrase, at least. */
const FEWEST_NOTES = 3;

/** So often are the quickest bars by level. */
const TIMES: { readonly [level in Level]: number } = { 1: 2, 2: 3, 3: 3 };

/** Composes four bars at a time, each bar in notes as short as those before it or shorter, the last for the hand to rest. */
function compose(workshop: Workshop): Draft {
  const { random, key, level, tones, length, meter } = workshop;
  const { pairs, restsOpen } = pairsOf(tones);
  const steps = (meter === SIX_EIGHT ? SIXES : meter === THREE_FOUR ? THREES : FOURS)[level]
    .map((figures) => figures.filter((each) => fits(each, workshop)))
    .filter((figures, i) => i === 0 || figures.length > 0);
  const first = steps[0]!.length > 0 ? steps[0]! : [inMeter(figure('o2 s2>'), meter)];
  const count = length / 4;
  const moving = 3 * count;
  const bars: Bar[] = [];
  let before: Tone | null = null;
  let at = 0;
  let lastStep = -1;
  planPhrases(random, count, key, workshop.wanders).forEach(({ chords, ends, heights, keys }, i) => {
    const places = chords.map((chord, bar): Place => ({ chord, firm: true, height: heights[bar]! }));
    places[3] = { chord: ends, firm: true, height: heights[3]! };
    const line: readonly Tone[] = drawMovingLine(random, pairs, places, before, FEWEST_NOTES).map(
      (tone, bar) => workshop.toneIn(tone, keys[bar]!),
    );
    const phrase: Bar[] = [];
    let used: Figure | null = null;
    for (let bar = 0; bar < 3; bar++) {
      const step = Math.floor((at * steps.length) / moving);
      at += 1;
      const choice: readonly Figure[] = step === 0 ? first : steps[step]!;
      const fresh = choice.filter((each) => each !== used);
      used = pick(random, fresh.length > 0 ? fresh : choice);
      const made = played(used, [line[bar]!], meter);
      const dynamic = step !== lastStep ? (step === steps.length - 1 ? 'f' : 'mf') : null;
      lastStep = step;
      const loud = dynamic ? withDynamic(made, dynamic) : made;
      phrase.push(bar === 1 ? withBreath(loud) : loud);
    }
    const isQuick = hasTimeFor(1, workshop) && level > 1;
    const rests = figure(
      restsOpen ? (isQuick ? 's1 o2 r1' : 's2 o1 r1') : isQuick ? 'o1 s2_ r1' : 'o2 s1_ r1',
    );
    phrase.push(played(inMeter(rests, meter), [line[3]!], meter));
    // The quickest come last and again.
    bars.push(...(i === count - 1 ? repeated(phrase, TIMES[level]) : phrase));
    before = line[3]!;
  });
  return bars;
}

/** The kind, as the list of kinds has it. */
export const change = {
  kind: 'change',
  needs: 'notes',
  tempo: { 1: 60, 2: 63, 3: 60 },
  isByPairs: true,
  character: 'ben misurato',
  isRepetition: true,
  compose,
} as const satisfies KindOfEtude;
