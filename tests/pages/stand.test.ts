/// <reference lib="dom" />
/** The page that needs no installation, with a part, in a real browser: offline, and byte for byte what the command line writes. */
import { mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { bellhandHere } from '../batch/bellhand.ts';
import { sharedFolder } from '../musicxml/corpus.ts';
import { closeBrowser, describeInBrowser } from './browser.ts';
import { DEMO, drop, PAGE, taken, turnTo, visitTo } from './standVisit.ts';

const folder = mkdtempSync(join(tmpdir(), 'bellhand-stand-'));

afterAll(async () => {
  rmSync(folder, { recursive: true, force: true });
  await closeBrowser();
});

describe('the file', () => {
  it('stays small and forbids itself every network', () => {
    expect(PAGE.length).toBeLessThan(12_000_000);
    expect(PAGE).toContain("default-src 'none'");
    expect(PAGE).toContain("connect-src 'none'");
    expect(/<style>[\s\S]*?<\/style>/.exec(PAGE)![0]).not.toMatch(/url\((?!data:)/);
  });
});

describeInBrowser('the stand', () => {
  const parts: readonly (readonly [name: string, bytes: Buffer])[] = [
    ['low-water.musicxml', DEMO],
    ...['Haydn_104_1.mxl', 'Brahms_Op.98_2.mxl'].flatMap((name) => {
      const corpus = sharedFolder('corpus');
      if (corpus === null) console.warn(`NOT TESTED: the stand with ${name}: there is no ../shared/corpus`);
      return corpus === null ? [] : [[name, readFileSync(`${corpus}horn/osorch__${name}`)] as const];
    }),
  ];

  describe('with a part', () => {
    const visit = visitTo('part');

    it.each(parts)('%s: what is taken home is what the command line writes', async (name, bytes) => {
      const path = join(folder, name);
      writeFileSync(path, bytes);
      const page = visit();
      await drop(page, name, bytes);
      await page.locator('#verdict .box').waitFor();
      for (const [button, command] of [
        ['#marked', ['annotate', path]],
        ['#completed', ['annotate', '--complete', path]],
        ['#cleared', ['clear', path]],
      ] as const) {
        const file = await taken(page, button);
        const output = join(folder, `${button.slice(1)}-${name}`);
        await bellhandHere(folder, [...command, '-o', output]);
        expect(file.bytes.equals(readFileSync(output)), button).toBe(true);
        expect(file.name).toBe(name.replace(/\.(?=[a-z]+$)/, `.${button.slice(1)}.`));
      }
    });

    it('says in one sentence why a file cannot be read, and stays usable', async () => {
      const page = visit();
      await drop(page, 'broken.musicxml', Buffer.from('<score-partwise><part-list>'));
      const said = await page.locator('[role=alert] p').textContent();
      expect(said).toMatch(/^broken\.musicxml: .+\.$/);
      const huge = join(folder, 'huge.musicxml');
      writeFileSync(huge, '');
      truncateSync(huge, 65 * 1048576);
      await page.locator('#file').setInputFiles(huge);
      await page.getByText(/^huge\.musicxml is larger than 64 MB: .+\.$/).waitFor();
      await drop(page, 'low-water.musicxml', DEMO);
      await page.locator('#verdict .box').waitFor();
      expect(await page.locator('[role=alert] p').count()).toBe(0);
    });

    it('reads with the hand and the clef that are chosen, as the command line does', async () => {
      const path = join(folder, 'chosen.musicxml');
      writeFileSync(path, DEMO);
      const page = visit();
      await drop(page, 'chosen.musicxml', DEMO);
      await page.locator('#verdict .box').waitFor();
      await page.locator('#hand-time').fill('0.1');
      await page.locator('#bass-clef').selectOption('old');
      await page.locator('#tempo').fill('5000');
      const file = await taken(page, '#marked');
      const output = join(folder, 'chosen.marked.musicxml');
      const usual = join(folder, 'usual.marked.musicxml');
      await bellhandHere(folder, [
        'annotate',
        path,
        '--hand-time',
        '0.1',
        '--bass-clef',
        'old',
        '-o',
        output,
      ]);
      await bellhandHere(folder, ['annotate', path, '-o', usual]);
      expect(file.bytes.equals(readFileSync(output))).toBe(true);
      expect(file.bytes.equals(readFileSync(usual))).toBe(false);
    });
  });

  describe('opened again', () => {
    const visit = visitTo('note', { width: 1280, height: 1200 });

    it('grows with the screen, the ladder too, and opens at its head', async () => {
      const page = visit();
      const lettersShown = async () => {
        const { height } = (await page.locator('.ladder text').first().boundingBox())!;
        expect(await page.evaluate(() => scrollY)).toBe(0);
        return height;
      };
      const usual = await lettersShown();
      await page.setViewportSize({ width: 3840, height: 1200 });
      await page.reload();
      await turnTo(page, 'note');
      expect(await lettersShown()).toBeGreaterThan(1.5 * usual);
      await page.setViewportSize({ width: 1280, height: 900 });
    });

    it('engraves the part with its remarks, and tells anew at once when a choice changes', async () => {
      const page = visit();
      // Dropped onto whatever sheet is on top.
      await page.evaluate((text) => {
        const dataTransfer = new DataTransfer();
        dataTransfer.items.add(new File([text], 'low-water.musicxml'));
        document.body.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true }));
      }, DEMO.toString('utf8'));
      await page.locator('.music .ring').first().waitFor();
      await page.getByRole('heading', { name: 'Low Water at the Lock, Horn in F', exact: true }).waitFor();
      expect(await page.locator('.music svg.music').count()).toBeGreaterThan(2);
      const [previous, next] = ['Previous finding', 'Next finding'].map((name) =>
        page.getByRole('button', { name }),
      );
      const findings = await page.locator('.music .remark').count();
      expect(await previous!.isDisabled()).toBe(true);
      for (const [button, number] of [
        [next, 1],
        [next, 2],
        [next, 3],
        [previous, 2],
      ] as const) {
        await button!.click();
        await page.locator('.steps', { hasText: `${number} of ${findings} · Bar ` }).waitFor();
        expect(await page.locator('.music .now').evaluateAll((all) => all.map(({ id }) => id))).toEqual([
          `ring-${number}`,
          `remark-${number}`,
        ]);
        const { y, height } = (await page.locator(`#remark-${number}`).boundingBox())!;
        expect(y).toBeGreaterThan(0);
        expect(y + height).toBeLessThanOrEqual(900);
      }
      await next!.focus();
      for (let number = 2; number <= findings; number++) await page.keyboard.press('Enter');
      await page.locator('.steps', { hasText: `${findings} of ${findings} · Bar ` }).waitFor();
      expect(await next!.isDisabled()).toBe(true);
      await page.keyboard.press('Shift+Tab');
      await page.keyboard.press('Enter');
      await page.locator('.steps', { hasText: `${findings - 1} of ${findings} · Bar ` }).waitFor();
      const before = await page.locator('#verdict').textContent();
      await page.locator('.horn').selectOption('single-bflat');
      expect(await page.locator('#verdict').textContent()).not.toBe(before);
      await page.reload();
      await page.locator('#verdict .box').waitFor();
      expect(await page.locator('.horn').inputValue()).toBe('single-bflat');
    });

    it('plays on the reader’s own horn, and says in one sentence what a file lacks', async () => {
      const path = join(folder, 'own.musicxml');
      writeFileSync(path, DEMO);
      const horn = join(folder, 'crooked.json');
      writeFileSync(horn, '{ "label": "crooked horn", "sides": [{ "name": "Eb", "fundamental": "Eb1" }] }');
      const page = visit();
      await drop(page, 'own.musicxml', DEMO);
      await page.locator('#verdict .box').waitFor();
      await page.locator('#own-horn').setInputFiles(horn);
      await page.locator('.horn option', { hasText: 'Crooked horn' }).waitFor({ state: 'attached' });
      expect(await page.locator('.horn').inputValue()).toBe('own');
      const file = await taken(page, '#marked');
      const output = join(folder, 'own.marked.musicxml');
      await bellhandHere(folder, ['annotate', path, '--horn', horn, '-o', output]);
      expect(file.bytes.equals(readFileSync(output))).toBe(true);
      const bad = { name: 'bad.json', mimeType: 'application/json', buffer: Buffer.from('{"sides": 3}') };
      await page.locator('#own-horn').setInputFiles(bad);
      await page.getByText(/^bad\.json: sides .+\.$/).waitFor();
      expect(await page.locator('.horn').inputValue()).toBe('own');
      await page.reload();
      await page.locator('#verdict .box').waitFor();
      expect(await page.locator('.horn').inputValue()).toBe('own');
    });
  });
});
