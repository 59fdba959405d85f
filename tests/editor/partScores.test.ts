/** Version 3: where the user made part scores, the editor writes only those of the horns, and not the whole score. */
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { removeFolders, temporaryFolder } from './rig/folders.ts';
import { HOST_3 } from './rig/host3.ts';

afterAll(removeFolders);

/** A flute and a horn, with a part score of each, as the editor itself made and saved them. */
const SCORE = fileURLToPath(new URL('rig/scoreWithPart.mscx', import.meta.url));
const READ = { counts: '2 stopped notes: 2 sure', seesEveryEdit: true };

async function written(change: (score: string) => string): Promise<unknown> {
  const path = join(await temporaryFolder('score'), 'score.mscx');
  const score = await readFile(SCORE, 'utf8');
  const changed = change(score);
  await writeFile(path, changed);
  const { results } = await HOST_3.run(path, [{ do: 'written' }]);
  return results[0];
}

describe.skipIf(!HOST_3.isInstalled)('a horn with a part score', () => {
  it('is read from it', async () => {
    expect(await written((score) => score)).toEqual({ ...READ, written: [1] });
  });

  it.each([
    [
      'it is of another staff',
      (score: string) => score.replace('<linkedTo>2</linkedTo>', '<linkedTo>1</linkedTo>'),
    ],
    ['there is none', (score: string) => score.replace(/\n {4}<Score>[\s\S]*?\n {6}<\/Score>/g, '')],
  ])('is read from the whole score where %s', async (_, change) => {
    const { written: scores, ...rest } = (await written(change)) as { written: number[] };
    expect(rest).toEqual(READ);
    expect(scores.at(-1)).toBe(2);
  });
});
