/// <reference lib="dom" />
/** What the page lets one hear, rendered by the browser and heard by an estimator that knows no horn. */
import { readFileSync } from 'node:fs';
import { PitchDetector } from 'pitchy';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { closingCurve, examine, passageOf } from '../../core/index.ts';
import { closeBrowser, describeInBrowser, openPage } from './browser.ts';

const PAGE = readFileSync(new URL('../../dist/bellhand.html', import.meta.url), 'utf8');
const RATE = 44_100;
const WINDOW = 8192;

afterAll(closeBrowser);

let visit: Awaited<ReturnType<typeof openPage>>;

/** Plays what a button plays, with the slider where it is set, for so long. */
async function heard(
  button: '#hold' | '#let-close',
  closing: string,
  seconds: number,
): Promise<Float32Array> {
  const { page } = visit;
  await page.evaluate((length) => {
    class Recorded extends OfflineAudioContext {
      constructor() {
        super(1, length, 44_100);
        Object.assign(window, { recorded: this });
      }
    }
    Object.assign(Recorded.prototype, { resume: async () => {}, close: async () => {} });
    Object.assign(window, { AudioContext: Recorded });
  }, seconds * RATE);
  await page.locator('input[type=range]').fill(closing);
  await page.locator(button).click();
  const samples = await page.evaluate(async () => {
    const { recorded } = window as unknown as { recorded: OfflineAudioContext };
    return Array.from((await recorded.startRendering()).getChannelData(0));
  });
  // A tone that is held is let go again; the other ends by itself.
  if (button === '#hold') await page.locator(button).click();
  return Float32Array.from(samples);
}

/** A browser renders each tone by itself, on a busy machine slowly. */
const SLOW = { timeout: 120_000 };

describeInBrowser('the sound of the page', () => {
  beforeAll(async () => {
    visit = await openPage(PAGE, { locale: 'en-GB' });
  });
  afterAll(() => visit.close());

  it('of a held tone is what the curve says, and brighter sealed than open', SLOW, async () => {
    const [open, sealed] = [await heard('#hold', '0', 1), await heard('#hold', '100', 1)];
    for (const samples of [open, sealed]) expectSafe(samples);
    const [openHz, sealedHz] = [pitchAt(open, 0.55), pitchAt(sealed, 0.55)];
    const curve = curveShown();
    expect(centsBetween(openHz, curve[0]!)).toBeLessThan(5);
    expect(centsBetween(sealedHz, curve[curve.length - 1]!)).toBeLessThan(5);
    expect(centroidAt(sealed, 0.55, sealedHz)).toBeGreaterThan(centroidAt(open, 0.55, openHz));
  });

  it(
    'of the closing hand falls from the open tone to the sealed one, turns thin, and ends',
    SLOW,
    async () => {
      const samples = await heard('#let-close', '0', 4);
      expectSafe(samples);
      const curve = curveShown();
      const [open, sealed] = [pitchAt(samples, 0.6), pitchAt(samples, 2.8)];
      expect(centsBetween(open, curve[0]!)).toBeLessThan(5);
      expect(centsBetween(sealed, curve[curve.length - 1]!)).toBeLessThan(5);
      // On its way it never rises.
      const way = [1, 1.25, 1.5, 1.75, 2].map((seconds) => pitchAt(samples, seconds));
      for (let i = 1; i < way.length; i++) expect(way[i]!).toBeLessThan(way[i - 1]! * 1.0006);
      expect(centroidAt(samples, 2.8, sealed)).toBeGreaterThan(centroidAt(samples, 0.6, open));
      // The hand's 3.5 seconds are over: silence, reached softly.
      expect(loudest(samples.subarray(3.6 * RATE))).toBe(0);
      expect(loudest(samples.subarray(3.49 * RATE, 3.5 * RATE))).toBeLessThan(0.03);
    },
  );
});

/** Safe for ears: a soft start, and a peak of no more than 12 decibels below full scale. */
function expectSafe(samples: Float32Array): void {
  expect(loudest(samples)).toBeLessThanOrEqual(10 ** (-12 / 20) + 1e-3);
  expect(loudest(samples)).toBeGreaterThan(0.02);
  expect(loudest(samples.subarray(0, 10))).toBeLessThan(0.01);
}

function loudest(samples: Float32Array): number {
  return samples.reduce((most, each) => Math.max(most, Math.abs(each)), 0);
}

/** In hertz, from open to sealed: what the core's curve says of the note that the page shows first. */
function curveShown(): readonly number[] {
  const { tube, harmonic } = examine(passageOf('C5+/4')).notes[0]!.fingering!;
  return closingCurve(tube, { harmonics: [harmonic] }).harmonics[0]!.frequenciesHz;
}

function centsBetween(one: number, other: number): number {
  return Math.abs(1200 * Math.log2(one / other));
}

function around(samples: Float32Array, seconds: number): Float32Array {
  const start = Math.round(seconds * RATE - WINDOW / 2);
  return samples.slice(start, start + WINDOW);
}

function pitchAt(samples: Float32Array, seconds: number): number {
  return PitchDetector.forFloat32Array(WINDOW).findPitch(around(samples, seconds), RATE)[0];
}

/** The amplitude-weighted centre of the partials, each measured by its own Fourier sum. */
function centroidAt(samples: Float32Array, seconds: number, hz: number): number {
  const piece = around(samples, seconds);
  let sum = 0;
  let weighted = 0;
  for (let k = 1; k * hz < 10_000; k++) {
    let re = 0;
    let im = 0;
    piece.forEach((sample, i) => {
      const window = 1 - Math.cos((2 * Math.PI * i) / WINDOW);
      const angle = (2 * Math.PI * k * hz * i) / RATE;
      re += window * sample * Math.cos(angle);
      im += window * sample * Math.sin(angle);
    });
    const amplitude = Math.hypot(re, im);
    sum += amplitude;
    weighted += amplitude * k * hz;
  }
  return weighted / sum;
}
