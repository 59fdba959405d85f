/** Version 3: the editor writes no whole score where part scores of the horns tell enough, or a score's own list. */
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { removeFolders, temporaryFolder } from './rig/folders.ts';
import { HOST_3 } from './rig/host3.ts';
import { open, rest, scoreOf, stopped } from './rig/music.ts';
import type { PanelMoment } from './rig/steps.ts';

afterAll(removeFolders);

/** A flute and a horn, with a part score of each, as the editor itself made and saved them. */
const SCORE = fileURLToPath(new URL('rig/scoreWithPart.mscx', import.meta.url));
const READ = { counts: '2 stopped notes: 2 sure', findings: [], selected: 0 };

/** What opening the panel wrote, found and left selected. */
interface Opened {
  readonly written: readonly number[];
  readonly findings: readonly string[];
  readonly counts: string;
}

async function written(change: (score: string) => string): Promise<unknown> {
  const path = join(await temporaryFolder('score'), 'score.mscx');
  const score = await readFile(SCORE, 'utf8');
  const changed = change(score);
  await writeFile(path, changed);
  const { results } = await HOST_3.run(path, [{ do: 'written' }]);
  return results[0];
}

describe.skipIf(!HOST_3.isInstalled)('a horn with a part score', { concurrent: true }, () => {
  it('is read from it', async () => {
    expect(await written((score) => score)).toMatchObject({ ...READ, written: [1] });
  });

  it.each([
    [
      'it is of another staff',
      (score: string) => score.replace('<linkedTo>2</linkedTo>', '<linkedTo>1</linkedTo>'),
    ],
    ['there is none', (score: string) => score.replace(/\n {4}<Score>[\s\S]*?\n {6}<\/Score>/g, '')],
  ])('is read from the whole score where %s', async (_, change) => {
    const read = (await written(change)) as { written: number[] };
    expect(read).toMatchObject(READ);
    expect(read.written.at(-1)).toBe(2);
  });
});

describe.skipIf(!HOST_3.isInstalled)('a score of many bars and staves', () => {
  const horn = [
    [
      stopped('C5'),
      { ...stopped('Eb4'), slur: '+' as const },
      { ...open('G4'), slur: '-' as const },
      stopped('C3'),
    ],
    [
      open('C5', 2),
      { ...open('E4'), glissando: '+' as const },
      { ...stopped('G4'), glissando: '-' as const },
    ],
  ];
  const silence = { bars: Array.from({ length: 250 }, () => [rest(4)]) };
  const flute = {
    ...silence,
    options: { name: 'Flute', sound: 'wind.flutes.flute', transpose: [0, 0] as const },
  };
  const score = scoreOf([flute, { bars: horn.concat(silence.bars.slice(2)) }, ...Array(7).fill(flute)]);

  it('is read from its own list where nothing is selected, which finds what the written score does, and nothing is selected then', async () => {
    const { results } = await HOST_3.run(score, [
      { do: 'written' },
      { do: 'result' },
      { do: 'select-stretch', staff: 1, length: 1 },
      { do: 'result' },
    ]);
    const [opened, listed, , written] = results as [{ findings: string[] }, object, number, object];
    expect(opened).toMatchObject({ written: [], selected: 0, seesEveryEdit: false });
    expect(opened.findings.length).toBeGreaterThan(2);
    expect(listed).toEqual(written);
  });

  it('is read once what was selected is let go, and neither written nor robbed of its selection before', async () => {
    const { results } = await HOST_3.run(score, [
      { do: 'written' },
      { do: 'select-stretch', staff: 1, length: 1 },
      { do: 'written' },
      { do: 'panel', acts: [{ looks: 5 }, { cmd: 'escape' }, { looks: 3 }] },
    ]);
    const [free, , selected, moments] = results as [Opened, number, Opened, PanelMoment[]];
    expect(selected).toEqual({ written: [], counts: '', findings: [], seesEveryEdit: true, selected: 1 });
    const { sentence } = moments[0]!;
    expect(sentence).toBe('The score is large: press Escape in it, and it is read.');
    expect(moments[0]).toMatchObject({ findings: [], selected: [{ track: 4 }] });
    expect(moments[2]).toMatchObject({ findings: free.findings, selected: [], sentence: '' });
  });

  it('is read after a repair with the repaired note let go meanwhile', async () => {
    const { results } = await HOST_3.run(score, [
      { do: 'panel', acts: [{ press: 'choose', what: 0 }, { press: 'repair', what: 0 }, { looks: 3 }] },
    ]);
    const [chosen, , repaired] = results[0] as [PanelMoment, PanelMoment, PanelMoment];
    expect(chosen.chosen.repairs.length).toBeGreaterThan(0);
    expect(repaired.count).toBeLessThan(chosen.count);
    expect(repaired.selected.map(({ track }) => track)).toEqual([4]);
  });
});
