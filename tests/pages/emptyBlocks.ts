/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
/** Finds what looks unfinished on a page: boxes with nothing in them, and stretches of the window with nothing to see. */
import type { Page } from 'playwright-core';

/** Boxes lower than this are rules, gaps and buttons; a gap as high as five lines of text looks like something missing. */
const LOWEST_BOX = 80;
const HIGHEST_GAP = 120;

/**
 * Every visible box of more than 80 pixels without a letter, a line or a control in it, and every stretch of more than
 * 120 pixels from edge to edge of the page.
 */
export function emptyBlocks(page: Page): Promise<readonly string[]> {
  return page.evaluate(
    ([lowestBox, highestGap]) => {
      const inks: DOMRect[] = [];
      const isSeen = (element: Element) =>
        element.checkVisibility({ visibilityProperty: true, opacityProperty: true });
      const add = (rect: DOMRect) => {
        if (rect.width + rect.height > 1) inks.push(rect);
      };
      const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
      while (texts.nextNode()) {
        const text = texts.currentNode;
        if (text.textContent!.trim() === '' || !isSeen(text.parentElement!)) continue;
        const range = document.createRange();
        range.selectNodeContents(text);
        for (const rect of range.getClientRects()) add(rect);
      }
      const drawn = 'svg :is(path, use, line, circle, ellipse, polyline, polygon)';
      const controls = 'input, select, textarea, button, audio, img, canvas, progress';
      for (const element of document.querySelectorAll(`${drawn}, ${controls}`))
        if (isSeen(element)) add(element.getBoundingClientRect());

      const faults: string[] = [];
      for (const box of document.querySelectorAll('body *')) {
        if (box.closest('svg') !== null && box.tagName !== 'svg') continue;
        const { left, right, top, bottom, height } = box.getBoundingClientRect();
        if (height <= lowestBox || right - left < 1 || !isSeen(box)) continue;
        const holds = (ink: DOMRect) =>
          ink.left < right && ink.right > left && ink.top < bottom && ink.bottom > top;
        if (!inks.some(holds)) faults.push(`${Math.round(height)} pixels: ${box.outerHTML.slice(0, 90)}`);
      }
      let end = document.body.getBoundingClientRect().top;
      const bottom = document.body.getBoundingClientRect().bottom;
      for (const ink of inks.sort((a, b) => a.top - b.top)) {
        if (ink.top - end > highestGap)
          faults.push(`nothing from ${Math.round(end)} to ${Math.round(ink.top)}`);
        end = Math.max(end, ink.bottom);
      }
      if (bottom - end > highestGap) faults.push(`nothing below ${Math.round(end)}`);
      return faults;
    },
    [LOWEST_BOX, HIGHEST_GAP] as const,
  );
}

/** Everything that reaches over the right edge of the window. */
export function overflowing(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => [
    ...(document.documentElement.scrollWidth > innerWidth ? ['the page itself'] : []),
    ...[...document.querySelectorAll('body *')]
      .filter(
        (element) => !element.closest('.skip, thead, defs, .unseen') && element.getClientRects().length > 0,
      )
      .filter((element) => element.getBoundingClientRect().right > innerWidth + 1)
      .map((element) => element.outerHTML.slice(0, 90)),
  ]);
}
