/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
/** The chart for composers: where published tables and the trade have the hand take a note, and that a part may be written so. */
import { afterAll, describe, expect, it, test } from 'vitest';
import { HORNS } from '../../core/horn/horns.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { parsePitch, pitchCents, printPitch } from '../../core/pitch/pitch.ts';
import { noteRanges } from '../../core/words/chart.ts';
import { ENGLISH_READER, LANGUAGES, readerOf } from '../../core/words/language.ts';
import { handSlides } from '../../plugin/pages/handSlides.ts';
import { slidePage } from '../../plugin/pages/slidePage.ts';
import { bellhandHere, folderWith, textOf } from '../batch/bellhand.ts';
import { CAN_CHECK, schemaFaults } from '../musicxml/standards.ts';
import { barriersIn, closeBrowser, describeInBrowser, withPage } from './browser.ts';
import { PAPERS, sheetsOf } from './paper.ts';

/** A4 without its margins, in pixels. */
const SHEET = { width: Math.round((188 * 96) / 25.4), height: Math.round((281 * 96) / 25.4) };

afterAll(closeBrowser);

function player(hornId: string) {
  return { ...DEFAULT_SETTINGS, horn: HORNS.find(({ id }) => id === hornId)! };
}

const rowsFound = new Map<string, readonly string[]>();

/** Every slide as `E4 C#4 0`, by cents, with its valves. */
function found(hornId: string): readonly string[] {
  const rows =
    rowsFound.get(hornId) ??
    handSlides(player(hornId)).slides.map(({ open, stopped, fingering }) =>
      [pitchCents(open.note.written), pitchCents(stopped.note.written), fingering.printed].join(' '),
    );
  rowsFound.set(hornId, rows);
  return rows;
}

function row(text: string): string {
  const [open, stopped, valves] = text.split(' ') as [string, string, string];
  return [pitchCents(parsePitch(open)), pitchCents(parsePitch(stopped)), valves].join(' ');
}

// C. Smalley, "Starting Stopping" (method sheet, CC0): full-stop bends of the open F horn. Those of E5, D5 and B♭4 and
// the four below; C5 to a low C♭5 is taken on the first valve here, as in the sheet's own hand positions.
const BENDS = ['E5 Eb5 0', 'D5 Db5 0', 'Bb4 Ab4 0', 'G4 F4 0', 'E4 Db4 0', 'C4 Ab3 0'];
// The same sheet: open and stopped on one fingering, both sides.
const POSITIONS = ['G4 F4 0', 'Gb4 E4 2', 'F4 Eb4 1', 'E4 D4 12', 'E4 C#4 0', 'Eb4 C4 2', 'F5 E5 T0'];
const POSITIONS_ON_F = ['C5 B4 1', 'B4 Bb4 12', 'Bb4 A4 23'];

describe('slides of the double horn', () => {
  test.each([...BENDS, ...POSITIONS, ...POSITIONS_ON_F])('%s, as Smalley has it', (text) => {
    expect(found('double')).toContain(row(text));
  });

  // Where the F side does as well, the chart keeps to it; a single B♭ horn has no choice.
  test.each(['F5 E5 0', 'E5 Eb5 2', 'Eb5 D5 1', 'D5 Db5 12', 'Db5 C5 23'])(
    '%s on a B♭ horn, as Smalley has it',
    (text) => {
      expect(found('single-bflat')).toContain(row(text));
    },
  );

  test('none lower: from below F♯3 nothing is brought down (Smalley)', () => {
    const { slides, none } = handSlides(player('single-f'));
    expect(none['too-low'].map(printPitch)).toContain('F3');
    // On the open F horn: C4, the 4th harmonic, is the lowest.
    const onOpen = slides.filter(({ fingering }) => fingering.printed === '0');
    expect(Math.min(...onOpen.map(({ open }) => pitchCents(open.note.written)))).toBe(6000);
  });

  // Common practice, no source: from the 16th harmonic of the F side, written C6, nothing changes.
  test('C6 does not change, and high notes fall to no other note', () => {
    const { none } = handSlides(player('single-f'));
    expect(none['too-high'].map(printPitch)).toEqual(['C6']);
  });

  // Widor, Initiation musicale (1923), p. 34: notes of the natural horn made by the hand, below the open C4, E4 and G4.
  test('a natural horn reaches what is printed between its harmonics', () => {
    const names = handSlides(player('natural-f')).slides.map(
      ({ open, stopped }) => `${printPitch(open.note.written)} ${printPitch(stopped.note.written)}`,
    );
    for (const pair of ['C4 B3', 'C4 B♭3', 'C4 A3', 'C4 A♭3', 'E4 E♭4', 'E4 D4', 'G4 F♯4', 'G4 F4', 'C5 B4'])
      expect(names).toContain(pair);
  });
});

describe.each(HORNS.map(({ id }) => [id]))('slides of %s', (id) => {
  test('go down, by what the rules call possible, and every open note has a slide or a reason', () => {
    const { slides, none } = handSlides(player(id));
    expect(slides.length).toBeGreaterThan(5);
    for (const { open, stopped, fingering, examination } of slides) {
      expect(pitchCents(stopped.note.written)).toBeLessThan(pitchCents(open.note.written));
      expect(open.fingering!.tube).toBe(fingering.tube);
      expect(examination.findings.filter(({ severity }) => severity === 'impossible')).toEqual([]);
    }
    const told = [...slides.map(({ open }) => open.note.written), ...Object.values(none).flat()];
    const cents = new Set(told.map(pitchCents));
    for (let each = 7000; each <= 8400 && !player(id).horn.natural; each += 100)
      expect(cents).toContain(each);
  });
});

test('notes a semitone apart are told as a range', () => {
  const notes = ['C4', 'Db4', 'D4', 'F4', 'G4', 'Ab4'].map(parsePitch);
  expect(noteRanges(notes, ENGLISH_READER)).toBe('C4–D4, F4, G4, A♭4');
});

describeInBrowser('the page of slides', () => {
  // The longest of them, a usual one, and the shortest.
  it.each(['double-ascending', 'double', 'double-stop-valve', 'natural-f'])(
    'is one sheet for %s in every language, on either paper, filled to its foot',
    async (id) => {
      for (const language of LANGUAGES) {
        const text = await slidePage(player(id), readerOf(language));
        await withPage(text, { viewport: SHEET }, async ({ page }) => {
          for (const paper of PAPERS) expect(await sheetsOf(page, paper), language).toEqual([paper.name]);
          await page.emulateMedia({ media: 'print' });
          const empty = await page.locator('section svg.music').evaluateAll((all) => {
            const shown = all.map((svg) => svg.getBoundingClientRect()).filter(({ height }) => height > 0);
            return Math.max(...shown.slice(1).map(({ top }, i) => top - shown[i]!.bottom)) / innerHeight;
          });
          expect(empty).toBeLessThan(0.12);
        });
      }
    },
    300_000,
  );

  it('is engraved anew for a telephone', async () => {
    const text = await slidePage(DEFAULT_SETTINGS);
    await withPage(text, { viewport: { width: 360, height: 800 } }, async ({ page }) => {
      const staves = await page
        .locator('section svg.music')
        .evaluateAll((all) =>
          all
            .filter((svg) => svg.getClientRects().length > 0)
            .map((svg) => svg.getBoundingClientRect().width / (svg as SVGSVGElement).viewBox.baseVal.width),
        );
      expect(staves.length).toBeGreaterThan(20);
      // A staff is 720 units high.
      expect(720 * Math.min(...staves)).toBeGreaterThan(20);
    });
  });

  it('can be read by all, in light and in dark, in a wide window and on a telephone', async () => {
    await withPage(await slidePage(DEFAULT_SETTINGS), {}, async ({ page, complaints }) => {
      for (const { colorScheme, width } of [
        { colorScheme: 'light', width: 1280 },
        { colorScheme: 'dark', width: 360 },
      ] as const) {
        const where = `${colorScheme}, ${width} wide`;
        expect(await barriersIn(page, colorScheme, width), where).toEqual([]);
        const label = await page
          .locator('svg[aria-label*="E4 to C♯4 (open F horn)"]:visible')
          .getAttribute('aria-label');
        expect(label, where).toContain('E4 to D4 (F horn 1+2)');
      }
      expect(complaints).toEqual([]);
    });
  });
});

describe('bellhand chart --of bends', () => {
  it.each(['double', 'single-f', 'single-bflat', 'natural-f'])(
    'writes a score that check finds playable: %s',
    async (id) => {
      const folder = folderWith();
      const run = await bellhandHere(folder, [
        'chart',
        '--of',
        'bends',
        '--format',
        'musicxml',
        '--horn',
        id,
      ]);
      expect(run).toMatchObject({ exit: 0, stderr: '' });
      const file = `chart-bends-${id}.musicxml`;
      const checked = await bellhandHere(folder, [
        'check',
        '--bass-clef',
        'new',
        '--horn',
        id,
        '--format',
        'json',
        file,
      ]);
      expect(checked.exit).toBe(0);
      const { parts, findings } = JSON.parse(checked.stdout);
      const { slides } = handSlides(player(id));
      // Closing and opening; open notes are listed where they are not sure.
      const closed = parts[0].notes.filter(({ state }: { state: string }) => state !== 'open');
      expect(closed).toHaveLength(2 * slides.length);
      slides.forEach(({ fingering, isSure }, i) => {
        const closing = closed[i];
        const state = fingering.band === null || fingering.band === 'full' ? 'stopped' : 'half-stopped';
        expect([closing.state, closing.valves]).toEqual([state, fingering.tube.combination.valves]);
        // Nothing but what the chart marks as risky is found.
        if (isSure)
          expect(findings.filter(({ measure }: { measure: string }) => measure === `${i + 1}`)).toEqual([]);
      });
    },
  );

  it.skipIf(!CAN_CHECK)('writes scores the schema accepts', async () => {
    const folder = folderWith();
    await bellhandHere(folder, ['chart', '--of', 'bends', '--format', 'musicxml']);
    expect(schemaFaults([textOf(folder, 'chart-bends-double.musicxml')])).toEqual([[]]);
  });
});
