/// <reference lib="dom" />
/** The report’s pictures of glissandos that the hand cannot make: what the music wants, and where the hand leads. */
import { afterAll, expect, it } from 'vitest';
import { glissandoPath } from '../../plugin/pages/glissandoPicture.ts';
import { open, type Played, scoreOf, stopped } from '../editor/rig/music.ts';
import { closeBrowser, describeInBrowser, withPage } from './browser.ts';
import { demo, reportOf } from './reportOf.ts';

afterAll(closeBrowser);

describeInBrowser('the report', () => {
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
});
