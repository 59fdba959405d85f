/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
/** Pages carry their letters: texts stand as they were measured, on a machine with many fonts and on one with a single wide one. */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, expect, it } from 'vitest';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { examine } from '../../core/rules/examine.ts';
import { readScore } from '../../plugin/musicxml/index.ts';
import { reportPage } from '../../plugin/pages/reportPage.ts';
import { slidePage } from '../../plugin/pages/slidePage.ts';
import { closeBrowser, describeInBrowser, withPage } from './browser.ts';

afterAll(closeBrowser);

const demo = readScore(
  readFileSync(new URL('../../plugin/batch/demo/low-water.musicxml', import.meta.url), 'utf8'),
);
const PAGES = {
  report: () =>
    reportPage({
      name: 'low-water.musicxml',
      score: demo,
      examinations: demo.horns.map(({ passage }) => examine(passage)),
      remarks: [],
      isWhole: true,
    }),
  slides: () => slidePage(DEFAULT_SETTINGS),
};

interface DrawnText {
  readonly words: string;
  readonly box: readonly [left: number, top: number, right: number, bottom: number];
}

/** Every piece of text in the drawings that are shown, as it is printed; notes inside texts are no letters. */
async function drawnTexts(page: Page): Promise<readonly DrawnText[]> {
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => Promise.all([...document.fonts].map((face) => face.load())).then(() => null));
  return page.evaluate(() =>
    [...document.querySelectorAll('svg.music text, svg.music tspan')].flatMap((text) => {
      const { left, top, right, bottom } = text.getBoundingClientRect();
      const words = text.textContent!.trim();
      const isWhole = text.querySelector('tspan') !== null || words === '' || right === left;
      if (isWhole || text.getAttribute('font-family') === 'Leipzig') return [];
      return [{ words, box: [left, top, right, bottom] as const }];
    }),
  );
}

/** Pairs of texts of which one covers more than a hair of the other. Lines of a text stand close, so boxes may touch. */
function overprints(texts: readonly DrawnText[]): readonly string[] {
  return texts.flatMap(({ words, box: [left, top, right, bottom] }, i) =>
    texts
      .slice(i + 1)
      .filter(({ box }) => {
        const wide = Math.min(right, box[2]) - Math.max(left, box[0]);
        const high = Math.min(bottom, box[3]) - Math.max(top, box[1]);
        return wide > 1 && high > 0.25 * Math.min(bottom - top, box[3] - box[1]);
      })
      .map((other) => `${words} / ${other.words}`),
  );
}

describeInBrowser('the letters of a page', () => {
  it.each(Object.keys(PAGES) as (keyof typeof PAGES)[])(
    'measure the same with fonts and without: %s',
    async (name) => {
      const text = await PAGES[name]();
      const usual = await withPage(text, {}, ({ page }) => drawnTexts(page));
      const bare = await withPage(text, {}, ({ page }) => drawnTexts(page), 'bare');
      expect(usual.length).toBeGreaterThan(20);
      expect(overprints(usual)).toEqual([]);
      expect(overprints(bare)).toEqual([]);
      expect(bare.map(({ words }) => words)).toEqual(usual.map(({ words }) => words));
      bare.forEach(({ words, box }, i) => {
        const width = usual[i]!.box[2] - usual[i]!.box[0];
        expect(Math.abs(box[2] - box[0] - width), words).toBeLessThan(0.5);
      });
    },
  );
});
