/** One part, one count: the table, the data, the catalogue's line and the report say the same; tests of the editor hold the panel to it. */
import { describe, expect, test } from 'vitest';
import { ENGLISH_READER } from '../../core/words/language.ts';
import { countText } from '../../core/words/summary.ts';
import { generatePart } from '../musicxml/generate.ts';
import { bellhandHere, folderWith, score, textOf } from './bellhand.ts';

const NONE = { sure: 0, risky: 0, impossible: 0 };

const PARTS: { readonly [name: string]: () => string } = {
  'the demo': () => textOf(process.cwd(), 'plugin/batch/demo/low-water.musicxml'),
  'a part with everything wrong': () => generatePart(400),
  'a part in order': () => score(['C5+', 'E5']),
  'a part that is never stopped': () => score(['C5', 'E5']),
};

describe.each(Object.entries(PARTS))('%s', (_, part) => {
  test('is counted the same everywhere', async () => {
    const folder = folderWith({ 'part.musicxml': part() });
    const check = async (format: string) =>
      await bellhandHere(folder, ['check', 'part.musicxml', '--format', format]);
    const { notes } = JSON.parse((await check('json')).stdout).parts[0];
    const stopped: { [verdict: string]: number } = { ...NONE };
    const open: { [verdict: string]: number } = { ...NONE };
    for (const { state, verdict } of notes) (state === 'open' ? open : stopped)[verdict]! += 1;
    const told = countText({ stopped, open } as unknown as Parameters<typeof countText>[0], ENGLISH_READER);
    expect((await check('table')).stdout).toContain(told);
    const line = JSON.parse((await check('json-lines')).stdout);
    expect(line.parts[0]).toMatchObject({
      stopped,
      open: { risky: open.risky, impossible: open.impossible },
    });
    expect((await bellhandHere(folder, ['report', 'part.musicxml'])).exit).toBe(0);
    const page = textOf(folder, 'part.report.html');
    const total = (verdict: string) => stopped[verdict]! + open[verdict]!;
    if (notes.length === 0) expect(page).toContain('Nothing is stopped in this part.');
    else expect(/class="quiet counts">([^<]*)</.exec(page)![1]).toBe(told);
    if (total('impossible') > 0)
      expect(page).toMatch(new RegExp(`${total('impossible')} notes? cannot be played`));
    if (total('risky') > 0) expect(page).toMatch(new RegExp(`${total('risky')} notes? (is|are) risky`));
  });
});
