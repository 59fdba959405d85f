/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
/** The report for every reader: at any width, in light and dark, on paper, by screen reader, by keyboard and without script. */
import { afterAll, expect, it } from 'vitest';
import {
  brokenAccessRules,
  closeBrowser,
  describeInBrowser,
  faintTexts,
  stumblingBlocks,
  withPage,
} from './browser.ts';
import { PAPERS, sheetsOf } from './paper.ts';
import { demo } from './reportOf.ts';

const [examination] = demo.examinations;

afterAll(closeBrowser);

describeInBrowser('the report', () => {
  it.each([360, 768, 1280])('fits a window of %i pixels, the music engraved for it', async (width) => {
    await withPage(demo.page, { viewport: { width, height: 800 } }, async ({ page }) => {
      await page.locator('details').evaluateAll((all) => {
        for (const details of all) (details as HTMLDetailsElement).open = true;
      });
      const seen = await page.evaluate(() => {
        const isShown = (element: Element) => element.getClientRects().length > 0;
        const shown = [...document.querySelectorAll('body *')].filter(isShown);
        return {
          page: document.documentElement.scrollWidth,
          over: shown
            .filter((element) => !element.closest('.skip, thead, defs'))
            .filter((element) => element.getBoundingClientRect().right > innerWidth + 1)
            .map((element) => element.outerHTML.slice(0, 90)),
          scrolling: shown.filter(
            (element) => element.matches('.scroll, .paper') && element.scrollWidth > element.clientWidth,
          ).length,
          staff: Math.min(
            ...[...document.querySelectorAll('svg.music')]
              .filter(isShown)
              .map((svg) => svg.getBoundingClientRect().width / (svg as SVGSVGElement).viewBox.baseVal.width),
          ),
          bars: [...document.querySelectorAll('g.measure')].filter(isShown).length,
        };
      });
      expect(seen.over).toEqual([]);
      expect(seen.page).toBeLessThanOrEqual(width);
      expect(seen.scrolling).toBe(0);
      // A staff is 720 units high: no window shows it smaller than 20 pixels.
      expect(720 * seen.staff).toBeGreaterThan(20);
      expect(seen.bars).toBe(24);
      const row = page.locator('tbody tr').first();
      expect(await row.evaluate((element) => getComputedStyle(element).display)).toBe(
        width < 960 ? 'block' : 'table-row',
      );
    });
  });

  it.each([
    { colorScheme: 'light', width: 1280 },
    { colorScheme: 'dark', width: 1280 },
    { colorScheme: 'light', width: 390 },
    { colorScheme: 'dark', width: 390 },
  ] as const)('is legible: $colorScheme, $width pixels wide', async ({ colorScheme, width }) => {
    await withPage(
      demo.page,
      { colorScheme, viewport: { width, height: 900 } },
      async ({ page, complaints }) => {
        expect(await faintTexts(page)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
        const paper = await page
          .locator('.paper')
          .first()
          .evaluate((element) => {
            const { backgroundColor, color } = getComputedStyle(element);
            return [backgroundColor, color].map((text) =>
              text
                .match(/[\d.]+/g)!
                .map(Number)
                .slice(0, 3),
            );
          });
        // The music is dark on light in both, so that the verdicts keep their published colours.
        expect(Math.min(...paper[0]!)).toBeGreaterThan(220);
        expect(Math.max(...paper[1]!)).toBeLessThan(40);
        expect(complaints).toEqual([]);
      },
    );
  });

  it('tells verdicts by colour of the note and by sign', async () => {
    await withPage(demo.page, {}, async ({ page }) => {
      const music = (await page.locator('svg.music').allTextContents()).join(' ');
      expect(music).toContain('×');
      expect(music).toContain('≈');
      const impossible = examination!.notes.find(({ verdict }) => verdict === 'impossible')!;
      const fill = await page
        .locator(`#bh-0-note-${impossible.note.index}`)
        .evaluate((note) => getComputedStyle(note).fill);
      // M. Okabe and K. Ito, Color Universal Design: vermillion, 213 94 0; what we paint is a hair off.
      expect(fill).toBe('rgb(213, 95, 0)');
    });
  });

  it('is no stumbling block for a screen reader', async () => {
    await withPage(demo.page, {}, async ({ page }) => {
      expect(await stumblingBlocks(page)).toEqual([]);
      expect(await page.getByRole('navigation').count()).toBe(1);
      expect(await page.getByRole('link', { name: /^\d+\. Bar 19: closes upward$/ }).count()).toBe(1);
      expect(await page.getByRole('img', { name: /^The music leads from G4 open/ }).count()).toBe(1);
    });
  });

  it('breaks no rule of access at 360 and at 1280 pixels', async () => {
    await withPage(demo.page, {}, async ({ page }) => {
      for (const width of [360, 1280]) {
        await page.setViewportSize({ width, height: 900 });
        expect(await brokenAccessRules(page), `${width}`).toEqual([]);
      }
    });
  });

  it('can be walked through by keyboard, without script', async () => {
    await withPage(demo.page, { javaScriptEnabled: false }, async ({ page }) => {
      await page.keyboard.press('Tab');
      const skip = page.locator('.skip');
      expect(await skip.evaluate((link) => link === document.activeElement)).toBe(true);
      expect((await skip.boundingBox())!.x).toBeGreaterThanOrEqual(0);
      await page.keyboard.press('Enter');
      const ring = page.locator('#ring-4');
      for (let i = 0; i < 90; i++) {
        await page.keyboard.press('Tab');
        if (await ring.evaluate((link) => link === document.activeElement)) break;
      }
      expect(await ring.evaluate((link) => link === document.activeElement)).toBe(true);
      await page.keyboard.press('Enter');
      await page.waitForURL(/#remark-4$/);
      expect(await page.locator('#remark-4').evaluate((remark) => remark.matches(':target'))).toBe(true);
      // On from there: the remark's own link leads back to the ring.
      await page.keyboard.press('Tab');
      await page.keyboard.press('Enter');
      await page.waitForURL(/#ring-4$/);
      expect(await ring.evaluate((link) => link.matches(':target'))).toBe(true);
    });
  });

  it('prints on the reader’s own paper, without links for the screen', async () => {
    await withPage(demo.page, { colorScheme: 'dark' }, async ({ page }) => {
      for (const paper of PAPERS) expect(await sheetsOf(page, paper)).toEqual([paper.name, paper.name]);
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('nav').isVisible()).toBe(false);
      expect(await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)).toBe(
        'rgb(255, 255, 255)',
      );
      expect(await faintTexts(page)).toEqual([]);
    });
  });
});
