/// <reference lib="dom" />
/** Visits to the page that needs no installation: one of its sheets on top, a file dropped onto it, what it gives to take home. */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect } from 'vitest';
import { openPage } from './browser.ts';

export const PAGE = readFileSync(new URL('../../dist/bellhand.html', import.meta.url), 'utf8');
export const DEMO = readFileSync(new URL('../../plugin/batch/demo/low-water.musicxml', import.meta.url));

/** Shows the page on an English reader's screen. */
export const ON_SCREEN = { locale: 'en-GB', acceptDownloads: true };

/**
 * One visit to the page for several tests, since the engraver takes seconds to start: with one of the sheets on top, and
 * what is on the stand put away after each.
 */
export function visitTo(
  sheet: 'note' | 'part' | 'lesson',
  viewport = { width: 1280, height: 900 },
): () => Page {
  let visit: Awaited<ReturnType<typeof openPage>>;
  beforeAll(async () => {
    visit = await openPage(PAGE, { ...ON_SCREEN, viewport });
    await turnTo(visit.page, sheet);
  });
  afterEach(async () => {
    // The worker's own script is the only thing that is asked for, and it is in the page.
    expect(visit.complaints.filter((complaint) => !complaint.startsWith('blob:'))).toEqual([]);
    const away = visit.page.getByRole('button', { name: 'Put away' });
    if (await away.isVisible()) await away.click();
  });
  afterAll(() => visit.close());
  return () => visit.page;
}

export async function turnTo(page: Page, sheet: 'note' | 'part' | 'lesson'): Promise<void> {
  await page.locator(`nav a[href="#${sheet}"]`).click();
}

export async function drop(page: Page, name: string, bytes: Uint8Array): Promise<void> {
  await page
    .locator('#file')
    .setInputFiles({ name, mimeType: 'application/octet-stream', buffer: Buffer.from(bytes) });
}

export async function taken(page: Page, button: string): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.locator(button).click()]);
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}
