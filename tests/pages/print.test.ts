/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
/** The report on paper: filled, the remarks of a system with its music, no finding on two sheets. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { ENGLISH_READER, findingText } from '../../core/index.ts';
import { examine } from '../../core/rules/examine.ts';
import { readScore } from '../../plugin/musicxml/index.ts';
import { reportPage } from '../../plugin/pages/reportPage.ts';
import { programNamed, skipLoudly } from '../editor/rig/programs.ts';
import { generatePart } from '../musicxml/generate.ts';
import { closeBrowser, describeInBrowser, withPage } from './browser.ts';
import { PAPERS, type Paper } from './paper.ts';

const PDF_READER = programNamed('pdftotext');
if (!PDF_READER) skipLoudly('printed pages, which are read with pdftotext', 'apt-get install poppler-utils');

afterAll(closeBrowser);

/** Engraving and printing a whole finale takes its time on a busy machine. */
const LONG_MS = 240_000;

/** A printed sheet. */
interface Sheet {
  /** Its words in the order in which they are printed, column by column. */
  readonly words: string;
  /** How far down it is printed, from 0 to 1. */
  readonly filled: number;
}

/** Prints a page on every paper. */
function printed(text: string): Promise<readonly (readonly [Paper['name'], readonly Sheet[]])[]> {
  return withPage(text, {}, async ({ page }) => {
    const papers: [Paper['name'], readonly Sheet[]][] = [];
    for (const { name } of PAPERS) {
      const bytes = await page.pdf({ format: name, preferCSSPageSize: true, printBackground: true });
      papers.push([name, sheetsIn(bytes)]);
    }
    return papers;
  });
}

/** Reads the sheets of a print as any reader of PDF does. */
function sheetsIn(bytes: Uint8Array): readonly Sheet[] {
  const folder = mkdtempSync(join(tmpdir(), 'bellhand-print-'));
  try {
    const file = join(folder, 'page.pdf');
    writeFileSync(file, bytes);
    const read = (...args: string[]) =>
      execFileSync(PDF_READER!, [...args, file, '-'], { encoding: 'utf8', maxBuffer: 1e8 });
    const words = read('-raw').split('\f').map(plain);
    return read('-bbox')
      .split('<page ')
      .slice(1)
      .map((page, i) => {
        const height = Number(/height="([\d.]+)"/.exec(page)![1]);
        const bottoms = [...page.matchAll(/yMax="([\d.]+)"/g)].map(([, bottom]) => Number(bottom));
        return { words: words[i]!, filled: Math.max(0, ...bottoms) / height };
      });
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Letters alone: lines, hyphens and spaces come and go in print. */
function plain(text: string): string {
  return text.replace(/[\s\u00ad\u200b-\u200d\u2060-\u2063-]+/g, '');
}

async function reportOf(text: string, isWhole = false) {
  const score = readScore(text);
  const examinations = score.horns.map(({ passage }) => examine(passage));
  const page = await reportPage({ name: 'part.musicxml', score, examinations, remarks: [], isWhole });
  return { page, findings: examinations[0]!.findings, notes: examinations[0]!.passage.notes };
}

const demo = readFileSync(new URL('../../plugin/batch/demo/low-water.musicxml', import.meta.url), 'utf8');

describeInBrowser('the report on paper', () => {
  describe.skipIf(PDF_READER === null)('read from its PDF', () => {
    it('is two sheets for the demo on either paper, each remark with its music', async () => {
      const { page, findings } = await reportOf(demo);
      for (const [paper, sheets] of await printed(page)) {
        expect(sheets, paper).toHaveLength(2);
        // The words printed under a system, and the remarks that belong to it.
        for (const [under, remarks] of [
          ['the water sinks', ['1. Bar 15', '2. Bar 16', '3. Bar 17']],
          ['ripples', ['4. Bar 19', '5. Bar 21', '8. Bar 21']],
          ['very far', ['9. Bar 22']],
        ] as const) {
          const sheet = sheets.find(({ words }) => words.includes(plain(under)))!;
          for (const remark of remarks) expect(sheet.words, `${paper}: ${remark}`).toContain(plain(remark));
        }
      }
      expect(findings).toHaveLength(9);
    });

    it(
      'leaves no sheet half empty and breaks no finding, in a part of 2,000 notes',
      async () => {
        const { page, findings, notes } = await reportOf(generatePart(2000));
        expect(findings.length).toBeGreaterThan(100);
        for (const [name, sheets] of await printed(page)) {
          expect(sheets.slice(0, -1).filter(({ filled }) => filled < 0.5)).toEqual([]);
          const untold = findings.filter((finding, i) => {
            const heading = plain(`${i + 1}. Bar ${notes[finding.noteIndex]!.measure}, beat`);
            const message = plain(findingText(finding, ENGLISH_READER).message);
            const sheet = sheets.find(({ words }) => words.includes(heading));
            return !sheet?.words.slice(sheet.words.indexOf(heading)).includes(message);
          });
          expect(untold, name).toEqual([]);
        }
      },
      LONG_MS,
    );
  });

  it('keeps every system with its remarks on one sheet', async () => {
    const { page } = await reportOf(demo, true);
    // The width of A4 without its margins.
    const paper = { viewport: { width: Math.round((184 * 96) / 25.4), height: 1000 } };
    await withPage(page, paper, async ({ page: shown }) => {
      await shown.emulateMedia({ media: 'print' });
      const blocks = await shown
        .locator('.on-wide .system, .entry, .remark')
        .evaluateAll((all) =>
          all.map(
            (block) => [getComputedStyle(block).breakInside, block.getBoundingClientRect().height] as const,
          ),
        );
      expect(blocks.length).toBeGreaterThan(15);
      for (const [breaks, height] of blocks) {
        expect(breaks).toBe('avoid');
        expect(height).toBeLessThan((273 * 96) / 25.4);
      }
    });
  });
});
