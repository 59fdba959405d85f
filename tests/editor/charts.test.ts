/** The charts as scores, opened in the real editors: on one page, its legend small under its title, a clef where it changes. */
import { readdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { HORNS } from '../../core/horn/horns.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { ENGLISH_READER } from '../../core/words/language.ts';
import { chartScoreText } from '../../plugin/pages/chartScore.ts';
import { slideChartText } from '../../plugin/pages/slidePage.ts';
import { removeFolders, temporaryFolder } from './rig/folders.ts';
import { inEveryHost } from './rig/inEveryHost.ts';

afterAll(removeFolders);

function player(hornId: string) {
  return { ...DEFAULT_SETTINGS, horn: HORNS.find(({ id }) => id === hornId)! };
}

const CHARTS = [
  ['the notes of a double horn', chartScoreText(player('double'), ENGLISH_READER)],
  ['the notes of a natural horn', chartScoreText(player('natural-f'), ENGLISH_READER)],
  ['the bends of a double horn', slideChartText(player('double'))],
  ['the bends of a natural horn', slideChartText(player('natural-c-alto'))],
] as const;

inEveryHost('a chart as a score', (host) => {
  it.each(CHARTS)('%s', { timeout: 120_000 }, async (_, text) => {
    const file = join(await temporaryFolder('chart'), 'chart.musicxml');
    await writeFile(file, text);
    const pages = await readdir(dirname(await host.pictureOf(file, 30)));
    expect(pages.filter((name) => /^page-\d+\.png$/.test(name))).toEqual(['page-1.png']);
    const run = await host.run(text, [{ do: 'save', as: 'chart.mscx' }]);
    const saved = await run.text('chart.mscx');
    // A title that the editor fits to its page by itself has one size for all its lines.
    expect(saved).toContain('<font size="8.5"/>');
    const clefs = text.match(/<clef>/g)!.length;
    expect(saved.match(/<concertClefType>/g) ?? []).toHaveLength(clefs);
  });
});
