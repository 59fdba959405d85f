/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
/** Opens pages in a real browser, offline, and keeps an eye on everything they complain about or reach for. */
import { copyFile, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  type ConsoleMessage,
  chromium,
  type Page,
  type Request,
} from 'playwright-core';
import { describe, it } from 'vitest';
import { programNamed, skipLoudly } from '../editor/rig/programs.ts';

/** The engine without the browser around it starts in a fraction of the time. */
const PROGRAM = programNamed('chromium-headless-shell', 'chromium', 'chromium-browser', 'google-chrome');

/** Wasm as it is compiled first: to make its code quick takes longer than all that tests have engraved. */
const QUIET = [
  '--js-flags=--liftoff-only',
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** A page in the browser, with what went wrong since it was opened. */
export interface OpenPage {
  readonly page: Page;
  /** Messages of the console, errors, and requests for anything but the page itself. */
  readonly complaints: string[];
}

/** A browser, and the tab in it in which pages come one after another. */
interface Started {
  readonly browser: Browser;
  readonly tab: Page;
}

const started: { usual?: Promise<Started>; bare?: Promise<Started> } = {};

/** The browser; a `bare` one finds a single font on the machine, and a wide one. */
function browser(kind: keyof typeof started): Promise<Started> {
  started[kind] ??= launch(kind === 'bare');
  return started[kind];
}

async function launch(isBare: boolean): Promise<Started> {
  const env = isBare ? { ...process.env, FONTCONFIG_FILE: await oneFont() } : process.env;
  const launched = await chromium.launch({ executablePath: PROGRAM!, args: QUIET, env });
  return { browser: launched, tab: await tabOf(await launched.newContext()) };
}

async function tabOf(context: BrowserContext): Promise<Page> {
  // A busy machine takes its time: the test's own limit is the only one.
  context.setDefaultTimeout(0);
  return context.newPage();
}

/** Settings with which a browser finds a single font. With none at all it gives up on those of the page, too. */
async function oneFont(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'bellhand-fonts-'));
  const wide = createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSansMono-Bold.ttf');
  await copyFile(wide, join(folder, 'wide.ttf'));
  const settings = join(folder, 'fonts.conf');
  await writeFile(settings, `<fontconfig><dir>${folder}</dir><cachedir>${folder}</cachedir></fontconfig>`);
  return settings;
}

/** Ends the browser; for `afterAll`. */
export async function closeBrowser(): Promise<void> {
  for (const each of Object.values(started)) await (await each)?.browser.close();
  delete started.usual;
  delete started.bare;
}

/** How a page is looked at, which a tab can be told again and again, and what asks for a context of its own. */
type Look = Pick<BrowserContextOptions, 'viewport' | 'colorScheme'>;
type Own = Omit<BrowserContextOptions, keyof Look>;

/**
 * Shows a page from a file, as a user opens it, until it is closed. Pages follow one another in one tab, since a new one
 * takes longer than most pages; with any option but these two a page has a context of its own.
 */
export async function openPage(
  text: string,
  { viewport = { width: 1280, height: 900 }, colorScheme = 'light', ...own }: Look & Own = {},
  kind: keyof typeof started = 'usual',
): Promise<OpenPage & { readonly close: () => Promise<void> }> {
  const { browser: running, tab } = await browser(kind);
  const context = Object.keys(own).length > 0 ? await running.newContext(own) : null;
  const page = context ? await tabOf(context) : tab;
  const folder = await mkdtemp(join(tmpdir(), 'bellhand-page-'));
  const file = join(folder, 'page.html');
  const url = pathToFileURL(file).href;
  const complaints: string[] = [];
  const onMessage = (message: ConsoleMessage) => complaints.push(message.text());
  const onFault = (fault: Error) => complaints.push(String(fault));
  const onRequest = (request: Request) => {
    if (request.url() !== url && !request.url().startsWith('data:')) complaints.push(request.url());
  };
  page.on('console', onMessage).on('pageerror', onFault).on('request', onRequest);
  const close = async () => {
    page.off('console', onMessage).off('pageerror', onFault).off('request', onRequest);
    await context?.close();
    await rm(folder, { recursive: true, force: true });
  };
  try {
    await writeFile(file, text);
    if (viewport) await page.setViewportSize(viewport);
    await page.emulateMedia({ media: null, colorScheme });
    await page.goto(url);
  } catch (fault) {
    await close();
    throw fault;
  }
  return { page, complaints, close };
}

/** Shows a page while some work is done. */
export async function withPage<T>(
  text: string,
  options: Look & Own,
  work: (open: OpenPage) => Promise<T>,
  kind: keyof typeof started = 'usual',
): Promise<T> {
  const open = await openPage(text, options, kind);
  try {
    return await work(open);
  } finally {
    await open.close();
  }
}

/** Runs tests in the browser, or says loudly that they were left out. */
export function describeInBrowser(title: string, tests: () => void): void {
  if (PROGRAM) describe(title, tests);
  else {
    skipLoudly(`${title} in a browser, which is not installed`, 'apt-get install chromium-headless-shell');
    describe.skip(title, () => it('needs a browser', () => {}));
  }
}

/** Texts too faint to read: every element with text of its own whose contrast with its ground is below 4.5 : 1. @source WCAG 2.2, 1.4.3 */
export function faintTexts(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const channels = (colour: string) => {
      const [red, green, blue, alpha = 1] = colour.match(/[\d.]+/g)!.map(Number);
      return { rgb: [red!, green!, blue!], alpha };
    };
    const luminance = (rgb: readonly number[]) => {
      const [red, green, blue] = rgb.map((value) => {
        const part = value / 255;
        return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
    };
    const ground = (element: Element | null): number[] => {
      for (let at = element; at; at = at.parentElement) {
        const { rgb, alpha } = channels(getComputedStyle(at).backgroundColor);
        if (alpha > 0.99) return rgb;
      }
      return [255, 255, 255];
    };
    const faint: string[] = [];
    for (const element of document.querySelectorAll('body *')) {
      const own = [...element.childNodes].filter(
        (node) => node.nodeType === 3 && node.textContent!.trim() !== '',
      );
      if (own.length === 0 || element.getClientRects().length === 0) continue;
      const style = getComputedStyle(element);
      const isDrawn = element instanceof SVGElement;
      const front = luminance(channels(isDrawn ? style.fill : style.color).rgb);
      const back = luminance(ground(element));
      const contrast = (Math.max(front, back) + 0.05) / (Math.min(front, back) + 0.05);
      if (contrast < 4.5) faint.push(`${own[0]!.textContent!.trim()} (${contrast.toFixed(2)})`);
    }
    return faint;
  });
}

/** What a screen reader would stumble over: pictures, links and regions without a name, headings that skip a level, dead links. */
export function stumblingBlocks(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const blocks: string[] = [];
    const nameOf = (element: Element) => {
      const by = element.getAttribute('aria-labelledby');
      if (by) return document.getElementById(by)?.textContent?.trim() ?? '';
      return element.getAttribute('aria-label') ?? element.textContent?.trim() ?? '';
    };
    for (const element of document.querySelectorAll(
      '[role=img], [role=group], [role=region], a, section, nav, summary',
    ))
      if (nameOf(element) === '') blocks.push(`no name: ${element.outerHTML.slice(0, 80)}`);
    for (const svg of document.querySelectorAll('svg'))
      if (!svg.closest('[role=img], [role=group], [aria-hidden=true]'))
        blocks.push('a drawing without a role');
    let level = 0;
    for (const heading of document.querySelectorAll('h1, h2, h3, h4')) {
      const own = Number(heading.tagName[1]);
      if (own > level + 1) blocks.push(`heading skips from ${level} to ${own}: ${heading.textContent}`);
      level = own;
    }
    for (const link of document.querySelectorAll('a[href^="#"]'))
      if (!document.getElementById(link.getAttribute('href')!.slice(1)))
        blocks.push(`dead link: ${link.getAttribute('href')}`);
    const ids = [...document.querySelectorAll('[id]')].map(({ id }) => id);
    if (new Set(ids).size < ids.length) blocks.push('an id twice');
    for (const landmark of ['header', 'main', 'footer'])
      if (document.querySelectorAll(`body > ${landmark}`).length !== 1) blocks.push(`not one ${landmark}`);
    if (document.querySelectorAll('h1').length !== 1) blocks.push('not one h1');
    if (document.documentElement.lang === '') blocks.push('no language');
    for (const table of document.querySelectorAll('table'))
      if (!table.caption || !table.querySelector('th[scope=col]'))
        blocks.push('a table without caption or heads');
    return blocks;
  });
}

/** What the rules of axe-core find wrong with a page, a rule and a place each. @source axe-core, a published checker of WCAG */
export async function brokenAccessRules(page: Page): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in window)))
    await page.addScriptTag({ path: createRequire(import.meta.url).resolve('axe-core/axe.min.js') });
  const { violations, passed } = await page.evaluate(async () => {
    const { axe } = window as unknown as {
      axe: {
        run(): Promise<{ passes: unknown[]; violations: { id: string; nodes: { html: string }[] }[] }>;
      };
    };
    const found = await axe.run();
    return {
      passed: found.passes.length,
      violations: found.violations.flatMap(({ id, nodes }) =>
        nodes.map(({ html }) => `${id}: ${html.slice(0, 90)}`),
      ),
    };
  });
  return passed > 20 ? violations : ['hardly any rule was tried', ...violations];
}

/** Shows a page in a theme and a width. @returns what there keeps somebody from reading it */
export async function barriersIn(
  page: Page,
  colorScheme: 'light' | 'dark',
  width: number,
): Promise<readonly string[]> {
  await page.emulateMedia({ colorScheme });
  await page.setViewportSize({ width, height: 900 });
  const across = await page.evaluate(() => document.documentElement.scrollWidth);
  return [
    ...(await faintTexts(page)),
    ...(await brokenAccessRules(page)),
    ...(across > width ? [`${across} pixels across`] : []),
  ];
}
