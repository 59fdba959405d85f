/** Where the lines of a page begin: four bars to a line, fewer where they are too full for their fingerings. */
import type { Bar, EtudeNote } from './bar.ts';

/** Notes on a line, as wide as they are under their fingerings; with more, fingerings would touch. */
const MOST_ROOM = 34;
/** Bars of a line, the best first. */
const BARS = [4, 3, 2] as const;

/** True for each bar of an exercise that begins a line. */
export function lineStarts(bars: readonly Bar[]): readonly boolean[] {
  const count = BARS.filter((each) => bars.length % each === 0 && fullest(bars, each) <= MOST_ROOM)[0] ?? 2;
  return bars.map((_, i) => i % count === 0);
}

/** What a line counts whose fingerings are set in columns, since its notes are too close for anything else. */
const COLUMNS = 1.4;
/** Notes closer than this, in quarters, have their fingerings in columns. */
const COLUMN_QUARTERS = 0.4;

/** The lines of several exercises, each beginning a line of its own; tall ones count for more. */
export function countLines(etudes: readonly { readonly bars: readonly Bar[] }[]): number {
  let lines = 0;
  for (const { bars } of etudes) {
    const starts = lineStarts(bars);
    let tall = false;
    bars.forEach(({ notes }, i) => {
      if (starts[i]) tall = false;
      if (starts[i]) lines += 1;
      const isClose =
        notes.filter(({ written, quarters }) => written && quarters < COLUMN_QUARTERS).length > 2;
      if (isClose && !tall) lines += COLUMNS - 1;
      tall = tall || isClose;
    });
  }
  return lines;
}

function fullest(bars: readonly Bar[], count: number): number {
  let most = 0;
  for (let i = 0; i < bars.length; i += count)
    most = Math.max(
      most,
      bars.slice(i, i + count).reduce((sum, { notes }) => sum + roomOf(notes), 0),
    );
  return most;
}

/** A quarter takes the room of its fingering and some air; sixteenths are set in columns. */
function roomOf(notes: readonly EtudeNote[]): number {
  return notes.reduce((sum, { quarters }) => sum + (quarters >= 1 ? 1.2 : quarters >= 0.5 ? 1.1 : 0.9), 0);
}
