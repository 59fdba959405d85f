/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
/** The page on a telephone: its music is laid out for the screen, and prints as it does from a desk. */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { closeBrowser, describeInBrowser, openPage, withPage } from './browser.ts';
import { overflowing } from './emptyBlocks.ts';
import { PAPERS, sheetsOf } from './paper.ts';

const PAGE = readFileSync(new URL('../../dist/bellhand.html', import.meta.url), 'utf8');
const DEMO = readFileSync(new URL('../../plugin/batch/demo/low-water.musicxml', import.meta.url), 'utf8');

/** Upright, upright, and lying. */
const SCREENS = [
  { width: 360, height: 740 },
  { width: 390, height: 844 },
  { width: 740, height: 360 },
] as const;
const DESK = { width: 1280, height: 900 };

/** Staves that are read without drawing the page larger, in pixels; 7 mm are 26. @source common practice, no source */
const READABLE = [24, 34] as const;

describeInBrowser('the page on a telephone', () => {
  let visit: Awaited<ReturnType<typeof openPage>>;
  beforeAll(async () => {
    visit = await openPage(PAGE, { locale: 'en-GB', isMobile: true, hasTouch: true, viewport: SCREENS[0] });
  });
  afterEach(() => {
    expect(visit.complaints.filter((complaint) => !complaint.startsWith('blob:'))).toEqual([]);
  });
  afterAll(async () => {
    await visit.close();
    await closeBrowser();
  });

  it('lays a lesson out for its screen, however it is held, and prints the sheet of a desk', async () => {
    const { page } = visit;
    await turnTo(page, 'lesson');
    for (const screen of SCREENS) {
      await page.setViewportSize(screen);
      const staves = () => staffHeights(page);
      await expect.poll(staves, { timeout: 60_000 }).toSatisfy(isReadable);
      expect(await overflowing(page)).toEqual([]);
      const headings = await page.locator('.page h3').allTextContents();
      expect(headings.length).toBeGreaterThanOrEqual(5);
      expect(headings[0]).toMatch(/^1 \p{Lu}.+\.$/u);
      // Every exercise has its heading, and its tempo over its first bar.
      expect(await page.locator('.page h3 + svg .tempo').count()).toBe(headings.length);
      expect(await page.locator('.page .tempo:visible').count()).toBe(headings.length);
    }
    await page.setViewportSize(SCREENS[0]);
    await expect
      .poll(() => page.locator('.on-paper svg.music').count(), { timeout: 60_000 })
      .toBeGreaterThan(0);
    const printed = await printedMusic(page);
    for (const paper of PAPERS) expect(await sheetsOf(page, paper)).toEqual([paper.name]);
    await expect.poll(() => staffHeights(page), { timeout: 60_000 }).toSatisfy(isReadable);
    expect(await page.locator('.page .measure:visible').count()).toBe(bars(printed));
    await page.setViewportSize(DESK);
    await expect.poll(() => page.locator('.page h3').count()).toBe(0);
    expect(await printedMusic(page)).toEqual(printed);
    expect(bars(printed)).toBeGreaterThan(20);
  });

  it('engraves the last of many lessons drawn in a row, not all of them', async () => {
    const { page } = visit;
    await page.setViewportSize(DESK);
    await turnTo(page, 'lesson');
    await expect.poll(() => staffHeights(page), { timeout: 60_000 }).not.toEqual([]);
    const ordered = await page.evaluateHandle(async () => {
      const [all, held]: [unknown[], (() => void)[]] = [[], []];
      const { postMessage } = Worker.prototype;
      Worker.prototype.postMessage = function (this: Worker, order: unknown) {
        all.push(order);
        held.push(() => postMessage.call(this, order));
      };
      const another = [...document.querySelectorAll('button')].find((b) => b.textContent === 'Another one')!;
      for (let i = 0; i < 6; i++) {
        another.click();
        // Each is composed, and ordered.
        await new Promise((resolve) => setTimeout(resolve, 20));
      }
      Worker.prototype.postMessage = function (this: Worker, order: unknown) {
        all.push(order);
        postMessage.call(this, order);
      };
      for (const release of held) release();
      return all;
    });
    // The first, which was at work all the while, and the last.
    const count = () => ordered.evaluate((all) => all.length);
    await expect.poll(count, { timeout: 60_000 }).toBe(2);
    await expect.poll(() => staffHeights(page), { timeout: 60_000 }).not.toEqual([]);
    expect(await count()).toBe(2);
  });

  it('prints a part with its music, and goes on showing it', async () => {
    const { page } = visit;
    await page.setViewportSize(SCREENS[0]);
    await turnTo(page, 'part');
    await lay(page, 'low-water.musicxml', DEMO);
    await page.locator('.music svg.music').first().waitFor();
    await page.getByText('The music is being engraved').waitFor({ state: 'hidden' });
    expect(await staffHeights(page)).toSatisfy(isReadable);
    const printed = await printedMusic(page);
    expect(bars(printed)).toBe(24);
    const sheets = [];
    for (const paper of PAPERS) sheets.push(await sheetsOf(page, paper));
    expect(await page.getByText('The music is being engraved').count()).toBe(0);
    expect(await staffHeights(page)).toSatisfy(isReadable);
    await page.setViewportSize(DESK);
    await page.getByText('The music is being engraved').waitFor({ state: 'hidden' });
    expect(await printedMusic(page)).toEqual(printed);
    for (const [i, paper] of PAPERS.entries()) expect(await sheetsOf(page, paper)).toEqual(sheets[i]);
  });

  it('keeps inside its screen, whatever a file and a part are called', async () => {
    const { page } = visit;
    await page.setViewportSize(SCREENS[0]);
    await turnTo(page, 'part');
    const long = 'obligato'.repeat(20);
    for (const [text, told] of [
      ['<score/>', '[role=alert] p'],
      [DEMO.replaceAll('Horn in F', long).replace('brass.french-horn', 'wind.flutes'), '[role=alert] p'],
      [DEMO.replaceAll('Horn in F', `Horn in F ${long}`), '#verdict .box'],
    ] as const) {
      await lay(page, `${long}.musicxml`, text);
      await page.locator(told).waitFor();
      expect(await overflowing(page), told).toEqual([]);
      await page.getByRole('button', { name: 'Put away' }).tap();
    }
  });
  it('leaves no gap where letters are twice as large', async () => {
    const large = PAGE.replace('</head>', '<style>html { font-size: 200% }</style></head>');
    await withPage(large, { locale: 'en-GB', viewport: SCREENS[1] }, async ({ page }) => {
      await page.locator('.ladder').waitFor();
      const room = await page.locator('.ladder').evaluate((ladder: SVGSVGElement) => {
        const { width, height } = ladder.getBoundingClientRect();
        return height - (ladder.viewBox.baseVal.height * width) / ladder.viewBox.baseVal.width;
      });
      expect(Math.abs(room)).toBeLessThan(1);
      for (const sheet of ['note', 'lesson'] as const) {
        await page.locator(`nav a[href="#${sheet}"]`).click();
        expect(await overflowing(page), sheet).toEqual([]);
        expect(await indentedFields(page), sheet).toEqual([]);
      }
    });
  });
});

async function turnTo(page: Page, sheet: 'part' | 'lesson'): Promise<void> {
  await page.locator(`nav a[href="#${sheet}"]`).tap();
}

async function lay(page: Page, name: string, text: string): Promise<void> {
  const file = { name, mimeType: 'application/octet-stream', buffer: Buffer.from(text) };
  await page.locator('#file').setInputFiles(file);
}

/** Of every staff in sight, from its lowest line to its highest, in pixels. */
function staffHeights(page: Page): Promise<readonly number[]> {
  return page.locator('svg.music:visible').evaluateAll((all) =>
    all.map((music) => {
      const [top, , , , bottom] = music.querySelectorAll('.measure > path');
      return bottom!.getBoundingClientRect().top - top!.getBoundingClientRect().top;
    }),
  );
}

function isReadable(heights: readonly number[]): boolean {
  const [least, most] = READABLE;
  return heights.length > 0 && heights.every((height) => height >= least && height <= most);
}

/** The drawings that paper gets. */
async function printedMusic(page: Page): Promise<readonly string[]> {
  await page.emulateMedia({ media: 'print' });
  const music = await page
    .locator('svg.music:visible')
    .evaluateAll((all) => all.map(({ innerHTML }) => innerHTML));
  await page.emulateMedia({ media: null });
  return music;
}

function bars(music: readonly string[]): number {
  return music.join('').split('class="measure"').length - 1;
}

/** Fields with nothing before them in their row that do not begin at its edge. */
function indentedFields(page: Page): Promise<readonly string[]> {
  return page.locator('.fields').evaluateAll((all) =>
    all.flatMap((fields) => {
      const edge = fields.getBoundingClientRect().left;
      const boxes = [...fields.children].map((field) => ({ field, box: field.getBoundingClientRect() }));
      return boxes
        .filter(({ box }) => box.width > 0 && box.left > edge + 1)
        .filter(
          ({ box }) =>
            !boxes.some(
              ({ box: o }) => o.width > 0 && o.right <= box.left && o.bottom > box.top && o.top < box.bottom,
            ),
        )
        .map(({ field }) => field.outerHTML.slice(0, 60));
    }),
  );
}
