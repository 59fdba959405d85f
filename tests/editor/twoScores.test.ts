/** Each score has its own list, though two have one name. Version 4 opens each in a window, and a plugin, of its own. */
import { cp } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { removeFolders, temporaryFolder } from './rig/folders.ts';
import { HOST_3 } from './rig/host3.ts';
import { hornScore, open, stopped } from './rig/music.ts';

afterAll(removeFolders);

/** A file `horn.mscx` in a folder of its own. */
async function scoreNamed(title: string, bars: Parameters<typeof hornScore>[0]): Promise<string> {
  const music = hornScore(bars).replace(
    '<part-list>',
    `<work><work-title>${title}</work-title></work><part-list>`,
  );
  const run = await HOST_3.run(music, [{ do: 'save', as: 'saved.mscx' }]);
  const path = join(await temporaryFolder('score'), 'horn.mscx');
  await cp(run.path('saved.mscx'), path);
  return path;
}

describe.skipIf(!HOST_3.isInstalled)('two open scores of one name', () => {
  it('are listed each for itself', async () => {
    const first = await scoreNamed('Morning', [[stopped('C5'), stopped('Eb4'), open('G4'), open('E4')]]);
    const other = await scoreNamed('Evening', [[stopped('C5'), open('E4'), open('G4'), open('E4')]]);
    const { results } = await HOST_3.run(first, [{ do: 'switch', path: other }]);
    const [one, two] = ['2 stopped notes: 2 sure', '1 stopped note: 1 sure'];
    expect(results[0]).toEqual([one, two, one]);
  });
});
