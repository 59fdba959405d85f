/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
/** The report: one file, and in a real browser every finding beside its bar, the worst first, in the reader’s language. */
import { afterAll, describe, expect, it } from 'vitest';
import { resultOf } from '../../core/marks/result.ts';
import { isHandState } from '../../core/part/handStates.ts';
import { printPitch } from '../../core/pitch/pitch.ts';
import { countNotes } from '../../core/rules/counts.ts';
import { examine } from '../../core/rules/examine.ts';
import { ENGLISH_READER, readerOf } from '../../core/words/language.ts';
import { countText } from '../../core/words/summary.ts';
import { readScore } from '../../plugin/musicxml/index.ts';
import { worstFirst } from '../../plugin/pages/findingEntries.ts';
import { reportPage } from '../../plugin/pages/reportPage.ts';
import { type Played, scoreOf, stopped } from '../editor/rig/music.ts';
import { generatePart } from '../musicxml/generate.ts';
import { closeBrowser, describeInBrowser, withPage } from './browser.ts';
import { forgetEngravings } from './engravedOnce.ts';
import { DEMO, demo, reportOf } from './reportOf.ts';

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
});
