/** Open and stopped in turn on one note, in ever shorter notes: the hand learns to be in time. */
import { type EtudeNote, FOUR_FOUR, open, rest, stopped, withBreath, withDynamic } from './bar.ts';
import { CLOSE_DEGREES, PAUSE_DEGREES } from './harmony.ts';
import type { Degree } from './key.ts';
import { drawLine, type Place } from './line.ts';
import { pick } from './random.ts';
import { type Draft, hasTimeFor, type KindOfEtude, type Workshop } from './workshop.ts';

/** The kind, as the list of kinds has it. */
export const change = {
  kind: 'change',
  name: 'changes in ever shorter notes',
  title: 'Swinging Gate',
  trains:
    'Close and open in ever shorter notes: the hand moves with the beat and the pitch stays where it is.',
  tempo: 60,
  needs: 'notes',
  onNaturalHorn: false,
  compose: composeChange,
} as const satisfies KindOfEtude;

/** Lengths in quarters from the first note of a bar to its last; open and stopped follow in turn, open first. */
type Rhythm = readonly number[];

const THIRD = 1 / 3;

/** Rhythms by their shortest note, longest first. In each the hand ends on something longer. */
const RHYTHMS: readonly { readonly shortest: number; readonly bars: readonly Rhythm[] }[] = [
  { shortest: 2, bars: [[2, 2]] },
  {
    shortest: 1,
    bars: [
      [1, 1, 1, 1],
      [1, 1, 2],
    ],
  },
  {
    shortest: 0.5,
    bars: [
      [0.5, 0.5, 0.5, 0.5, 1, 1],
      [1, 0.5, 0.5, 1, 1],
      [0.5, 0.5, 1, 0.5, 0.5, 1],
    ],
  },
  {
    shortest: THIRD,
    bars: [
      [THIRD, THIRD, THIRD, 1, 1, 1],
      [1, THIRD, THIRD, THIRD, 2],
    ],
  },
  {
    shortest: 0.25,
    bars: [
      [0.25, 0.25, 0.25, 0.25, 1, 1, 1],
      [1, 0.25, 0.25, 0.25, 0.25, 2],
    ],
  },
];

/** Composes an étude of changes: each phrase in shorter notes than the one before, the last bar of each for the hand to rest. */
function composeChange(workshop: Workshop): Draft {
  const { random, notes, phrases } = workshop;
  const steps = stepsFor(workshop);
  const bars: (readonly EtudeNote[])[] = [];
  let before: Degree | null = null;
  phrases.forEach(({ chords, closes, heights }, i) => {
    // Where phrases outnumber the lengths, the shortest are practised longest.
    const left = Math.floor(((phrases.length - 1 - i) * steps.length) / phrases.length);
    const { bars: rhythms } = steps[Math.max(0, steps.length - 1 - left)]!;
    const places = chords.map((chord, bar): Place => ({ chord, firm: true, height: heights[bar]! }));
    places[3] = { chord: closes ? CLOSE_DEGREES : PAUSE_DEGREES, firm: true, height: heights[3]! };
    const line = drawLine(random, notes, places, before);
    for (let bar = 0; bar < 3; bar++) {
      const music = inTurn(line[bar]!, pick(random, rhythms));
      bars.push(bar === 0 ? withDynamic(music, 'mf') : bar === 1 ? withBreath(music) : music);
    }
    const last = line[3]!;
    const heard = hasTimeFor(1, workshop) ? 1 : 2;
    bars.push([open(last.written, heard), stopped(last.written, 3 - heard), rest(1)]);
    before = last;
  });
  return { meter: FOUR_FOUR, bars };
}

/** The rhythms this level and tempo allow. The longest is always there: half notes are slow enough for any hand. */
function stepsFor(workshop: Workshop) {
  return RHYTHMS.filter(({ shortest }, i) => i === 0 || hasTimeFor(shortest, workshop));
}

function inTurn({ written }: Degree, rhythm: Rhythm): readonly EtudeNote[] {
  return rhythm.map((quarters, i) => (i % 2 === 0 ? open(written, quarters) : stopped(written, quarters)));
}
