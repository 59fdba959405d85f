/** Repairs pressed in the panel of the real editor: each one step of the undo history, looked at again, and told. */
import { afterAll, expect, it } from 'vitest';
import { removeFolders } from './rig/folders.ts';
import { inEveryHost } from './rig/inEveryHost.ts';
import { hornScore, open, rest, stopped } from './rig/music.ts';
import type { PanelAct, PanelMoment } from './rig/steps.ts';

afterAll(removeFolders);

/** One finding in each bar but one, of another rule each. */
const PART = hornScore([
  [stopped('C3', 2), rest(2)],
  [
    { ...open('E4', 2), glissando: '+' },
    { ...stopped('F4', 2), glissando: '-' },
  ],
  [
    { ...open('E4', 2), tie: '+' },
    { ...stopped('E4', 2), tie: '-' },
  ],
  [{ ...open('C4', 1), slur: '+' }, open('E4'), stopped('G4'), { ...stopped('A4'), slur: '-' }],
  [{ ...open('E4', 2), words: 'con sord.' }, stopped('F4', 2)],
  [{ ...open('C5', 2), words: 'senza sord.' }, rest(2)],
  [stopped('Ab3', 2), rest(2)],
]);

/** What a score is without what no reader sees. */
const music = (saved: string) => saved.replace(/\s*<metaTag name="bellhand">.*?<\/metaTag>/, '');

/** The row, the button, what the row says, and what the saved score then holds how often. */
const REPAIRS: readonly (readonly [number, string, RegExp, RegExp, number])[] = [
  [0, 'Octave up (C4)', /wants up/, /<pitch>53<\/pitch>/g, 2],
  [0, 'Take the sign away', /wants up/, /brassMuteClosed/g, 6],
  [1, 'Start from G4', /closes upward/, /<pitch>60<\/pitch>/g, 2],
  [1, 'Take the line out', /closes upward/, /<Spanner type="Glissando">/g, 0],
  [2, 'Break the tie', /slur breaks/, /<Spanner type="Tie">/g, 0],
  [2, 'Write +', /slur breaks/, /brassMuteClosed/g, 8],
  [3, 'Take the slur out', /slur breaks/, /<Spanner type="Slur">/g, 0],
  [4, 'Write “senza sord.”', /mute in/, /<text>senza sord\.<\/text>/g, 2],
  // At the note; in version 3 as a word, with the name of the note that is fingered.
  [5, 'Finger it 13', /wants up/, /<text>(?:G )?13<\/text>/g, 1],
];

const fixing = (row: number, label: string): readonly PanelAct[] => [
  { press: 'choose', what: row },
  { fix: label },
];

inEveryHost('repairs', (host) => {
  it('make their findings go, each in one step of the undo history, and tell', async () => {
    const run = await host.run(PART, [
      { do: 'save', as: 'before.mscx' },
      {
        do: 'panel',
        acts: REPAIRS.flatMap(([row, label]) => [...fixing(row, label), { cmd: 'undo' }]),
      },
      { do: 'save', as: 'undone.mscx' },
    ]);
    const moments = run.results[1] as PanelMoment[];
    REPAIRS.forEach(([row, label, what], i) => {
      const [chosen, done, undone] = moments.slice(3 * i);
      expect(chosen!.findings).toHaveLength(6);
      expect(chosen!.findings[row]).toMatch(what);
      expect(chosen!.chosen).toMatchObject({ row, repairs: expect.arrayContaining([label]) });
      expect(done!.sentence).toBe(`Done: ${label}.`);
      expect(done!.findings).toEqual(chosen!.findings.filter((_, at) => at !== row));
      expect(undone!.sentence).toBe(`Taken back: ${label}.`);
      expect(undone!.findings).toEqual(chosen!.findings);
    });
    expect(music(await run.text('undone.mscx'))).toBe(music(await run.text('before.mscx')));
  });

  it('write what they say, and redo writes it again', async () => {
    // From the end, so that no row moves.
    const all = [REPAIRS[8]!, REPAIRS[7]!, REPAIRS[6]!, REPAIRS[4]!, REPAIRS[3]!, REPAIRS[0]!];
    const run = await host.run(PART, [
      {
        do: 'panel',
        acts: [...all.flatMap(([row, label]) => fixing(row, label)), { cmd: 'undo' }, { cmd: 'redo' }],
      },
      { do: 'save', as: 'after.mscx' },
    ]);
    const moments = run.results[0] as PanelMoment[];
    expect(moments.at(-2)).toMatchObject({ sentence: 'Taken back: Octave up (C4).', count: 1 });
    expect(moments.at(-1)).toMatchObject({ sentence: 'Done again: Octave up (C4).', count: 0 });
    const after = await run.text('after.mscx');
    for (const [, label, , pattern, count] of all)
      expect(after.match(pattern) ?? [], label).toHaveLength(count);
  });
});
