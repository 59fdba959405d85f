/// <reference lib="dom" />
/** The page for every reader: no rule of access broken, in light and dark, on small and large screens. */
import { afterAll, expect, it } from 'vitest';
import { brokenAccessRules, closeBrowser, describeInBrowser, withPage } from './browser.ts';
import { DEMO, drop, ON_SCREEN, PAGE, turnTo } from './standVisit.ts';

afterAll(closeBrowser);

describeInBrowser('the stand', () => {
  it('breaks no access rule: light and dark, small and large', async () => {
    const screens = [
      { colorScheme: 'light', width: 360 },
      { colorScheme: 'dark', width: 1280 },
      { colorScheme: 'light', width: 2560 },
    ] as const;
    const first = { width: screens[0].width, height: 900 };
    await withPage(PAGE, { ...ON_SCREEN, bypassCSP: true, viewport: first }, async ({ page, complaints }) => {
      for (const { colorScheme, width } of screens) {
        await page.emulateMedia({ colorScheme });
        await page.setViewportSize({ width, height: 900 });
        for (const [sheet, awaited] of [
          ['part', '.music svg.music'],
          ['lesson', '.page svg.music'],
          ['note', '.ladder'],
        ] as const) {
          const where = `${sheet}, ${colorScheme}, ${width} wide`;
          await turnTo(page, sheet);
          if ((await page.locator('#example').count()) > 0) await drop(page, 'low-water.musicxml', DEMO);
          await page.locator(awaited).first().waitFor();
          const fits = () => page.evaluate(() => document.documentElement.scrollWidth <= innerWidth);
          await expect.poll(fits, { timeout: 20_000, message: where }).toBe(true);
          expect(await brokenAccessRules(page), where).toEqual([]);
        }
      }
      expect(complaints.filter((complaint) => !complaint.startsWith('blob:'))).toEqual([]);
    });
  });
});
