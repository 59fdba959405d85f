/** Études from the panel, in the real editor: composed by the plugin's script, opened as a score of their own. */
import { existsSync } from 'node:fs';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { parseKey } from '../../core/etude/key.ts';
import { ETUDE_KINDS } from '../../core/etude/kinds.ts';
import { composeLesson } from '../../core/etude/lesson.ts';
import { HORNS } from '../../core/horn/horns.ts';
import { MARK_PREFIX } from '../../core/marks/annotation.ts';
import { DEFAULT_SETTINGS } from '../../core/part/settings.ts';
import { parsePitch } from '../../core/pitch/pitch.ts';
import { examine } from '../../core/rules/examine.ts';
import { readerOf } from '../../core/words/language.ts';
import { ETUDE_KEYS } from '../../plugin/editor/openEtude.ts';
import { documentText } from '../../plugin/etude/documentText.ts';
import { sheetText } from '../../plugin/etude/sheetText.ts';
import { readScore } from '../../plugin/musicxml/index.ts';
import { removeFolders, temporaryFolder } from './rig/folders.ts';
import { inEveryHost } from './rig/inEveryHost.ts';
import { hornScore, stopped } from './rig/music.ts';

afterAll(removeFolders);

const PART = hornScore([[stopped('C5', 4)]]);
const FORM = { kindIndex: 0, keyIndex: 4, level: 2, bars: 8, tempo: 0, range: '' };

/** Without what no file name can hold. */
const letters = (text: string) => text.replace(/[^\p{L}\d]/gu, '');

inEveryHost('études from the panel', (host) => {
  it.each(
    [...ETUDE_KINDS.map(({ kind }) => kind), 'lesson'].map((kind, kindIndex) => [kind, kindIndex] as const),
  )('%s: opens whole, marked, and holds nothing impossible', async (kind, kindIndex) => {
    const run = await host.run(PART, [
      { do: 'etude', form: { ...FORM, kindIndex } },
      { do: 'save', as: 'etude.musicxml' },
    ]);
    const { sentence, etudePath, findings, name } = run.results[0] as {
      name: string;
      sentence: string;
      etudePath: string;
      findings: { severity: string }[];
    };
    expect(findings.filter(({ severity }) => severity === 'impossible')).toEqual([]);
    let text = await run.text('etude.musicxml');
    if (host.version === '3.2.3') {
      expect(sentence).toMatch(/^A new score is open: .+\.$/);
      expect(etudePath).toBe('');
      // Its tab says what it is, and its file is gone.
      expect(letters(`A new score is open: ${name}.`)).toBe(letters(sentence));
      const left = await readdir(run.temporary);
      expect(left.filter((file) => file.endsWith('.musicxml'))).toEqual([]);
    } else {
      // There it is a file for the user to open, and the score that was open stays.
      expect(sentence).toMatch(/^The étude “.+” is written\. Open this file in the editor: \/.+\.musicxml$/);
      expect(sentence.endsWith(etudePath)).toBe(true);
      expect(readScore(text).horns[0]!.passage.notes).toHaveLength(1);
      const opened = await host.run(etudePath, [{ do: 'findings' }, { do: 'save', as: 'etude.musicxml' }]);
      const { findings } = opened.results[0] as { findings: { severity: string }[] };
      expect(findings.filter(({ severity }) => severity === 'impossible')).toEqual([]);
      text = await opened.text('etude.musicxml');
      if (kind === 'lesson') {
        // It is the file that the command line writes, but for its seal.
        const file = await readFile(etudePath, 'utf8');
        const seed = Number(/seed (\d+),/.exec(file)![1]);
        const key = parseKey(ETUDE_KEYS[FORM.keyIndex]!);
        const player = DEFAULT_SETTINGS;
        const made = composeLesson({ level: 2, key, low: null, high: null, seed, player });
        if (!made.ok) throw new Error(made.reason);
        expect(file).toBe(sheetText(made.sheet, player, 'marked', documentText));
      }
    }
    const [horn] = readScore(text).horns;
    expect(horn!.passage.notes.length).toBeGreaterThan(8);
    expect(text.split(MARK_PREFIX).length).toBeGreaterThan(kind === 'bend' || kind === 'seal' ? 3 : 8);
    const { notes } = examine(horn!.passage);
    expect(notes.filter(({ verdict }) => verdict === 'impossible')).toEqual([]);
  });

  it.each([
    ['a range that is none', { ...FORM, range: 'high' }, /“high” is no range/],
    ['a range of one note', { ...FORM, range: 'C5-C5' }, /“C5-C5” is no range/],
    ['a range too small', { ...FORM, range: 'C5-D5' }, /^Nothing was changed: /],
    ['a tempo nobody plays', { ...FORM, tempo: 12 }, /^Nothing was changed: /],
  ])('%s: one sentence, and the score stays open', async (_, form, sentence) => {
    const run = await host.run(PART, [
      { do: 'etude', form },
      { do: 'save', as: 'same.musicxml' },
    ]);
    expect((run.results[0] as { sentence: string }).sentence).toMatch(sentence);
    expect(readScore(await readFile(run.path('same.musicxml'), 'utf8')).horns[0]!.passage.notes).toHaveLength(
      1,
    );
  });
});

inEveryHost('a lesson on paper', (host) => {
  it.each([
    ['of the first level', 1, 'double', null, 'en'],
    ['with low notes, in the bass clef', 2, 'double', 'C3', 'en'],
    ['with much to say at its head', 3, 'natural-eb', null, 'fr'],
  ] as const)('%s is one page', async (_, level, id, low, language) => {
    const player = { ...DEFAULT_SETTINGS, horn: HORNS.find((horn) => horn.id === id)! };
    const made = composeLesson({
      level,
      key: null,
      low: low && parsePitch(low),
      high: low && parsePitch('C5'),
      seed: 4,
      player,
      reader: readerOf(language),
    });
    if (!made.ok) throw new Error(made.reason);
    const score = join(await temporaryFolder('lesson'), 'lesson.musicxml');
    await writeFile(score, sheetText(made.sheet, player, 'marked', documentText));
    const page = await host.pictureOf(score, 30);
    expect(existsSync(page)).toBe(true);
    expect(page).toMatch(/-1\.png$/);
    expect(existsSync(page.replace(/1\.png$/, '2.png'))).toBe(false);
  });
});
