/**
 * Makes the pictures that README shows, out of the demo part and a composed lesson, in a real browser and the real editor:
 * `npm run pictures`. Needs chromium.
 */
import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium, type Page } from 'playwright-core';
import { composeLesson, DEFAULT_SETTINGS, examine } from '../core/index.ts';
import { documentText } from '../plugin/etude/documentText.ts';
import { sheetText } from '../plugin/etude/sheetText.ts';
import { readScore } from '../plugin/musicxml/index.ts';
import { chartPage } from '../plugin/pages/chartPage.ts';
import { reportPage } from '../plugin/pages/reportPage.ts';
import { HOST_3 } from '../tests/editor/rig/host3.ts';

const FOLDER = fileURLToPath(new URL('pictures/', import.meta.url));
const DEMO = new URL('../plugin/batch/demo/low-water.musicxml', import.meta.url);

/** The lesson that is shown. */
const LESSON_SEED = 6;

/** A picture's file stays below this, in bytes. */
const MOST_BYTES = 250_000;

const program = ['chromium', 'chromium-browser', 'google-chrome']
  .map((name) => spawnSync('which', [name], { encoding: 'utf8' }).stdout.trim())
  .find((path) => path !== '');
if (!program) {
  console.error('pictures: there is no chromium: apt-get install chromium');
  process.exit(2);
}

mkdirSync(FOLDER, { recursive: true });
const browser = await chromium.launch({
  executablePath: program,
  args: ['--headless', '--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking'],
});
// As it is printed, down to the first remarks.
await take('report.png', await report(), { width: 860, height: 1210 }, (page) =>
  asPrinted(page, '36px 44px'),
);
// The front of the sheet, which fills a window of its size, and its margin.
await take(
  'chart.png',
  await chartPage(DEFAULT_SETTINGS),
  { width: 1056, height: 706 },
  (page) => asPrinted(page, '30px 34px'),
  736,
);
await takeLesson();
const stand = readFileSync(new URL('../dist/bellhand.html', import.meta.url), 'utf8');
await take('stand.png', stand, { width: 1100, height: 1150 }, async (page) => {
  // The hand a little more than half closed.
  await page.locator('input[type=range]').fill('55');
  await page.locator('input[type=range]').blur();
  await page.evaluate('scrollTo(0, 0)');
});
await take('../../plugin/editor/qml/bellhand.png', entry(), { width: 500, height: 280 });
await browser.close();

async function asPrinted(page: Page, margin: string): Promise<void> {
  await page.emulateMedia({ media: 'print' });
  await page.addStyleTag({ content: `html { background: #fff; } body { padding: ${margin}; }` });
}

async function report(): Promise<string> {
  const score = readScore(readFileSync(DEMO, 'utf8'));
  const examinations = score.horns.map(({ passage }) => examine(passage));
  return reportPage({ name: 'low-water.musicxml', score, examinations, remarks: [] });
}

/** The card that stands for the plugin in the editor's plugin manager: the hand in the bell, and the sign for it. */
function entry(): string {
  return `<body style="margin:0">${readFileSync(`${FOLDER}entry.svg`, 'utf8')}`;
}

/** A lesson sheet, whole, as the editor prints it. */
async function takeLesson(): Promise<void> {
  const player = DEFAULT_SETTINGS;
  const result = composeLesson({ level: 2, key: null, low: null, high: null, seed: LESSON_SEED, player });
  if (!result.ok) throw new Error(result.reason);
  const folder = mkdtempSync(join(tmpdir(), 'bellhand-pictures-'));
  const score = join(folder, 'lesson.musicxml');
  writeFileSync(score, sheetText(result.sheet, player, 'marked', documentText));
  copyFileSync(await HOST_3.pictureOf(score, 110), `${FOLDER}lesson.png`);
  rmSync(folder, { recursive: true });
  checkSize('lesson.png');
}

async function take(
  name: string,
  text: string,
  viewport: { width: number; height: number },
  prepare: (page: Page) => Promise<void> = async () => {},
  height = viewport.height,
): Promise<void> {
  const page = await browser.newPage({ viewport, colorScheme: 'light' });
  await page.setContent(text);
  await prepare(page);
  await page.screenshot({
    path: FOLDER + name,
    fullPage: true,
    clip: { x: 0, y: 0, width: viewport.width, height },
  });
  await page.close();
  checkSize(name);
}

function checkSize(name: string): void {
  const { size } = statSync(FOLDER + name);
  if (size > MOST_BYTES) throw new Error(`${name} has ${size} bytes, more than ${MOST_BYTES}: show less`);
  console.log(`${FOLDER}${name}: ${size} bytes`);
}
