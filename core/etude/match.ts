/** An open note matched by the same note stopped: the ear sets the pitch, lip and hand find it again. */
import { type EtudeNote, FOUR_FOUR, open, rest, stopped, withBreath, withDynamic } from './bar.ts';
import { CLOSE_DEGREES, PAUSE_DEGREES, type PhrasePlan } from './harmony.ts';
import type { Degree } from './key.ts';
import { drawLine, type Place } from './line.ts';
import { pick } from './random.ts';
import { type Draft, hasTimeFor, type KindOfEtude, type Workshop } from './workshop.ts';

/** The kind, as the list of kinds has it. */
export const match = {
  kind: 'match',
  name: 'a note matched',
  title: 'The Same Note Twice',
  trains: 'Play each note open, then find the same pitch and the same strength with the hand closed.',
  tempo: 66,
  needs: 'notes',
  onNaturalHorn: false,
  compose: composeMatch,
} as const satisfies KindOfEtude;

/** One bar made from one note of the line or two. */
interface Figure {
  readonly uses: 1 | 2;
  /** The shortest time it leaves the hand, in quarters. */
  readonly shortest: 1 | 2;
  bar(first: Degree, second: Degree): readonly EtudeNote[];
}

const hearThenMatch: Figure = {
  uses: 1,
  shortest: 2,
  bar: ({ written }) => [open(written, 2), stopped(written, 2)],
};
const matchAndCheck: Figure = {
  uses: 1,
  shortest: 1,
  bar: ({ written }) => [open(written, 1), stopped(written, 2), open(written, 1)],
};
const findThenHear: Figure = {
  uses: 1,
  shortest: 2,
  bar: ({ written }) => [stopped(written, 2), open(written, 2)],
};
const twoInABar: Figure = {
  uses: 2,
  shortest: 1,
  bar: (first, second) => [
    open(first.written, 1),
    stopped(first.written, 1),
    open(second.written, 1),
    stopped(second.written, 1),
  ],
};
const stepIntoIt: Figure = {
  uses: 2,
  shortest: 1,
  bar: (first, second) => [open(first.written, 1), open(second.written, 1), stopped(second.written, 2)],
};
const close: Figure = {
  uses: 1,
  shortest: 1,
  bar: ({ written }) => [open(written, 1), stopped(written, 2), rest(1)],
};

/** The close where the tempo leaves no time for the shorter one. */
const slowClose: Figure = {
  uses: 1,
  shortest: 2,
  bar: ({ written }) => [open(written, 2), stopped(written, 1), rest(1)],
};

/** The first three bars of a phrase, by level. */
const FIGURES: { readonly [level: number]: readonly (readonly Figure[])[] } = {
  1: [
    [hearThenMatch, hearThenMatch, matchAndCheck],
    [hearThenMatch, matchAndCheck, hearThenMatch],
  ],
  2: [
    [hearThenMatch, matchAndCheck, twoInABar],
    [matchAndCheck, hearThenMatch, stepIntoIt],
    [twoInABar, matchAndCheck, findThenHear],
  ],
  3: [
    [findThenHear, twoInABar, stepIntoIt],
    [twoInABar, findThenHear, twoInABar],
    [stepIntoIt, twoInABar, findThenHear],
  ],
};

const SLOWEST = [hearThenMatch, hearThenMatch, hearThenMatch];

/** Composes a matching étude: one note a bar, or two, along the harmony. */
function composeMatch(workshop: Workshop): Draft {
  const { random, notes, level, phrases } = workshop;
  const isPlayable = ({ shortest }: Figure) => hasTimeFor(shortest, workshop);
  const choice = FIGURES[level]!.filter((figures) => figures.every(isPlayable));
  const ending = isPlayable(close) ? close : slowClose;
  const bars: (readonly EtudeNote[])[] = [];
  let before: Degree | null = null;
  for (const phrase of phrases) {
    const figures = [...(choice.length > 0 ? pick(random, choice) : SLOWEST), ending];
    const line = drawLine(random, notes, placesOf(figures, phrase), before);
    let next = 0;
    figures.forEach((figure, i) => {
      const bar = figure.bar(line[next]!, line[next + 1] ?? line[next]!);
      next += figure.uses;
      bars.push(i === 0 ? withDynamic(bar, 'mf') : i === 1 ? withBreath(bar) : bar);
    });
    before = line[line.length - 1]!;
  }
  return { meter: FOUR_FOUR, bars };
}

function placesOf(figures: readonly Figure[], { chords, closes, heights }: PhrasePlan): Place[] {
  const places: Place[] = [];
  figures.forEach(({ uses }, bar) => {
    const height = heights[bar]!;
    places.push({ chord: chords[bar]!, firm: true, height });
    if (uses === 2) places.push({ chord: chords[bar]!, firm: false, height });
  });
  const end = closes ? CLOSE_DEGREES : PAUSE_DEGREES;
  places[places.length - 1] = { chord: end, firm: true, height: heights[3]! };
  return places;
}
