/// <reference lib="dom" />
/** The page’s lessons, courses and études in a real browser: byte for byte those of the command line. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { afterAll, describe, expect, it } from 'vitest';
import { bellhandHere } from '../batch/bellhand.ts';
import { closeBrowser, describeInBrowser } from './browser.ts';
import { PAPERS, sheetsOf } from './paper.ts';
import { taken, visitTo } from './standVisit.ts';

const folder = mkdtempSync(join(tmpdir(), 'bellhand-stand-'));

afterAll(async () => {
  rmSync(folder, { recursive: true, force: true });
  await closeBrowser();
});

describeInBrowser('the stand', () => {
  describe('with a lesson', () => {
    const visit = visitTo('lesson');

    it('composes a lesson and a course that are the command line’s, byte for byte', async () => {
      const page = visit();
      await page.locator('.page svg.music').first().waitFor();
      for (const paper of PAPERS) expect(await sheetsOf(page, paper)).toEqual([paper.name]);
      const file = await taken(page, '#take');
      const seed = /^lesson-1-(\d+)\.musicxml$/.exec(file.name)![1]!;
      const output = join(folder, 'lesson.musicxml');
      await bellhandHere(folder, ['lesson', '--level', '1', '--seed', seed, '-o', output]);
      expect(file.bytes.equals(readFileSync(output))).toBe(true);
      await page.locator('#kind').selectOption('course');
      await page.locator('#weeks').fill('2');
      await page.locator('#week').selectOption('2');
      await page.getByRole('heading', { name: /Week 2$/ }).waitFor();
      const course = await taken(page, '#take');
      expect(course.name).toBe(`course-${seed}.zip`);
      await bellhandHere(folder, ['course', '--weeks', '2', '--seed', seed, '-o', 'course']);
      const pages = unzipSync(course.bytes);
      expect(Object.keys(pages)).toEqual(['week-01.musicxml', 'week-02.musicxml']);
      for (const [name, bytes] of Object.entries(pages))
        expect(readFileSync(join(folder, 'course', name)).equals(bytes), name).toBe(true);
    });

    it('composes in the range and at the tempo that are chosen, as the command line does', async () => {
      const page = visit();
      await page.locator('#kind').selectOption('bend');
      // MIDI: middle C is 60; here in cents.
      await page.locator('#low').selectOption('6000');
      await page.locator('#high').selectOption('7900');
      await page.locator('#etude-tempo').fill('72');
      await page.locator('.page svg.music').first().waitFor();
      const file = await taken(page, '#take');
      const seed = /^etude-bend-(\d+)\.musicxml$/.exec(file.name)![1]!;
      const output = join(folder, 'etude.musicxml');
      const wishes = ['--range', 'C4-G5', '--tempo', '72', '--level', '1', '--key', 'C', '--bars', '32'];
      await bellhandHere(folder, ['etude', '--kind', 'bend', ...wishes, '--seed', seed, '-o', output]);
      expect(file.bytes.equals(readFileSync(output))).toBe(true);
      await page.locator('#low').selectOption('8000');
      await page.getByText('The lowest note must lie below the highest.').waitFor();
    });
  });
});
