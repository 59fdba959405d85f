/// <reference lib="dom" />
/** The screen that music is laid out for. Printing changes nothing here: a page that prints is no screen. */
import { signal } from '@preact/signals';

/** As narrow as `PAGE_STYLE` takes a telephone to be. */
const NARROW = matchMedia('screen and (max-width: 36rem)');

export const isNarrow = signal(NARROW.matches);
/** In the reader's own size of letters, so that music grows with them. */
export const remsAcross = signal(measured());

NARROW.addEventListener('change', follow);
addEventListener('resize', follow);

function follow(): void {
  if (matchMedia('print').matches) return;
  isNarrow.value = NARROW.matches;
  remsAcross.value = measured();
}

function measured(): number {
  const { documentElement: page } = document;
  return page.clientWidth / Number.parseFloat(getComputedStyle(page).fontSize);
}
