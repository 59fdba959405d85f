/** What is selected in the real editor: annotated or cleared alone, and where a finding takes the user. */
import { afterAll, expect, it } from 'vitest';
import { EVERY_VERDICT } from './rig/everyVerdict.ts';
import { removeFolders } from './rig/folders.ts';
import { inEveryHost } from './rig/inEveryHost.ts';
import { hornScore, open, stopped } from './rig/music.ts';
import { marksIn, music } from './rig/savedScore.ts';
import type { PanelMoment } from './rig/steps.ts';

afterAll(removeFolders);

inEveryHost('annotating', (host) => {
  // Version 4 lets no plugin draw.
  if (host.major === 3)
    it('has the selected bars laid out as the whole score would be', async () => {
      // Two notes, one on each of two pages.
      const bars = Array.from({ length: 200 }, (_, bar) =>
        [0, 1, 2, 3].map(() => (bar === 20 || bar === 180 ? stopped('C5') : open('G4'))),
      );
      const run = await host.run(hornScore(bars), [
        { do: 'select-all' },
        { do: 'save', as: 'before.svg' },
        { do: 'annotate' },
        { do: 'save', as: 'marked.svg' },
        // The editor lays out all of a score for a text that is added like this one, on the first page.
        { do: 'text', nth: 0, text: 'solo' },
        { do: 'save', as: 'all.svg' },
      ]);
      const pagesOf = (name: string) => Promise.all([1, 2].map((page) => run.text(`${name}-${page}.svg`)));
      const [before, marked, all] = await Promise.all(['before', 'marked', 'all'].map(pagesOf));
      expect(marked!.slice(1)).toEqual(all!.slice(1));
      expect(marked!.slice(1)).not.toEqual(before!.slice(1));
    });

  it('annotates and clears only what is selected', async () => {
    const run = await host.run(EVERY_VERDICT, [
      { do: 'select', from: 1, length: 2 },
      { do: 'annotate' },
      { do: 'save', as: 'range.mscx' },
      { do: 'select', from: 0, length: 1 },
      { do: 'annotate' },
      { do: 'save', as: 'single.mscx' },
      { do: 'select', from: 1, length: 1 },
      { do: 'clear' },
      { do: 'save', as: 'cleared.mscx' },
      { do: 'select', from: 4, length: 1 },
      { do: 'annotate' },
    ]);
    expect(run.results[1]).toBe('Annotated in the selection. 1 stopped note: 1 sure.');
    expect(marksIn(await run.text('range.mscx'))).toEqual(['(F)\nD 1']);
    expect(marksIn(await run.text('single.mscx'))).toEqual(['(C♯)\nB 2', '(F)\nD 1']);
    expect(marksIn(await run.text('cleared.mscx'))).toEqual(['(C♯)\nB 2']);
    expect(run.results[10]).toBe('No stopped horn note is selected: nothing was changed.');
  });

  it.each([{ before: [] }, { before: [{ do: 'colour', nth: 1, colour: '#00aa00' }] as const }])(
    'writes the same over selected notes from what an open panel knows, after $before',
    async ({ before }) => {
      const selected = { from: 0, length: 3 };
      // Where nothing moved for a while the panel takes it that it knows the part.
      const rest = { select: selected };
      const acts = [rest, rest, rest, { press: 'annotate' }] as const;
      const [beside, alone] = await Promise.all([
        host.run(EVERY_VERDICT, [...before, { do: 'panel', acts }, { do: 'save', as: 'marked.mscx' }]),
        host.run(EVERY_VERDICT, [
          ...before,
          { do: 'select', ...selected },
          { do: 'annotate' },
          { do: 'save', as: 'marked.mscx' },
        ]),
      ]);
      const [moments, sentence] = [beside.results[before.length], alone.results[before.length + 1]];
      expect((moments as PanelMoment[])[3]!.sentence).toBe(sentence);
      const marked = await beside.text('marked.mscx');
      expect(marksIn(marked).length).toBeGreaterThan(0);
      expect(music(marked)).toBe(music(await alone.text('marked.mscx')));
    },
  );

  it('takes the user to the note of a finding', async () => {
    const run = await host.run(EVERY_VERDICT, [
      { do: 'show', row: 0 },
      { do: 'show', row: 1 },
    ]);
    // Sounding a fifth below: C5 is MIDI 65, C3 is 41.
    expect(run.results).toEqual([
      { selected: [{ pitch: 65, track: 0 }], sentence: '' },
      { selected: [{ pitch: 41, track: 0 }], sentence: '' },
    ]);
  });
});
