/** Where the lines of a page begin: a phrase to a line, four bars where nobody says, fewer where fingerings would touch. */
import type { Bar, EtudeNote } from './bar.ts';

/** Notes on a line, as wide as they are under their fingerings; with more, fingerings would touch. */
const MOST_ROOM = 34;
/** Notes and rests that fill the last line of a page: with fewer some editors leave it short. Counted in version 3.2.3 of one. */
export const FULL_LINE = 11;
/** Bars of a line where nothing else is said; and at most, since a fingering stands over every note. */
const USUAL_BARS = 4;
const MOST_BARS = 5;

/** Notes and rests, and bars, of a line whose notes are long or that is made of two, at most. */
const MOST_OF_FEW = { events: 16, bars: 8 } as const;

/**
 * For each exercise of a page, true for each bar that begins a line. Where a single one would end in a short line, its
 * lines go two and two.
 */
export function sheetLines(
  etudes: readonly { readonly bars: readonly Bar[] }[],
): readonly (readonly boolean[])[] {
  return etudes.map(({ bars }) => {
    const starts = lineStarts(bars);
    const isShort = eventsIn(bars.slice(starts.lastIndexOf(true))) < FULL_LINE;
    return etudes.length === 1 && isShort ? inPairs(bars, starts) : starts;
  });
}

/** Lines two and two from the last on, where they are not too full together. */
function inPairs(bars: readonly Bar[], starts: readonly boolean[]): readonly boolean[] {
  const made = starts.slice();
  for (let end = bars.length; end > 0; ) {
    const second = made.lastIndexOf(true, end - 1);
    const first = second > 0 ? made.lastIndexOf(true, second - 1) : second;
    const isShort = end - first <= MOST_OF_FEW.bars && eventsIn(bars.slice(first, end)) <= MOST_OF_FEW.events;
    if (isShort && second > 0) made[second] = false;
    end = isShort ? first : second;
  }
  return made;
}

/** Notes and rests. */
function eventsIn(bars: readonly Bar[]): number {
  return bars.reduce((sum, { notes }) => sum + notes.length, 0);
}

/** True for each bar of an exercise that begins a line, were it not the only one. */
export function lineStarts(bars: readonly Bar[]): readonly boolean[] {
  const starts = bars.map(() => false);
  for (const [from, to] of phrasesOf(bars)) {
    // A phrase too full for one line goes evenly on two or more.
    const isFew = eventsIn(bars.slice(from, to)) <= MOST_OF_FEW.events;
    let lines = Math.ceil((to - from) / (isFew ? MOST_OF_FEW.bars : MOST_BARS));
    while (fullest(bars.slice(from, to), lines) > MOST_ROOM && lines < to - from) lines += 1;
    const count = Math.ceil((to - from) / lines);
    for (let i = from; i < to; i += count) starts[i] = true;
  }
  return starts;
}

/** The lines of a page's exercises, each beginning a line of its own. */
export function countLines(etudes: readonly { readonly bars: readonly Bar[] }[]): number {
  return sheetLines(etudes).reduce((sum, starts) => sum + starts.filter(Boolean).length, 0);
}

/** The phrases of some bars as the bars they begin with and go up to; by fours where none begins. */
export function phrasesOf(bars: readonly Bar[]): readonly (readonly [from: number, to: number])[] {
  const begins = bars.some(({ phraseStarts }) => phraseStarts)
    ? bars.map(({ phraseStarts }, i) => phraseStarts || i === 0)
    : bars.map((_, i) => i % USUAL_BARS === 0);
  const firsts = begins.map((begins, i) => (begins ? i : -1)).filter((i) => i >= 0);
  return firsts.map((from, i) => [from, firsts[i + 1] ?? bars.length] as const);
}

function fullest(bars: readonly Bar[], lines: number): number {
  const count = Math.ceil(bars.length / lines);
  let most = 0;
  for (let i = 0; i < bars.length; i += count)
    most = Math.max(
      most,
      bars.slice(i, i + count).reduce((sum, { notes }) => sum + roomOf(notes), 0),
    );
  return most;
}

/** A quarter takes the room of its fingering and some air; quicker notes have their valves alone. */
function roomOf(notes: readonly EtudeNote[]): number {
  return notes.reduce((sum, { quarters }) => sum + (quarters >= 1 ? 1.2 : quarters >= 0.5 ? 1.1 : 0.7), 0);
}
