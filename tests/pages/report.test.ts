/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
/** The report in a real browser: complete, tied together, legible in light and dark, on paper, by keyboard and without script. */
import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { resultOf } from '../../core/marks/result.ts';
import { isHandState } from '../../core/part/handStates.ts';
import { printPitch } from '../../core/pitch/pitch.ts';
import { countNotes } from '../../core/rules/counts.ts';
import { examine } from '../../core/rules/examine.ts';
import { ENGLISH_READER, readerOf } from '../../core/words/language.ts';
import { countText } from '../../core/words/summary.ts';
import { readScore } from '../../plugin/musicxml/index.ts';
import { worstFirst } from '../../plugin/pages/findingEntries.ts';
import { glissandoPath } from '../../plugin/pages/glissandoPicture.ts';
import { reportPage } from '../../plugin/pages/reportPage.ts';
import { open, type Played, scoreOf, stopped } from '../editor/rig/music.ts';
import { corpusText, describeWithCorpus, withStoppedSigns } from '../musicxml/corpus.ts';
import { generatePart } from '../musicxml/generate.ts';
import {
  brokenAccessRules,
  closeBrowser,
  describeInBrowser,
  faintTexts,
  stumblingBlocks,
  withPage,
} from './browser.ts';
import { forgetEngravings } from './engravedOnce.ts';
import { PAPERS, sheetsOf } from './paper.ts';

const DEMO = readFileSync(new URL('../../plugin/batch/demo/low-water.musicxml', import.meta.url), 'utf8');

async function reportOf(text: string, name = 'low-water.musicxml') {
  const score = readScore(text);
  const examinations = score.horns.map(({ passage }) => examine(passage));
  return { examinations, page: await reportPage({ name, score, examinations, remarks: [] }) };
}

const demo = await reportOf(DEMO);
const [examination] = demo.examinations;

/** A stopped C5 in each of so many bars, some with a note in its place that the hand does not hold. */
function longPart(barCount: number, lowBars: readonly number[]): string {
  const bar = (number: number): readonly Played[] => [
    { ...stopped(lowBars.includes(number) ? 'F#2' : 'C5'), quarters: 4 },
  ];
  return scoreOf([{ bars: Array.from({ length: barCount }, (_, i) => bar(i + 1)) }]);
}

afterAll(closeBrowser);

describe('the page', () => {
  it('is one file without script and without anything from elsewhere', () => {
    expect(demo.page).not.toMatch(/<script|javascript:|\son\w+=/i);
    expect(demo.page).not.toMatch(/(?:src|href)="(?!#|data:)/);
    expect(demo.page).not.toMatch(/url\((?!data:)/);
  });

  it('is the same each time', async () => {
    forgetEngravings();
    expect((await reportOf(DEMO)).page).toBe(demo.page);
  });

  it('writes out what entities of the score stand for, in its title and in its music', async () => {
    const text = scoreOf([{ bars: [[{ ...stopped('C5', 4), words: 'HERE' }]] }])
      .replace('?>', '?><!DOCTYPE score-partwise [<!ENTITY tide "mar&#233;e &#38;#38; ebb">]>')
      .replace('<part-list>', '<work><work-title>La &tide;</work-title></work><part-list>')
      .replace('HERE', '&tide;');
    const { page } = await reportOf(text, 'tide.musicxml');
    expect(page.split('<svg')[0]).toContain('La marée &amp; ebb');
    expect(page.slice(page.indexOf('<svg'))).toContain('marée');
  });

  it('escapes what a file is called', async () => {
    const { page } = await reportOf(DEMO, '<b>&"x".musicxml');
    expect(page).toContain('from &lt;b&gt;&amp;&quot;x&quot;.musicxml.');
    expect(page).not.toContain('<b>');
  });

  it('bears the names of work and part, not the name of the file', async () => {
    expect(demo.page).toContain('<h1>Low Water at the Lock, Horn in F</h1>');
    expect(demo.page).toContain('<title>Stopped notes in Low Water at the Lock, Horn in F</title>');
    const untitled = DEMO.replace(/<work>.*?<\/work>/s, '');
    expect((await reportOf(untitled)).page).toContain('<h1>Horn in F</h1>');
    const named = DEMO.replace('Low Water at the Lock', 'Ebb &amp; Flow &lt;b&gt;');
    expect((await reportOf(named)).page).toContain('<h1>Ebb &amp; Flow &lt;b&gt;, Horn in F</h1>');
  });

  it('stays below 5 MB for a part of 2,000 notes', async () => {
    const { page, examinations } = await reportOf(generatePart(2000));
    expect(examinations[0]!.notes).toHaveLength(2000);
    expect(examinations[0]!.findings.length).toBeGreaterThan(50);
    expect(Buffer.byteLength(page)).toBeLessThan(5_000_000);
  }, 120_000);

  it('says of a part without stopped notes just that', async () => {
    const { page } = await reportOf(DEMO.replace(/<stopped\/>/g, '').replace(/gestopft/g, 'dolce'));
    expect(page).toContain('Nothing is stopped in this part.');
  });
});

describeInBrowser('the report', () => {
  const { findings } = resultOf(demo.examinations);

  it('has every finding beside its bar, in words, with its remedy, tied to its note both ways', async () => {
    await withPage(demo.page, {}, async ({ page, complaints }) => {
      expect(await page.locator('.on-wide .remark').count()).toBe(findings.length);
      expect(findings.length).toBeGreaterThan(5);
      for (const [i, finding] of findings.entries()) {
        const remark = page.locator(`#remark-${i + 1}`);
        const text = (await remark.textContent())!.replace(/\s+/g, ' ');
        expect(text).toContain(`Bar ${finding.measure}, beat`);
        expect(text).toContain(finding.message);
        // Of findings in a row that have one remedy, the last tells it.
        const next = findings[i + 1];
        const isToldBelow = next?.id === finding.id && next.remedy === finding.remedy;
        expect(text.includes(finding.remedy)).toBe(!isToldBelow);
        expect(text).toContain({ impossible: '×', risky: '≈', advice: 'for the page' }[finding.severity]);
        const { note } = examination!.notes[examination!.findings[i]!.noteIndex]!;
        const places = await page.evaluate(
          ([number, bar, head]) => {
            const box = (selector: string) =>
              document.querySelector(selector)!.getBoundingClientRect().toJSON();
            const system = document.querySelector(`#remark-${number}`)!.closest('.system')!;
            return {
              isTogether:
                system.contains(document.querySelector(`#ring-${number}`)) &&
                system.contains(document.querySelector(`#${bar}`)),
              ring: box(`#ring-${number} circle`),
              line: box(`#ring-${number} line`),
              head: box(`#${head} use`),
              bar: box(`#${bar}`),
              remark: box(`#remark-${number}`),
              music: system.querySelector('.paper')!.getBoundingClientRect().toJSON(),
              links: [
                document.querySelector(`#remark-${number} a`)!.getAttribute('href'),
                document.querySelector(`#ring-${number}`)!.getAttribute('href'),
              ],
            };
          },
          [String(i + 1), `bh-0-bar-${note.measureIndex}`, `bh-0-note-${note.index}`] as const,
        );
        expect(places.isTogether).toBe(true);
        expect(places.links).toEqual([`#ring-${i + 1}`, `#remark-${i + 1}`]);
        // The line runs from the note's head to the ring below it.
        expect(places.line.left).toBeLessThan(places.head.right + 2);
        expect(places.line.right).toBeGreaterThan(places.head.left - 2);
        expect(places.ring.top).toBeGreaterThan(places.head.bottom);
        expect(places.head.left).toBeGreaterThanOrEqual(places.bar.left - 1);
        expect(places.head.right).toBeLessThanOrEqual(places.bar.right + 1);
        // Beside, on a wide window.
        expect(places.remark.left).toBeGreaterThan(places.music.right);
      }
      expect(complaints).toEqual([]);
    });
  });

  it('says the verdict first, in the numbers of check, with links to its bars', async () => {
    const [first] = await withPage(demo.page, {}, async ({ page }) => {
      const box = page.locator('.box');
      expect(await box.locator('.counts').textContent()).toBe(
        countText(countNotes(demo.examinations), ENGLISH_READER),
      );
      const wanted = (verdict: string) => [
        ...new Set(
          examination!.notes.filter((note) => note.verdict === verdict).map(({ note }) => note.measure),
        ),
      ];
      const lines = await box.locator('.lead').all();
      expect(lines).toHaveLength(2);
      for (const [i, verdict] of ['impossible', 'risky'].entries()) {
        expect(await lines[i]!.locator('a.to-wide').allTextContents()).toEqual(wanted(verdict));
        const count = examination!.notes.filter((note) => note.verdict === verdict).length;
        expect(await lines[i]!.textContent()).toContain(`${count} note`);
      }
      expect((await box.boundingBox())!.y).toBeLessThan(200);
      await lines[0]!.locator('a.to-wide').first().click();
      const bar = page.locator(new URL(page.url()).hash);
      return [(await bar.boundingBox())!];
    });
    // The link has brought its bar into the window.
    expect(first!.y).toBeGreaterThanOrEqual(0);
    expect(first!.y).toBeLessThan(900);
  });

  it('is calm where nothing is impossible', async () => {
    const { page: text, examinations } = await reportOf(longPart(8, []));
    expect(examinations[0]!.findings).toEqual([]);
    await withPage(text, {}, async ({ page }) => {
      expect(await page.locator('.box').textContent()).toMatch(/^\s*Nothing here is impossible/);
      expect(await page.locator('.alarm, .box .no').count()).toBe(0);
      expect(await page.locator('.on-wide details').count()).toBe(1);
    });
  });

  it('tells one trouble once, and folds the rest of a long part away', async () => {
    const part = longPart(360, [12, 20, 300, 301, 302, 303]);
    const { page: text, examinations } = await reportOf(part);
    expect(examinations[0]!.findings).toHaveLength(6);
    await withPage(text, {}, async ({ page }) => {
      expect(await page.locator('.entry').count()).toBe(1);
      expect(await page.locator('.entry h3 a.to-wide').allTextContents()).toEqual(['12', '20', '300–303']);
      // Two windows of 900 pixels.
      const end = await page.locator('.entries').evaluate((list) => list.getBoundingClientRect().bottom);
      expect(end).toBeLessThan(1800);
      const open = await page.locator('.on-wide > .system').count();
      expect(open).toBeGreaterThanOrEqual(3);
      expect(open).toBeLessThanOrEqual(10);
      await page.locator('.entry a.to-wide', { hasText: '300–303' }).click();
      expect(await page.locator('#bh-0-bar-299').isVisible()).toBe(true);
    });
  }, 90_000);

  it('folds nothing away when the whole is wanted', async () => {
    const part = longPart(120, [12, 20]);
    const { examinations } = await reportOf(part);
    const score = readScore(part);
    const whole = await reportPage({ name: 'long', score, examinations, remarks: [], isWhole: true });
    await withPage(whole, {}, async ({ page }) => {
      expect(await page.locator('.on-wide details').count()).toBe(0);
      expect(await page.locator('.on-wide .system').count()).toBeGreaterThan(8);
    });
  });

  it('is in the reader’s language from head to foot, with notes by its names', async () => {
    const score = readScore(DEMO);
    const examinations = score.horns.map(({ passage }) => examine(passage));
    const source = { name: 'low-water.musicxml', score, examinations, remarks: [] };
    const page = await reportPage({ ...source, reader: readerOf('de') });
    expect(page).toContain('<html lang="de">');
    for (const text of [
      'Wie diese Seite zu lesen ist',
      'Takt 19, Schlag 3',
      'B-Seite',
      '<td data-label="Hand">gestopft',
    ])
      expect(page).toContain(text);
    // Tags, styles and the part's own words apart.
    const words = page.replace(/<style>[\s\S]*?<\/style>|<svg[\s\S]*?<\/svg>|<[^>]+>/g, ' ');
    for (const english of [' of ', ' bar', 'Bar ', ' note', 'risky', 'stopped', ' sure', ' hand ', 'B♭'])
      expect(words.includes(english), english).toBe(false);
  });

  it('puts the worst first', () => {
    const ranks = worstFirst(examination!.findings, ENGLISH_READER).map(({ severity }) =>
      ['impossible', 'risky', 'advice'].indexOf(severity),
    );
    expect(ranks).toEqual([...ranks].sort());
    expect(new Set(ranks).size).toBeGreaterThan(1);
  });

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

  it('has the fingering of every stopped note in its table', async () => {
    await withPage(demo.page, {}, async ({ page }) => {
      const rows = await page.locator('tbody tr').allInnerTexts();
      for (const { note, reading, fingering, namedFrom } of examination!.notes) {
        if (!isHandState(reading.state)) continue;
        const own = rows.filter((row) => row.startsWith(`${printPitch(note.written)}\t`));
        expect(own.length).toBeGreaterThan(0);
        if (fingering) expect(own.some((row) => row.includes(` ${fingering.printed}`))).toBe(true);
        expect(namedFrom).toBeDefined();
      }
    });
  });

  /**
   * Common practice, and C. Smalley, "Starting Stopping": on the open F horn G4 closes down to F4. The music wants it to
   * go up to C5.
   */
  it('draws the glissando that goes up: wanted above, played below', async () => {
    await withPage(demo.page, {}, async ({ page }) => {
      const picture = page.locator('.on-wide svg.path');
      expect(await picture.count()).toBe(1);
      const name = await picture.locator('title').textContent();
      expect(name).toBe(
        'The music leads from G4 open to C5 stopped. The hand, closing, takes G4 to F4 (open F horn).',
      );
      const heights = await picture.evaluate((svg) => {
        const middle = (element: Element) => {
          const { top, bottom } = element.getBoundingClientRect();
          return (top + bottom) / 2;
        };
        const [reached, start] = [...svg.querySelectorAll('circle')].map(middle);
        const way = svg.querySelector('circle')!.previousElementSibling as SVGGeometryElement;
        const way100 = Array.from(
          { length: 101 },
          (_, i) => way.getPointAtLength((i / 100) * way.getTotalLength()).y,
        );
        return { wanted: middle(svg.querySelector('g.no')!), start: start!, reached: reached!, way100 };
      });
      expect(heights.wanted).toBeLessThan(heights.start);
      expect(heights.reached).toBeGreaterThan(heights.start);
      // To scale: five semitones up, two down.
      const ratio = (heights.start - heights.wanted) / (heights.reached - heights.start);
      expect(ratio).toBeCloseTo(5 / 2, 1);
      // The hand never lets the tone rise on its way down; y grows downward.
      const { way100 } = heights;
      for (let i = 1; i <= 100; i++) expect(way100[i]!).toBeGreaterThanOrEqual(way100[i - 1]! - 0.05);
      expect(way100[100]! - way100[0]!).toBeGreaterThan(20);
    });
  });

  /** Facts: C. Smalley, "Starting Stopping", hand positions E4[0] to C♯4, E4[12] to D4, G4[0] to F4; opening goes back up. */
  it('draws every kind of glissando the hand cannot make, and none that it can', async () => {
    const pair = (from: Played, to: Played): readonly Played[] => [
      { ...from, quarters: 2, glissando: '+' },
      { ...to, quarters: 2, glissando: '-' },
    ];
    const bars = [
      pair(open('G4'), stopped('C5')),
      pair(open('E4'), stopped('C#4')),
      pair(open('E4'), stopped('B3')),
      pair(stopped('F4'), open('D4')),
      pair(stopped('D4'), open('E4')),
    ];
    const { page: text, examinations } = await reportOf(scoreOf([{ bars }]));
    expect(examinations[0]!.findings.map(({ id }) => id)).toEqual([
      'closes-upward',
      'no-common-tube',
      'opens-downward',
    ]);
    await withPage(text, {}, async ({ page }) => {
      expect(await page.locator('.on-wide svg.path title').allTextContents()).toEqual([
        'The music leads from G4 open to C5 stopped. The hand, closing, takes G4 to F4 (open F horn).',
        expect.stringMatching(
          /^The music leads from E4 open to B3 stopped\. The hand, closing, takes E4 to (?:C♯4 \(open F horn\)|D4 \(F horn 1\+2\))\.$/,
        ),
        'The music leads from F4 stopped to D4 open. The hand, opening, takes F4 to G4 (open F horn).',
      ]);
    });
  });

  it('draws two glissandos that end on one note each from its own start', async () => {
    const one = scoreOf([
      {
        bars: [
          [
            { ...open('G4'), glissando: '+' },
            { ...open('E4'), glissando: '+' },
            { ...stopped('C5', 2), glissando: '-' },
          ],
        ],
      },
    ]);
    const [start, stop] = ['<glissando type="start" number="1"/>', '<glissando type="stop" number="1"/>'];
    const [before, between, after] = one.split(start);
    const text = [before, start, between, start.replace('1', '2'), after]
      .join('')
      .replace(stop, stop + stop.replace('1', '2'));
    const { page: report, examinations } = await reportOf(text);
    const [{ notes, findings }] = examinations as [(typeof examinations)[number]];
    expect(findings.map(({ id, noteIndex, otherIndex }) => [id, noteIndex, otherIndex])).toEqual([
      ['closes-upward', 2, 0],
      ['closes-upward', 2, 1],
    ]);
    for (const finding of findings) {
      const path = glissandoPath(finding, examinations[0]!)!;
      expect(path.from).toEqual(notes[finding.otherIndex!]!.note.written);
    }
    await withPage(report, {}, async ({ page }) => {
      const titles = await page.locator('.on-wide svg.path title').allTextContents();
      expect(titles.map((title) => title.split('.')[0]).sort()).toEqual([
        'The music leads from E4 open to C5 stopped',
        'The music leads from G4 open to C5 stopped',
      ]);
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

/** A score with the first eighty bars of its parts. */
function beginningOf(score: string): string {
  return score.replace(/(<part id[^>]*>)([\s\S]*?)(?=<\/part>)/g, (_, start: string, bars: string) => {
    const ends = [...bars.matchAll(/<\/measure>/g)].map((end) => end.index + end[0].length);
    return start + bars.slice(0, ends[79]);
  });
}

describeWithCorpus('parts out of real scores', (files) => {
  let drawn = 0;
  beforeAll(() => {
    drawn = 0;
  });

  const small = files.filter(({ name, bytes }) => /^horn\//.test(name) && bytes.length < 300_000);

  it.each(small.map((file) => [file.name, file] as const))('%s', async (_, file) => {
    const score = readScore(withStoppedSigns(beginningOf(corpusText(file))));
    const horns = score.horns.filter(({ passage }) =>
      passage.notes.some(({ transposition }) => transposition),
    );
    if (horns.length === 0) return;
    // The first horn alone, and its beginning, keep the time of this test short.
    const one = { ...score, horns: horns.slice(0, 1) };
    const examinations = one.horns.map(({ passage }) => examine(passage));
    const page = await reportPage({ name: file.name, score: one, examinations, remarks: [] });
    const { notes, findings } = examinations[0]!;
    const used = notes.filter(({ reading }) => isHandState(reading.state));
    if (used.length === 0) return;
    for (const measureIndex of new Set(used.map(({ note }) => note.measureIndex)))
      expect(page).toContain(`id="bh-0-bar-${measureIndex}"`);
    for (const { noteIndex } of findings) expect(page).toContain(`id="bh-0-note-${noteIndex}"`);
    expect(page.match(/id="remark-\d+"/g) ?? []).toHaveLength(findings.length);
    drawn += 1;
  });

  it('were drawn at all', () => {
    expect(drawn).toBeGreaterThan(10);
  });
});
