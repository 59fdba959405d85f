/** A sheet in lines for a narrow screen: the same music, an exercise at the head of a line, and no line without a bar. */
import { describe, expect, it } from 'vitest';
import { composeLesson } from '../../core/etude/lesson.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { LANGUAGES, readerOf } from '../../core/words/language.ts';
import { narrowText } from '../../plugin/etude/narrowText.ts';
import { sheetText } from '../../plugin/etude/sheetText.ts';
import { treeText } from '../../plugin/etude/treeText.ts';
import { readScore } from '../../plugin/musicxml/index.ts';
import { engrave } from '../../plugin/pages/engrave.ts';

/** In tenths of a millimetre: what a telephone shows. */
const WIDTH = 800;

describe.each([1, 2, 3] as const)('a lesson of level %d on a narrow screen', (level) => {
  const player = DEFAULT_SETTINGS;
  const lessonIn = (language: (typeof LANGUAGES)[number]) => {
    const wish = { level, key: null, low: null, high: null, seed: 11, player };
    const made = composeLesson({ ...wish, reader: readerOf(language) });
    if (!made.ok) throw new Error(made.reason);
    return made.sheet;
  };

  it('is the same music in more lines', async () => {
    const sheet = lessonIn('en');
    const text = sheetText(sheet, player, 'marked', treeText);
    const { systems } = await engrave(narrowText(text), {
      width: WIDTH,
      keepsBreaks: true,
      fillsLines: true,
    });
    const bars = systems.map(({ content }) => content.split('class="measure"').length - 1);
    expect(Math.min(...bars)).toBeGreaterThan(0);
    expect(bars.reduce((sum, count) => sum + count)).toBe(sheet.etudes.flatMap((etude) => etude.bars).length);
    expect(Math.max(...systems.map(({ width }) => width))).toBe(10 * WIDTH);
    // The bars before each exercise fill lines of their own.
    const first = systems.flatMap(({ content }, i) => (content.includes('class="tempo"') ? [i] : []));
    expect(first.map((i) => bars.slice(0, i).reduce((sum, count) => sum + count, 0))).toEqual(
      sheet.etudes.map((_, i) => sheet.etudes.slice(0, i).flatMap((etude) => etude.bars).length),
    );
  });

  it.each(LANGUAGES)('says in %s what an exercise trains outside of its music alone', (language) => {
    const sheet = lessonIn(language);
    for (const copy of ['marked', 'plain'] as const) {
      const text = sheetText(sheet, player, copy, treeText);
      const narrow = narrowText(text);
      for (const [i, trained] of sheet.trains.entries()) {
        expect(text).toContain(trained);
        expect(narrow).not.toContain(trained);
        expect(narrow).toContain(sheet.etudes[i]!.tempoWords);
      }
      expect(readScore(narrow).horns[0]!.passage.notes).toEqual(readScore(text).horns[0]!.passage.notes);
    }
  });
});
