/** Each score has its own list and its own horn, though two have one name, or one name and one title. Version 4 opens each in a window, and a plugin, of its own. */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { HORNS } from '../../core/index.ts';
import { removeFolders, temporaryFolder } from './rig/folders.ts';
import { HOST_3 } from './rig/host3.ts';
import { hornScore, open, stopped } from './rig/music.ts';

afterAll(removeFolders);

const BARS = [[stopped('C5'), stopped('E4'), open('G4'), open('E4')]];

/** A file `horn.mscx` in a folder of its own, with a horn that was chosen for it. */
async function scoreFor(horn: string, title: string): Promise<string> {
  const music = hornScore(BARS).replace(
    '<part-list>',
    `<work><work-title>${title}</work-title></work><part-list>`,
  );
  const run = await HOST_3.run(music, [{ do: 'save', as: 'saved.mscx' }]);
  const saved = await run.text('saved.mscx');
  const path = join(await temporaryFolder('score'), 'horn.mscx');
  const choice = `<metaTag name="bellhand">{&quot;horn&quot;:&quot;${horn}&quot;}</metaTag>`;
  await writeFile(path, saved.replace('<metaTag', `${choice}<metaTag`));
  return path;
}

describe.skipIf(!HOST_3.isInstalled)('two open scores of one name', { concurrent: true }, () => {
  it.each(['Evening', 'Morning'])('are listed each for its own horn: Morning and %s', async (title) => {
    const [path, other] = await Promise.all([
      scoreFor('single-bflat', 'Morning'),
      scoreFor('single-bflat', title),
    ]);
    const horn = HORNS.findIndex(({ id }) => id === 'double');
    const { results } = await HOST_3.run(path, [{ do: 'switch', path: other, horn }]);
    const [chosen, kept] = ['2 stopped notes: 2 sure', '2 stopped notes: 1 sure, 1 impossible'];
    // Nothing was annotated: what was chosen in the panel is this score's all the same.
    expect(results[0]).toEqual([kept, chosen, kept, chosen]);
  });
});
