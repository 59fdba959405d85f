/** An open note matched by the same note stopped: the ear sets the pitch, lip and hand find it again. */
import {
  type Bar,
  FOUR_FOUR,
  type Meter,
  mostOfOneBar,
  SIX_EIGHT,
  THREE_FOUR,
  withBreath,
  withDynamic,
} from '../bar.ts';
import { type Figure, figure, inMeter, notesTaken, played } from '../figure.ts';
import { type PhrasePlan, planPhrases } from '../harmony.ts';
import type { Level } from '../levels.ts';
import { drawMovingLine, type Place } from '../line.ts';
import { pick } from '../random.ts';
import { pairsOf, type Tone } from '../tone.ts';
import { type Draft, fits, hasTimeFor, pickFitting, type Workshop } from '../workshop.ts';
import type { KindOfEtude } from './kind.ts';

const read = (texts: readonly string[]) => texts.map(figure);

/** What a bar may be, by meter and level, each note open before it is closed; the calmest last. */
const FOURS: { readonly [level in Level]: readonly Figure[] } = {
  1: read(['o1 r1 s1_ r1', 'o1 r1 s2_', 'o2 s1_ r1', 'o2 s2_']),
  2: read([
    'o1 s2_ o1',
    "o1 s1_ 'o1 s1_",
    "o1( 'o1) s2_",
    "o1 s1_ 'o2",
    'o1 s1_ o2',
    "o.5( 'o.5 'o1) s1_ o1",
    'o1 s1_ r1 s1_',
    'o2 s2_',
  ]),
  3: read([
    "o.5 s.5_ 'o.5 s.5_ 'o1 s1_",
    "o1 s1_ 'o.5 s.5_ 'o1",
    "o1/3( 'o1/3 'o1/3) s1_ o1 s1_",
    "o.5 s.5_ 'o.5 s.5_ 'o.5( 'o.5) s1_",
    'o1.5 s.5> o1 s1_',
    "o1 s1_ 'o1/3 s1/3_ s1/3 s1_",
    'o1 s2_ o1',
    'o2 s2_',
  ]),
};
const THREES: { readonly [level in Level]: readonly Figure[] } = {
  1: read(['o2 s1_']),
  2: read([
    'o1 s1_ o1',
    "o1 s1_ 'o1",
    "o1( 'o1) s1_",
    "o.5( 'o.5) s1_ o1",
    "o.5( 'o.5 'o1) s1_",
    'o2 s1_',
    'o1 s2_',
  ]),
  3: read([
    'o1 s1_ o1',
    "o.5 s.5_ 'o1 s1_",
    "o1 s.5_ 'o.5 s1_",
    "o.5( 'o.5) s1_ o1",
    "o1/3( 'o1/3 'o1/3) s1_ o1",
    "o1 s1_ 'o.5 s.5_",
    'o1 s2_',
  ]),
};
/** On the second level the hand moves with the beat, of which there are two. */
const SIXES: typeof FOURS = {
  1: read(['o1.5 s1.5_']),
  2: read([
    'o1 o.5 s1_ s.5_',
    "o1( 'o.5) s1.5_",
    "o.5( 'o.5 'o.5) s1.5_",
    'o1.5 s1_ s.5_',
    'o1.5 s1_ r.5',
    'o1.5 s1.5_',
  ]),
  3: read([
    "o1 s.5_ 'o1 s.5_",
    "o.5 s.5_ s.5 'o.5 s.5_ s.5",
    "o1( 'o.5) s1_ o.5",
    "o.5( 'o.5 'o.5) s1_ s.5",
    'o1 o.5 s1_ s.5_',
    'o1.5 s1.5_',
  ]),
};
const CLOSES: { readonly [level in Level]: readonly Figure[] } = {
  1: read(['o2 s1_ r1', 'o1 r1 s1_ r1']),
  2: read(['o1 s2_ r1', 'o2 s1_ r1']),
  3: read(['o1 s2_ r1', 'o.5 s1.5_ o1 r1', 'o2 s1_ r1']),
};

/** Where the tonic is an open note of a natural horn. */
const OPEN_CLOSES: readonly Figure[] = read(['s1 o2 r1', 's2 o1 r1']);

/** Different notes in a phrase, at least. */
const FEWEST_NOTES = 3;

function compose(workshop: Workshop): Draft {
  const { random, key, length } = workshop;
  const bars: Bar[] = [];
  let before: Tone | null = null;
  for (const plan of planPhrases(random, length / 4, key, false)) {
    let drawn = drawPhrase(workshop, plan, before);
    // On few notes a bar soon comes a third time.
    for (let draw = 1; draw < DRAWS && mostOfOneBar([...bars, ...drawn.bars]) > 2; draw++)
      drawn = drawPhrase(workshop, plan, before);
    bars.push(...drawn.bars);
    before = drawn.last;
  }
  return bars;
}

/** Phrases drawn at most before one that repeats too much is taken. */
const DRAWS = 8;

function drawPhrase(
  workshop: Workshop,
  { chords, ends, heights }: PhrasePlan,
  before: Tone | null,
): { readonly bars: readonly Bar[]; readonly last: Tone } {
  const { random, level, plan, tones, meter: home } = workshop;
  const other = home === FOUR_FOUR ? THREE_FOUR : home === THREE_FOUR ? FOUR_FOUR : home;
  const { pairs, restsOpen } = pairsOf(tones);
  const meters: Meter[] = [0, 1, 2].map((bar) =>
    bar > 0 && plan.isMixed && hasTimeFor(1, workshop) && random() < 0.35 ? other : home,
  );
  const used: Figure[] = [];
  const figures = meters.map((meter) => {
    const choice = (meter === FOUR_FOUR ? FOURS : meter === THREE_FOUR ? THREES : SIXES)[level];
    const fresh = choice.filter((each) => used.indexOf(each) < 0 && fits(each, workshop));
    const chosen = fresh.length > 0 ? pick(random, fresh) : pickFitting(choice, workshop);
    used.push(chosen);
    return chosen;
  });
  const closes = restsOpen ? OPEN_CLOSES : CLOSES[level];
  const short = closes.filter((each) => home !== SIX_EIGHT || each.length <= 3);
  figures.push(
    pickFitting(
      short.map((each) => inMeter(each, home)),
      workshop,
    ),
  );
  const places: Place[] = [];
  figures.forEach((strokes, bar) => {
    for (let i = 0; i < notesTaken(strokes); i++)
      places.push({ chord: chords[bar]!, firm: i === 0, height: heights[bar]! });
  });
  places[places.length - 1] = { ...places[places.length - 1]!, chord: ends, firm: true };
  const line: readonly Tone[] = drawMovingLine(random, pairs, places, before, FEWEST_NOTES);
  const bars: Bar[] = [];
  let next = 0;
  figures.forEach((strokes, i) => {
    const made = played(strokes, line.slice(next), meters[i] ?? home);
    bars.push(
      i === 0 ? withDynamic(made, pick(random, ['mf', 'mp', 'p'])) : i === 1 ? withBreath(made) : made,
    );
    next += notesTaken(strokes);
  });
  return { bars, last: line[line.length - 1]! };
}

/** The kind, as the list of kinds has it. */
export const match = {
  kind: 'match',
  needs: 'notes',
  tempo: { 1: 60, 2: 69, 3: 76 },
  isByPairs: true,
  character: 'uguale',
  compose,
} as const satisfies KindOfEtude;
