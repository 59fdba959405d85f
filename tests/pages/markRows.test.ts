/** How the report sets marks: level within a system, and with room side by side. */
import { describe, expect, test } from 'vitest';
import { marksFor } from '../../core/marks/marks.ts';
import { examine } from '../../core/rules/examine.ts';
import { readScore } from '../../plugin/musicxml/index.ts';
import { writeMarks } from '../../plugin/musicxml/write/writeMarks.ts';
import { type EngravedSystem, engrave } from '../../plugin/pages/engrave.ts';
import { hornScore, type Played, rest, stopped } from '../editor/rig/music.ts';

async function systemsOf(bars: readonly (readonly Played[])[]): Promise<readonly EngravedSystem[]> {
  const score = readScore(hornScore(bars));
  const [{ id: partId, passage }] = score.horns as [(typeof score.horns)[number]];
  const marked = writeMarks(score, [{ partId, marks: marksFor(examine(passage)) }]);
  return (await engrave(marked, { width: 1750, keepsBreaks: false })).systems;
}

/** How high the printed lines that match stand; what is lower has the greater number. */
function heightsOf(system: EngravedSystem, pattern: RegExp): readonly number[] {
  const heights: number[] = [];
  let height = Number.NaN;
  for (const [piece] of system.content.matchAll(/<(?:text|tspan)[^>]*>|[^<>]+(?=<)/g)) {
    if (!piece.startsWith('<')) {
      if (pattern.test(piece)) heights.push(height);
    } else height = Number(/ y="(-?\d+)"/.exec(piece)?.[1] ?? height);
  }
  return heights;
}

describe('the marks of a system stand on two level rows', () => {
  test('whatever the height of their notes, the fingering on the lower, valves alone too', async () => {
    const bars = [
      [stopped('C4'), stopped('G5'), stopped('E4'), stopped('D5')],
      [stopped('C5', 0.5), stopped('D4', 0.5), stopped('F5', 0.5), stopped('G4', 0.5), rest(2)],
    ];
    const [system, ...more] = await systemsOf(bars);
    expect(more).toEqual([]);
    const natural = heightsOf(system!, /^\(.*\)$/);
    const fingered = heightsOf(system!, /^([A-G][♯♭]? )?T?[0-3]+$/);
    expect(natural).toHaveLength(4);
    expect(fingered).toHaveLength(8);
    expect(new Set(natural).size).toBe(1);
    expect(new Set(fingered).size).toBe(1);
    expect(natural[0]!).toBeLessThan(fingered[0]!);
  });
});

describe('bars with wide marks over quick notes', () => {
  const long = (pitch: string, other: string) =>
    Array.from({ length: 6 }, () =>
      Array.from({ length: 8 }, (_, i) => stopped(i % 2 === 0 ? pitch : other, 0.5)),
    );
  test('come fewer to a system', async () => {
    const narrow = await systemsOf(long('C5', 'D4'));
    const wide = await systemsOf(long('A5', 'D4'));
    expect(wide.length).toBeGreaterThan(narrow.length);
  });
});
