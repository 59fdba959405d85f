/** What annotating and clearing leave alone in the real editor: texts and colours of the user, and a score in which there is nothing to do. */
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, it } from 'vitest';
import { examine, marksFor } from '../../core/index.ts';
import { readScore, writeMarks } from '../../plugin/musicxml/index.ts';
import { EVERY_VERDICT, EVERY_VERDICT_BARS } from './rig/everyVerdict.ts';
import { removeFolders } from './rig/folders.ts';
import { inEveryHost } from './rig/inEveryHost.ts';
import { hornScore, open, rest, scoreOf } from './rig/music.ts';
import { colours, music } from './rig/savedScore.ts';

afterAll(removeFolders);

const DEMO = fileURLToPath(new URL('../../plugin/batch/demo/low-water.musicxml', import.meta.url));

inEveryHost('annotating', (host) => {
  it('leaves the texts and colours of the user alone, and says so', async () => {
    const run = await host.run(EVERY_VERDICT, [
      { do: 'colour', nth: 6, colour: '#00aa00' },
      { do: 'colour', nth: 0, colour: '#0072b2' },
      { do: 'text', nth: 0, text: 'con forza &amp; fuoco' },
      { do: 'save', as: 'before.mscx' },
      { do: 'annotate' },
      { do: 'save', as: 'annotated.mscx' },
      { do: 'clear' },
      { do: 'save', as: 'cleared.mscx' },
    ]);
    expect(run.results[4]).toBe('Annotated. 1 doubtful note had a colour already and kept it.');
    const annotated = await run.text('annotated.mscx');
    expect(annotated).toContain('<color r="0" g="170" b="0" a="255"/>');
    expect(annotated).toContain('con forza &amp; fuoco');
    expect(colours(annotated)).toBe(3);
    expect(music(await run.text('cleared.mscx'))).toBe(music(await run.text('before.mscx')));
  });

  it('takes its own colours off notes whose marks somebody deleted, and no other', async () => {
    const run = await host.run(EVERY_VERDICT, [
      { do: 'colour', nth: 0, colour: '#0072b2' },
      { do: 'save', as: 'before.mscx' },
      { do: 'colour', nth: 1, colour: '#d55f00' },
      { do: 'colour', nth: 6, colour: '#0073b2' },
      { do: 'save', as: 'painted.mscx' },
      { do: 'clear' },
      { do: 'save', as: 'cleared.mscx' },
    ]);
    expect(colours(await run.text('painted.mscx'))).toBe(3);
    expect(run.results[5]).toBe('Cleared: 2 notes.');
    expect(music(await run.text('cleared.mscx'))).toBe(music(await run.text('before.mscx')));
  });

  it('takes a failure half-way back, and the user’s own last edit stays', async () => {
    const run = await host.run(EVERY_VERDICT, [
      { do: 'text', nth: 0, text: 'mine' },
      { do: 'save', as: 'before.mscx' },
      { do: 'annotate', failAfter: 2 },
      { do: 'save', as: 'after.mscx' },
      { do: 'annotate', failAfter: 0 },
      { do: 'save', as: 'at-once.mscx' },
    ]);
    expect(run.results[2]).toBe('Nothing was changed: no more texts.');
    expect(music(await run.text('after.mscx'))).toBe(music(await run.text('before.mscx')));
    expect(run.results[4]).toBe('Nothing was changed: no more texts.');
    expect(music(await run.text('at-once.mscx'))).toBe(music(await run.text('before.mscx')));
  });

  it.each([
    [
      'no horn part',
      scoreOf([
        {
          bars: EVERY_VERDICT_BARS,
          options: { name: 'Flute', sound: 'wind.flutes.flute', transpose: [0, 0] },
        },
      ]),
      'The score has no horn part.',
      'The score has no horn part.',
    ],
    [
      'no stopped note',
      hornScore([[open('C5', 4)]]),
      'The horn part has no stopped note: nothing to annotate.',
      'There is nothing of ours to clear.',
    ],
    [
      'only rests',
      hornScore([[rest(4)]]),
      'The horn part has no stopped note: nothing to annotate.',
      'There is nothing of ours to clear.',
    ],
  ])(
    'says one plain sentence to a score with %s, and changes nothing',
    async (_, score, annotated, cleared) => {
      const run = await host.run(score, [
        { do: 'save', as: 'before.mscx' },
        { do: 'annotate' },
        { do: 'clear' },
        { do: 'findings' },
        { do: 'save', as: 'after.mscx' },
      ]);
      expect(run.results.slice(1, 3)).toEqual([annotated, cleared]);
      expect(run.results[3]).toMatchObject({ findings: [], isChecked: false });
      expect(await run.text('after.mscx')).toBe(await run.text('before.mscx'));
    },
  );

  it.each(['as it stands', 'annotated by the command line'])(
    'leaves no colour behind in the demo part %s: not on an accidental, a dot or a stem',
    async (how) => {
      const text = await readFile(DEMO, 'utf8');
      const annotated = writeMarks(
        readScore(text),
        readScore(text).horns.map(({ id, passage }) => ({ partId: id, marks: marksFor(examine(passage)) })),
      );
      const run = await host.run(how === 'as it stands' ? text : annotated, [
        { do: 'annotate' },
        { do: 'save', as: 'annotated.mscx' },
        { do: 'clear' },
        { do: 'save', as: 'cleared.mscx' },
      ]);
      expect(colours(await run.text('annotated.mscx'))).toBeGreaterThanOrEqual(7);
      expect(colours(await run.text('cleared.mscx'))).toBe(0);
    },
  );
});
