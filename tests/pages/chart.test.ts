/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
/** The chart: the published fingerings, each on its card, on one sheet of paper; and the same as a score. */
import { afterAll, describe, expect, it } from 'vitest';
import { HORNS } from '../../core/horn/horns.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { parsePitch, pitchCents, printPitch } from '../../core/pitch/pitch.ts';
import { clearMarks, readScore } from '../../plugin/musicxml/index.ts';
import { chartNotes } from '../../plugin/pages/chartNotes.ts';
import { chartPage } from '../../plugin/pages/chartPage.ts';
import { bellhand, folderWith, textOf } from '../batch/bellhand.ts';
import { SCHEMA_FOLDER, schemaErrors } from '../etude/schemaErrors.ts';
import {
  brokenAccessRules,
  closeBrowser,
  describeInBrowser,
  faintTexts,
  stumblingBlocks,
  withPage,
} from './browser.ts';

/** C. Smalley, "Starting Stopping" (CC0 method sheet): F-horn stopped fingerings, 18 rows. */
const PUBLISHED =
  'F5 0, E5 2, Eb5 0, D5 2, Db5 0, C5 2, B4 1, Bb4 12, A4 23, Ab4 0, G4 2, F#4 1, F4 0, E4 2, Eb4 1, D4 12, Db4 0, C4 2'
    .split(', ')
    .map((row) => row.split(' ') as [note: string, valves: string]);

afterAll(closeBrowser);

function player(hornId: string) {
  return { ...DEFAULT_SETTINGS, horn: HORNS.find(({ id }) => id === hornId)! };
}

const double = await chartPage(DEFAULT_SETTINGS);

describe('the notes of a chart', () => {
  it('rise by semitones and hold nothing impossible', () => {
    for (const { id } of HORNS) {
      const notes = chartNotes(player(id)).map(({ examined }) => examined);
      expect(notes.length, id).toBeGreaterThan(15);
      const cents = notes.map(({ note }) => pitchCents(note.written));
      expect(cents).toEqual(cents.slice().sort((a, b) => a - b));
      expect(new Set(cents).size).toBe(cents.length);
      expect(
        notes.every(({ verdict, reading }) => verdict !== 'impossible' && reading.state === 'stopped'),
      ).toBe(true);
    }
  });

  it('leave out no note of the double horn between the lowest and the highest', () => {
    const cents = chartNotes(DEFAULT_SETTINGS).map(({ examined }) => pitchCents(examined.note.written));
    expect(cents[cents.length - 1]! - cents[0]!).toBe(100 * (cents.length - 1));
  });
});

describeInBrowser('the chart page', () => {
  it('has a card for every note, with the published fingering', async () => {
    await withPage(double, {}, async ({ page, complaints }) => {
      const cards = await page.locator('.card').evaluateAll((all) =>
        all.map((card) => ({
          drawn: card.querySelector('svg')!.getAttribute('aria-label'),
          name: card.querySelector('.name')!.textContent,
          fingering: card.querySelector('h3 span:last-child')!.parentElement!.textContent!.trim(),
          text: card.querySelector('p')!.textContent,
        })),
      );
      expect(cards).toHaveLength(chartNotes(DEFAULT_SETTINGS).length);
      for (const { drawn, name, text } of cards) {
        expect(drawn).toBe(`${name}, stopped`);
        expect(text).toMatch(/^\([A-G][♯♭]?[↑↓]?\), (?:falls \d+ ¢|does not fall)/);
      }
      expect(PUBLISHED).toHaveLength(18);
      for (const [note, valves] of PUBLISHED) {
        const cents = pitchCents(parsePitch(note));
        const card = cards.find(({ name }) => pitchCents(parsePitch(name!)) === cents)!;
        expect(card.fingering, note).toMatch(new RegExp(` ${valves}$`));
      }
      expect(complaints).toEqual([]);
    });
  });

  it.each(HORNS.map(({ id }) => [id]))('fits one A4 sheet for %s', async (id) => {
    await withPage(await chartPage(player(id)), {}, async ({ page }) => {
      const sheets = (await page.pdf({ preferCSSPageSize: true }))
        .toString('latin1')
        .match(/\/MediaBox\s*\[[^\]]*\]/g)!;
      expect(sheets).toHaveLength(1);
    });
  });

  it.each([
    { colorScheme: 'light', width: 1280 },
    { colorScheme: 'dark', width: 1280 },
    { colorScheme: 'dark', width: 390 },
  ] as const)('is legible: $colorScheme, $width pixels wide', async ({ colorScheme, width }) => {
    await withPage(
      double,
      { colorScheme, viewport: { width, height: 900 } },
      async ({ page, complaints }) => {
        expect(await faintTexts(page)).toEqual([]);
        expect(await stumblingBlocks(page)).toEqual([]);
        expect(await brokenAccessRules(page)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
        expect(complaints).toEqual([]);
      },
    );
  });
});

describe('bellhand chart', () => {
  it('writes a page, or a score that check agrees with and clear empties', () => {
    const folder = folderWith();
    expect(bellhand(folder, ['chart']).stdout).toBe(
      'chart-double.html: Stopped notes on a double horn in F and B♭\n',
    );
    expect(textOf(folder, 'chart-double.html')).toMatch(/^<!DOCTYPE html>/);
    const run = bellhand(folder, ['chart', '--format', 'musicxml', '--horn', 'single-f']);
    expect(run).toMatchObject({ exit: 0, stderr: '' });
    const text = textOf(folder, 'chart-single-f.musicxml');
    const checked = bellhand(folder, [
      'check',
      '--horn',
      'single-f',
      '--format',
      'json',
      'chart-single-f.musicxml',
    ]);
    expect(checked.exit).toBe(0);
    const [part] = JSON.parse(checked.stdout).parts;
    const notes = chartNotes(player('single-f'));
    expect(part.notes).toHaveLength(notes.length);
    notes.forEach(({ examined }, i) => {
      expect(part.notes[i].valves).toBe(examined.fingering!.tube.combination.valves);
      expect(printPitch(parsePitch(part.notes[i].written))).toBe(printPitch(examined.note.written));
    });
    expect(readScore(text).ownSpans.length).toBe(
      notes.length + part.notes.filter(({ verdict }: { verdict: string }) => verdict !== 'sure').length,
    );
    expect(readScore(clearMarks(text)).ownSpans).toEqual([]);
  });

  it.skipIf(SCHEMA_FOLDER === null)('writes scores the schema accepts', async () => {
    const folder = folderWith();
    const texts: { [name: string]: string } = {};
    for (const { id } of HORNS.slice(0, 8)) {
      bellhand(folder, ['chart', '--format', 'musicxml', '--horn', id]);
      texts[`${id}.xml`] = textOf(folder, `chart-${id}.musicxml`);
    }
    expect(await schemaErrors(texts)).toEqual([]);
  });

  it.each([[['--horn', 'alphorn']], [['--format', 'pdf']], [['-o', 'none/here.html']]])(
    'refuses %j in one line',
    (args) => {
      const run = bellhand(folderWith(), ['chart', ...args]);
      expect(run.exit).toBe(2);
      expect(run.stderr).toMatch(/^bellhand: [^\n]+\n$/);
    },
  );
});

describe('bellhand report', () => {
  it('writes the page beside its file, and says so', () => {
    const folder = folderWith({
      'part.musicxml': textOf(process.cwd(), 'plugin/batch/demo/low-water.musicxml'),
    });
    const run = bellhand(folder, ['report', 'part.musicxml']);
    expect(run).toEqual({ exit: 0, stdout: 'part.report.html: ready to open in a browser\n', stderr: '' });
    expect(textOf(folder, 'part.report.html')).toContain(
      '<title>Stopped notes in Low Water at the Lock, Horn in F</title>',
    );
  });

  it.each([[['none.musicxml']], [['.']], [['broken.musicxml']]])(
    'refuses %j in one line and writes nothing',
    (args) => {
      const folder = folderWith({ 'broken.musicxml': '<score-partwise' });
      const run = bellhand(folder, ['report', ...args]);
      expect(run.exit).toBe(2);
      expect(run.stdout).toBe('');
      expect(run.stderr).toMatch(/^bellhand: [^\n]+\n$/);
    },
  );
});
