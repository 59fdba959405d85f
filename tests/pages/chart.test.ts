/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
/** The chart: the published fingerings, each on its card, on one sheet of paper; and the same as a score. */
import { afterAll, describe, expect, it } from 'vitest';
import { HORNS } from '../../core/horn/horns.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { parsePitch, pitchCents, printPitch } from '../../core/pitch/pitch.ts';
import { readerOf } from '../../core/words/language.ts';
import { clearMarks, readScore } from '../../plugin/musicxml/index.ts';
import { chartNotes, registersOf } from '../../plugin/pages/chartNotes.ts';
import { chartPage } from '../../plugin/pages/chartPage.ts';
import { bellhandHere, folderWith, textOf } from '../batch/bellhand.ts';
import { CAN_CHECK, schemaFaults } from '../musicxml/standards.ts';
import { barriersIn, closeBrowser, describeInBrowser, stumblingBlocks, withPage } from './browser.ts';
import { PAPERS, sheetsOf } from './paper.ts';

/** C. Smalley, "Starting Stopping" (CC0 method sheet): F-horn stopped fingerings, 18 rows. */
const PUBLISHED =
  'F5 0, E5 2, Eb5 0, D5 2, Db5 0, C5 2, B4 1, Bb4 12, A4 23, Ab4 0, G4 2, F#4 1, F4 0, E4 2, Eb4 1, D4 12, Db4 0, C4 2'
    .split(', ')
    .map((row) => row.split(' ') as [note: string, valves: string]);

afterAll(closeBrowser);

function player(hornId: string) {
  return { ...DEFAULT_SETTINGS, horn: HORNS.find(({ id }) => id === hornId)! };
}

const double = await chartPage(DEFAULT_SETTINGS);
/** A4 across without its margins, in pixels. */
const PAPER = { viewport: { width: Math.round((279 * 96) / 25.4), height: 733 } };

describe('the notes of a chart', () => {
  it('rise by semitones and hold nothing impossible', () => {
    for (const { id, natural } of HORNS) {
      const notes = chartNotes(player(id)).map(({ examined }) => examined);
      expect(notes.length, id).toBeGreaterThan(15);
      const cents = notes.map(({ note }) => pitchCents(note.written));
      expect(cents).toEqual(cents.slice().sort((a, b) => a - b));
      expect(new Set(cents).size).toBe(cents.length);
      expect(notes.every(({ verdict, fingering }) => verdict !== 'impossible' && fingering !== null)).toBe(
        true,
      );
      expect(notes.some(({ reading }) => reading.state === 'open')).toBe(natural);
    }
  });

  it('leave out no note of the double horn between the lowest and the highest', () => {
    const cents = chartNotes(DEFAULT_SETTINGS).map(({ examined }) => pitchCents(examined.note.written));
    expect(cents[cents.length - 1]! - cents[0]!).toBe(100 * (cents.length - 1));
  });

  it('show a natural horn with its open notes', () => {
    // Berlioz, Grand traité (1844), "Le cor", and Widor 1923, p. 34: open C4 E4 G4 B♭4 C5 D5 E5 G5.
    const open = chartNotes(player('natural-f'))
      .filter(({ examined }) => examined.reading.state === 'open')
      .map(({ examined }) => printPitch(examined.note.written));
    for (const name of ['G3', 'C4', 'E4', 'G4', 'B♭4', 'C5', 'D5', 'E5', 'G5']) expect(open).toContain(name);
  });

  it('are large where they are sure, in the treble clef', () => {
    const { low, main, high } = registersOf(chartNotes(DEFAULT_SETTINGS));
    const names = main.map(({ examined }) => printPitch(examined.note.written));
    expect([names[0], names[names.length - 1]]).toEqual(['A3', 'A♭5']);
    expect(main.every(({ examined }) => examined.verdict === 'sure')).toBe(true);
    expect([...low, ...high].every(({ examined }) => examined.verdict === 'risky')).toBe(true);
  });
});

describeInBrowser('the chart page', () => {
  it('has a card for every note, with the published fingering', async () => {
    await withPage(double, {}, async ({ page, complaints }) => {
      const cards = await page.locator('.card').evaluateAll((all) =>
        all.map((card) => ({
          drawn: card.querySelector('svg')!.getAttribute('aria-label'),
          name: card.querySelector('.name span')!.textContent,
          fingering: card.querySelector('.fingered')!.textContent!.trim(),
          natural: card.querySelector('.name .quiet')!.textContent,
        })),
      );
      expect(cards).toHaveLength(chartNotes(DEFAULT_SETTINGS).length);
      for (const { drawn, name, natural } of cards) {
        expect(drawn).toBe(`${name}, stopped`);
        expect(natural).toMatch(/^\([A-G][♯♭]?[↑↓]?\)$/);
      }
      expect(PUBLISHED).toHaveLength(18);
      for (const [note, valves] of PUBLISHED) {
        const cents = pitchCents(parsePitch(note));
        const card = cards.find(({ name }) => pitchCents(parsePitch(name!)) === cents)!;
        expect(card.fingering, note).toMatch(new RegExp(` ${valves}$`));
      }
      expect(complaints).toEqual([]);
    });
  });

  // Of the natural horns, the shortest, the usual and the longest.
  const shown = HORNS.filter(({ id, natural }) => !natural || /-(c-alto|f|bb-basso)$/.test(id));
  it.each(shown.map(({ id }) => [id]))(
    'is one sheet across with its back for %s, on either paper',
    async (id) => {
      await withPage(await chartPage(player(id)), {}, async ({ page }) => {
        for (const paper of PAPERS)
          expect(await sheetsOf(page, paper, true)).toEqual([paper.name, paper.name]);
      });
    },
  );

  it.each([
    ['double', 'de'],
    ['double', 'fr'],
    ['single-bflat', 'en'],
    ['double-stop-valve', 'de'],
    ['natural-f', 'fr'],
  ] as const)('can be read from a metre, and nothing is cut: %s, %s', async (id, language) => {
    await withPage(await chartPage(player(id), readerOf(language)), PAPER, async ({ page }) => {
      await page.emulateMedia({ media: 'print' });
      const cards = await page.locator('.card').evaluateAll((all) =>
        all.map((card) => {
          const text = card.querySelector('.fingered')!;
          return {
            isLarge: card.closest('.large') !== null,
            room: card.clientWidth - Math.max(...[...card.querySelectorAll('p')].map((p) => p.scrollWidth)),
            letters: Number.parseFloat(getComputedStyle(text).fontSize),
          };
        }),
      );
      expect(cards.filter(({ room }) => room < 0)).toEqual([]);
      for (const { isLarge, letters } of cards) {
        // From memory: letters are read at 200 times their height. Capitals of 0.65 of the size, 96 pixels an inch.
        const capitalMm = (0.65 * letters * 25.4) / 96;
        if (isLarge) expect(capitalMm).toBeGreaterThan(5);
      }
      for (const side of ['.front', '.back', '.cards.large']) {
        const over = await page.locator(side).evaluate((box) => box.scrollHeight - box.clientHeight);
        expect(over, side).toBeLessThanOrEqual(1);
      }
      // A table filled from edge to edge leaves little of the back empty.
      const filled = await page.locator('.tables').evaluate((box) => {
        const ends = [...box.children].map((table) => table.getBoundingClientRect().bottom);
        const { top, height } = box.getBoundingClientRect();
        return (Math.max(...ends) - top) / height;
      });
      expect(filled).toBeGreaterThan(0.75);
    });
  });

  it.each([
    ['double', /T is the B♭ side/, /stopping valve/],
    ['double-stop-valve', /On the B♭ side the stopping valve goes down with the hand/, /nothing/],
    ['single-f', /↑\s↓: nearly a quarter tone/, /T is the|stopping valve/],
    ['natural-f', /¼ ½ ¾ so far closed; \+ stopped/, /valves|T is the/],
  ])('explains what %s needs, and nothing else', async (id, wanted, unwanted) => {
    const page = await chartPage(player(id));
    const legend = /<p class="legend">([^<]*)/.exec(page)![1]!;
    expect(legend).toMatch(wanted);
    expect(legend).not.toMatch(unwanted);
  });

  it('tells cents only where they are heard', () => {
    const small = [...double.matchAll(/<small>([+−]\d+)<\/small>/g)].map(([, cents]) => cents!);
    expect(small.length).toBeGreaterThan(10);
    for (const cents of small) expect(Number(cents.slice(1))).toBeGreaterThanOrEqual(15);
  });

  it('is legible in light and in dark, in a wide window and on a telephone', async () => {
    await withPage(double, {}, async ({ page, complaints }) => {
      for (const { colorScheme, width } of [
        { colorScheme: 'light', width: 1280 },
        { colorScheme: 'dark', width: 1280 },
        { colorScheme: 'dark', width: 360 },
      ] as const) {
        const where = `${colorScheme}, ${width} wide`;
        expect(await barriersIn(page, colorScheme, width), where).toEqual([]);
        expect(await stumblingBlocks(page), where).toEqual([]);
      }
      expect(complaints).toEqual([]);
    });
  });
});

describe('bellhand chart', () => {
  it('writes a page, or a score that check agrees with and clear empties', async () => {
    const folder = folderWith();
    expect((await bellhandHere(folder, ['chart'])).stdout).toBe(
      'chart-double.html: Stopped notes: double horn in F and B♭\n',
    );
    expect(textOf(folder, 'chart-double.html')).toMatch(/^<!DOCTYPE html>/);
    const run = await bellhandHere(folder, ['chart', '--format', 'musicxml', '--horn', 'single-f']);
    expect(run).toMatchObject({ exit: 0, stderr: '' });
    const text = textOf(folder, 'chart-single-f.musicxml');
    const checked = await bellhandHere(folder, [
      'check',
      '--horn',
      'single-f',
      '--bass-clef',
      'new',
      '--format',
      'json',
      'chart-single-f.musicxml',
    ]);
    expect(checked.exit).toBe(0);
    const [part] = JSON.parse(checked.stdout).parts;
    const notes = chartNotes(player('single-f'));
    expect(part.notes).toHaveLength(notes.length);
    notes.forEach(({ examined }, i) => {
      expect(part.notes[i].valves).toBe(examined.fingering!.tube.combination.valves);
      expect(printPitch(parsePitch(part.notes[i].written))).toBe(printPitch(examined.note.written));
    });
    expect(readScore(text).ownSpans.length).toBe(
      notes.length + part.notes.filter(({ verdict }: { verdict: string }) => verdict !== 'sure').length,
    );
    expect(readScore(clearMarks(text)).ownSpans).toEqual([]);
    // Low notes stand in the bass clef; the other ways are cue notes in bars of their own, and nothing stands below.
    expect(text.match(/<sign>[GF]<\/sign>/g)).toEqual(['<sign>F</sign>', '<sign>G</sign>']);
    expect(text.match(/<cue\/>/g)!.length).toBeGreaterThan(20);
    expect(text).not.toContain('placement="below"');
  });

  it.skipIf(!CAN_CHECK)('writes scores the schema accepts', async () => {
    const folder = folderWith();
    const texts: string[] = [];
    for (const { id } of HORNS.slice(0, 8)) {
      await bellhandHere(folder, ['chart', '--format', 'musicxml', '--horn', id]);
      texts.push(textOf(folder, `chart-${id}.musicxml`));
    }
    expect(schemaFaults(texts)).toEqual(texts.map(() => []));
  });

  it.each([[['--horn', 'alphorn']], [['--format', 'pdf']], [['-o', 'none/here.html']]])(
    'refuses %j in one line',
    async (args) => {
      const run = await bellhandHere(folderWith(), ['chart', ...args]);
      expect(run.exit).toBe(2);
      expect(run.stderr).toMatch(/^bellhand: [^\n]+\n$/);
    },
  );
});

describe('bellhand report', () => {
  it('writes the page beside its file, and says so', async () => {
    const folder = folderWith({
      'part.musicxml': textOf(process.cwd(), 'plugin/batch/demo/low-water.musicxml'),
    });
    const run = await bellhandHere(folder, ['report', 'part.musicxml']);
    expect(run).toEqual({ exit: 0, stdout: 'part.report.html: ready to open in a browser\n', stderr: '' });
    expect(textOf(folder, 'part.report.html')).toContain(
      '<title>Stopped notes in Low Water at the Lock, Horn in F</title>',
    );
  });

  it.each([[['none.musicxml']], [['.']], [['broken.musicxml']]])(
    'refuses %j in one line and writes nothing',
    async (args) => {
      const folder = folderWith({ 'broken.musicxml': '<score-partwise' });
      const run = await bellhandHere(folder, ['report', ...args]);
      expect(run.exit).toBe(2);
      expect(run.stdout).toBe('');
      expect(run.stderr).toMatch(/^bellhand: [^\n]+\n$/);
    },
  );
});
