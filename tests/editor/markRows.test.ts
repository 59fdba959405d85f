/** Marks as the editor prints them, page by page: where they stand is read from its own drawings. */
import { afterAll, expect, it } from 'vitest';
import { type Box, type Drawing, overlap, readDrawing } from './rig/drawing.ts';
import { removeFolders } from './rig/folders.ts';
import type { Host } from './rig/host.ts';
import { inEveryHost } from './rig/inEveryHost.ts';
import { DEMO_PAGE, MARKED_PAGES } from './rig/markedPages.ts';
import { hornScore, open, rest, scoreOf, stopped } from './rig/music.ts';

afterAll(removeFolders);

async function drawn(host: Host, score: string): Promise<Drawing> {
  const run = await host.run(score, [{ do: 'annotate' }, { do: 'save', as: 'page.mscz' }]);
  return readDrawing(await host.drawingOf(run.path('page.mscz')));
}

/** No mark of a lower voice hangs further below its staff than this, and no mark of the next staff comes as near to it. */
const BELOW = 9;

/** For each staff the feet of the texts above it, and of those below the staff before, in spaces from the staff. */
function heightsIn({ staves, texts }: Drawing, hasBelow: boolean) {
  return staves.map(({ top }, i) => {
    const before = staves[i - 1]?.bottom ?? 0;
    const feet = texts.map(({ bottom }) => bottom).filter((foot) => foot > before && foot < top + 0.5);
    const hangs = (foot: number) => hasBelow && i > 0 && foot < before + BELOW;
    return {
      above: feet.filter((foot) => !hangs(foot)).map((foot) => top - foot),
      below: feet.filter(hangs).map((foot) => foot - before),
    };
  });
}

/** The share of heights that lie on the two fullest rows. */
function shareOnTwoRows(heights: readonly number[]): number {
  const on = (row: number, among: readonly number[]) =>
    among.filter((height) => Math.abs(height - row) < 0.2);
  const fullest = (among: readonly number[]) =>
    among.reduce<readonly number[]>(
      (best, row) => (on(row, among).length > best.length ? on(row, among) : best),
      [],
    );
  const first = fullest(heights);
  const second = fullest(heights.filter((height) => !first.includes(height)));
  return (first.length + second.length) / heights.length;
}

/** The least share on two rows in versions 3.2 and 4.6; the rest has words, beams, slurs or a third row in its way. */
const LEVEL: { readonly [page: string]: { readonly 3: number; readonly 4: number } } = {
  sixteenths: { 3: 0.95, 4: 0.95 },
  eighths: { 3: 0.75, 4: 0.9 },
  quarters: { 3: 0.7, 4: 0.8 },
  'two voices': { 3: 0.8, 4: 0.95 },
  'chords and graces': { 3: 0.85, 4: 0.9 },
  'half-stopped and echo': { 3: 0.6, 4: 0.75 },
  'ties and rests': { 3: 0.75, 4: 0.95 },
  cues: { 3: 0.7, 4: 0.95 },
  'rests of many bars': { 3: 0.9, 4: 0.95 },
  'across two staves': { 3: 0.75, 4: 0.95 },
  'the demo part': { 3: 0.5, 4: 0.7 },
};

const PAGES = Object.entries({ ...MARKED_PAGES, 'the demo part': DEMO_PAGE });

inEveryHost('the marks of a page', (host) => {
  it.each(PAGES)('%s: keep within the margins, off other systems and one another', async (page, score) => {
    const drawing = await drawn(host, score);
    const { staves, texts } = drawing;
    expect(texts.length).toBeGreaterThan(10);
    const [left, right] = [Math.min(...staves.map((s) => s.left)), Math.max(...staves.map((s) => s.right))];
    expect(texts.filter((text) => text.left < left || text.right > right + 1 || text.top < 0)).toEqual([]);
    expect(texts.filter((text) => staves.some((staff) => overlap(text, staff)))).toEqual([]);
    expect(texts.filter((text, i) => texts.slice(i + 1).some((other) => overlap(text, other)))).toEqual([]);
    const heights = heightsIn(drawing, page === 'two voices');
    // Two lines of a mark over a word over a sign over a beam; a staircase has no end.
    expect(Math.max(...heights.flatMap(({ above }) => above))).toBeLessThan(14);
    const least = LEVEL[page]?.[host.major] ?? 0;
    const rows = heights.flatMap(({ above, below }) => [above, below]).filter(({ length }) => length > 7);
    for (const row of rows) expect(shareOnTwoRows(row), `${page}: ${row}`).toBeGreaterThanOrEqual(least);
  });

  it.each([
    ['one voice', undefined],
    ['two voices', ['C4', 'E4', 'B3', 'D4']],
  ])('build no staircase where other parts say how wide a bar is: %s', async (_, lower) => {
    const barOf = (pitches: readonly string[]) => pitches.map((pitch) => stopped(pitch));
    const bars = Array.from({ length: 24 }, () => barOf(['C5', 'E5', 'A4', 'F5']));
    const second = lower && bars.map(() => barOf(lower));
    const flute = { name: 'Flute', sound: 'wind.flutes.flute', transpose: [0, 0] } as const;
    const { staves, texts } = await drawn(
      host,
      scoreOf([
        { bars, options: second ? { second } : {} },
        { bars: bars.map(() => [open('C5', 4)]), options: flute },
      ]),
    );
    const { top } = staves[0]!;
    const feet = texts.filter(({ bottom }) => bottom < top).map(({ bottom }) => top - bottom);
    expect(feet.length).toBeGreaterThan(12);
    // A sign and two marks of two lines each.
    expect(Math.max(...feet)).toBeLessThan(13);
    expect(staves[1]!.top - staves[0]!.bottom).toBeLessThan(14);
  });

  it('are whole in a score of one system, which the page leaves room', async () => {
    const bars = Array.from({ length: 4 }, () => ['C5', 'E5', 'A4', 'F5'].map((pitch) => stopped(pitch)));
    const { texts } = await drawn(host, scoreOf([{ bars }, { bars: bars.map(() => [rest(4)]) }]));
    expect(texts).toHaveLength(2 * 4 * 4);
    expect(texts.filter((text, i) => texts.slice(i + 1).some((other) => overlap(text, other)))).toEqual([]);
  });

  it('are no numbers that could be read as one, in a part by itself and where other parts say how wide a bar is', async () => {
    const barOf = (pitches: readonly string[]) => [
      rest(),
      ...pitches.map((pitch) => stopped(pitch, 0.25)),
      rest(2),
    ];
    const bars = Array.from({ length: 14 }, () => barOf(['C5', 'E5', 'A4', 'F5']));
    const second = bars.map(() => barOf(['C4', 'E4', 'A3', 'F4']));
    const flute = { name: 'Flute', sound: 'wind.flutes.flute', transpose: [0, 0] } as const;
    const others = { bars: bars.map(() => [open('C5', 4)]), options: flute };
    const pages = await Promise.all([
      drawn(host, hornScore(bars)),
      drawn(host, scoreOf([{ bars }, others])),
      drawn(host, scoreOf([{ bars, options: { second } }, others])),
    ]);
    expect(pages.map(({ texts }) => texts.length)).toEqual([4 * 14, 4 * 14, 8 * 14]);
    for (const { texts, staves } of pages) {
      const gaps = texts.flatMap((text) =>
        texts
          .filter((other) => other.left > text.left + 0.1 && Math.abs(other.bottom - text.bottom) < 0.5)
          .map((other) => other.left - text.right),
      );
      expect(Math.min(...gaps)).toBeGreaterThan(0.6);
      expect(texts.filter((text) => staves.some((staff) => overlap(text, staff)))).toEqual([]);
    }
    // What steps aside goes one row up, and the next one is on the first again.
    const [alone, shared] = pages.slice(0, 2).map(({ staves, texts }) => {
      const first = texts.filter(({ bottom }) => bottom < staves[0]!.top);
      const lowest = Math.max(...first.map(({ bottom }) => bottom));
      return new Set(first.map(({ bottom }) => Math.round((lowest - bottom) / 1.9))).size;
    });
    expect([alone, shared]).toEqual([1, 2]);
  });

  it('of a lower voice hang below its signs, which we set below its notes, the fingering first', async () => {
    const upper = ['C5', 'E5', 'A4', 'F5'].map((pitch) => stopped(pitch));
    const lower = ['C4', 'E4', 'B3', 'D4'].map((pitch) => open(pitch));
    const run = await host.run(hornScore([upper, upper], { second: [lower, lower] }), [
      { do: 'select-all' },
      { do: 'panel', acts: [{ press: 'sign', what: 'stopped' }] },
      { do: 'deselect' },
      { do: 'annotate' },
      { do: 'save', as: 'signs.mscz' },
    ]);
    const { staves, texts, signs } = readDrawing(await host.drawingOf(run.path('signs.mscz')));
    const [{ bottom }, ...more] = staves as [Box, ...Box[]];
    const hanging = signs.filter(({ top }) => top > bottom);
    expect([more.length, signs.length, hanging.length]).toEqual([0, 16, 8]);
    for (const sign of hanging) {
      const tops = texts
        .filter(({ top, left }) => top > sign.bottom && Math.abs(left - sign.left) < 1)
        .map(({ top }) => top);
      const nearest = Math.min(...tops);
      expect(nearest - sign.bottom).toBeLessThan(3);
      // The second line of a mark is lower by about two spaces; a fingering of one line has none.
      expect(tops.filter((top) => top > nearest + 3)).toEqual([]);
    }
    expect(texts.filter((text) => signs.some((sign) => overlap(text, sign)))).toEqual([]);
  });

  it('that print nothing, as over a note that is held, push no other staff away', async () => {
    const held = [[{ ...stopped('F2', 4), tie: '+' as const }], [{ ...stopped('F2', 4), tie: '-' as const }]];
    const rests = [[rest(4)], [rest(4)]];
    const { staves } = await drawn(
      host,
      scoreOf([
        { bars: rests, options: { second: held } },
        { bars: rests, options: { name: 'Flute', sound: 'wind.flutes.flute', transpose: [0, 0] } },
      ]),
    );
    expect(staves).toHaveLength(2);
    expect(staves[1]!.top - staves[0]!.bottom).toBeLessThan(25);
  });

  it('leaves a bar’s width to its user, takes its own back', async () => {
    const bar = ['C5', 'Eb4', 'A4', 'D5'].map((pitch) => stopped(pitch));
    const widths = async (name: string) =>
      Array.from((await run.text(`${name}.mscx`)).matchAll(/<stretch>(.*?)<\/stretch>/g), ([, width]) =>
        Number(width),
      );
    const run = await host.run(hornScore([bar, bar, bar, [open('C5', 4)]]), [
      { do: 'stretch', bar: 0, to: 1.3 },
      { do: 'save', as: 'before.mscx' },
      { do: 'annotate' },
      { do: 'save', as: 'annotated.mscx' },
      { do: 'annotate' },
      { do: 'undo' },
      { do: 'save', as: 'undone.mscx' },
      { do: 'redo' },
      { do: 'stretch', bar: 1, to: 2.5 },
      { do: 'clear' },
      { do: 'save', as: 'cleared.mscx' },
    ]);
    expect(run.results[4]).toBe('The annotations are up to date: nothing was changed.');
    const [first, second, third, ...more] = await widths('annotated');
    expect([first, second, more]).toEqual([1.3, third, []]);
    expect(second).toBeGreaterThan(1);
    expect(await widths('undone')).toEqual([1.3]);
    expect(await widths('cleared')).toEqual([1.3, 2.5]);
  });

  it('leaves the bars of a score with other parts as they are', async () => {
    const bar = ['C5', 'Eb4', 'A4', 'D5'].map((pitch) => stopped(pitch));
    const run = await host.run(
      scoreOf([
        { bars: [bar] },
        {
          bars: [[open('C5', 4)]],
          options: { name: 'Flute', sound: 'wind.flutes.flute', transpose: [0, 0] },
        },
      ]),
      [{ do: 'annotate' }, { do: 'save', as: 'annotated.mscx' }],
    );
    expect(run.results[0]).toBe('Annotated.');
    expect(await run.text('annotated.mscx')).not.toContain('<stretch>');
  });
});
