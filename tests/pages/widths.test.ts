/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
/** The report and the charts in windows of every width: nothing over the edge, nothing empty. */
import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { HORNS } from '../../core/horn/horns.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { examine } from '../../core/rules/examine.ts';
import { readerOf } from '../../core/words/language.ts';
import { readScore } from '../../plugin/musicxml/index.ts';
import { chartPage } from '../../plugin/pages/chartPage.ts';
import { reportPage } from '../../plugin/pages/reportPage.ts';
import { slidePage } from '../../plugin/pages/slidePage.ts';
import { generatePart } from '../musicxml/generate.ts';
import { closeBrowser, describeInBrowser, withPage } from './browser.ts';
import { emptyBlocks, overflowing } from './emptyBlocks.ts';

afterAll(closeBrowser);

/** Telephones, a tablet, a window on a desk. */
const WIDTHS = [360, 400, 768, 1280];

const demo = readFileSync(new URL('../../plugin/batch/demo/low-water.musicxml', import.meta.url), 'utf8');

function reportOf(text: string, language: 'en' | 'de', isWhole = false): Promise<string> {
  const score = readScore(text);
  const examinations = score.horns.map(({ passage }) => examine(passage));
  const source = { name: 'part.musicxml', score, examinations, remarks: [] };
  return reportPage({ ...source, isWhole, reader: readerOf(language) });
}

function player(hornId: string) {
  return { ...DEFAULT_SETTINGS, horn: HORNS.find(({ id }) => id === hornId)! };
}

const PAGES: readonly (readonly [name: string, make: () => Promise<string>])[] = [
  ['the demo’s report', () => reportOf(demo, 'en')],
  ['the demo’s whole report, in German', () => reportOf(demo, 'de', true)],
  ['the report of a long part', () => reportOf(generatePart(400), 'en')],
  [
    'the report of a part with a long name',
    () => reportOf(demo.replaceAll('Horn in F', `Horn in F ${'obligato'.repeat(20)}`), 'en'),
  ],
  ...['double', 'single-bflat', 'natural-f'].flatMap((id) => [
    [`the wall chart of ${id}`, () => chartPage(player(id))] as const,
    [`the bends of ${id}, in German`, () => slidePage(player(id), readerOf('de'))] as const,
  ]),
];

describeInBrowser('pages at every width', () => {
  // A busy machine takes its time.
  it.each(PAGES)('%s', { timeout: 120_000 }, async (_, make) => {
    await withPage(await make(), {}, async ({ page }) => {
      await page.locator('details').evaluateAll((all) => {
        for (const details of all) (details as HTMLDetailsElement).open = true;
      });
      for (const width of WIDTHS) {
        await page.setViewportSize({ width, height: 800 });
        expect(await overflowing(page), `${width}`).toEqual([]);
        expect(await emptyBlocks(page), `${width}`).toEqual([]);
      }
    });
  });

  describe('the measures themselves', () => {
    const around = (content: string) =>
      `<!DOCTYPE html><style>body { margin: 0 }</style><body><p>above</p>${content}<p>below</p></body>`;
    it.each([
      ['a box with nothing in it', '<div style="height: 90px; width: 50%; float: left"></div><p>beside</p>'],
      [
        'a drawing without a line',
        '<svg width="100" height="90" style="float: left"><g></g></svg><p>beside</p>',
      ],
      ['a text that nobody sees', '<div style="height: 90px"><p style="visibility: hidden">text</p></div>'],
      ['a gap', '<p style="margin-top: 150px">text</p>'],
    ])('see %s', async (_, content) => {
      const faults = await withPage(around(content), {}, ({ page }) => emptyBlocks(page));
      expect(faults.length).toBeGreaterThan(0);
    });

    it('see what reaches over the edge, and find nothing where nothing is wrong', async () => {
      const wide = around('<div style="width: 1400px">text</div>');
      expect((await withPage(wide, {}, ({ page }) => overflowing(page))).length).toBeGreaterThan(0);
      const drawing = '<svg width="100" height="90"><path d="M0 45 L100 45" stroke="black"/></svg>';
      await withPage(around(`<div style="height: 90px">text</div>${drawing}`), {}, async ({ page }) => {
        expect(await emptyBlocks(page)).toEqual([]);
        expect(await overflowing(page)).toEqual([]);
      });
    });
  });
});
