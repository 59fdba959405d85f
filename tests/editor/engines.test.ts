/**
 * The plugin in the script engines of Qt 5.15 and Qt 6, against a stand-in for the editor's interface as 3.6, 4.5 and 4.6
 * are known to have it. These versions themselves are not run here.
 */
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { editorScript } from '../../build/bundle.ts';
import { MARK_PREFIX } from '../../core/marks/annotation.ts';
import { resultOf } from '../../core/marks/result.ts';
import { examine } from '../../core/rules/examine.ts';
import { readScore } from '../../plugin/musicxml/read/readScore.ts';
import { FIXTURES } from './rig/fixtures.ts';
import { removeFolders } from './rig/folders.ts';
import { open, rest, scoreOf, stopped } from './rig/music.ts';
import { skipLoudly } from './rig/programs.ts';
import { ENGINES, type EngineStep, inEngine, trialsIn } from './rig/standIn.ts';
import { standInOf } from './rig/standInMusic.ts';

afterAll(removeFolders);

const VERSIONS = [
  ['3.6', 30600],
  ['4.5', 40500],
  ['4.6', 40600],
] as const;

const TRIALS = fileURLToPath(new URL('standin/trials.ts', import.meta.url));

const PANEL: EngineStep = { take: 'load', file: 'Bellhand.qml' };
const BARS = [
  [stopped('C5'), stopped('Eb4'), open('G4'), stopped('C3')],
  [stopped('D2', 2), rest(2)],
];
const PART = [{ bars: BARS }];

function fromFile(text: string): unknown {
  return JSON.parse(JSON.stringify(resultOf(readScore(text).horns.map(({ passage }) => examine(passage)))));
}

interface Text {
  text: string;
  tick: number;
  fontSize: number;
}
const ours = (texts: unknown) => (texts as Text[]).filter(({ text }) => text.startsWith(MARK_PREFIX));

for (const { name, program, install } of ENGINES) {
  if (!program) skipLoudly(`the plugin in the script engine of ${name}, which is not installed`, install);
}

const INSTALLED = ENGINES.filter(({ program }) => program !== null);

// At the same time, so that one run of an engine does it all.
describe.concurrent.each(INSTALLED)('in the engine of $name', ({ program }) => {
  const take = (steps: readonly EngineStep[]) => inEngine(program!, steps);

  describe.each(VERSIONS)('as version %s', (_, version) => {
    const opened: EngineStep = { take: 'open', version, music: standInOf(PART) };

    it('reads what the file door reads', async () => {
      const steps = FIXTURES.flatMap(([, parts]): EngineStep[] => [
        { take: 'open', version, music: standInOf(parts) },
        PANEL,
        { take: 'result' },
      ]);
      const { results } = await take(steps);
      FIXTURES.forEach(([title, parts], i) => {
        expect(results[3 * i + 2], title).toEqual(fromFile(scoreOf(parts)));
      });
    });

    it('annotates, repeats nothing, undoes, redoes and clears by the panel’s buttons', async () => {
      const { results, complaints } = await take([
        opened,
        { take: 'music' },
        PANEL,
        { take: 'press', name: 'annotate' },
        { take: 'texts' },
        { take: 'colours' },
        { take: 'press', name: 'annotate' },
        { take: 'history' },
        { take: 'cmd', name: 'undo' },
        { take: 'texts' },
        { take: 'cmd', name: 'redo' },
        { take: 'press', name: 'clear' },
        { take: 'texts' },
        { take: 'colours' },
        { take: 'history' },
        { take: 'tags' },
      ]);
      expect(results[3]).toBe('Annotated.');
      expect(ours(results[4]).map(({ fontSize }) => fontSize)).toEqual([8, 8, 8, 8]);
      expect(ours(results[4])[0]!.text).toContain('(C♯)\nB 2');
      expect((results[5] as string[]).map((colour) => colour.toUpperCase())).toEqual([
        '',
        '',
        '',
        '#0073B2',
        '#D55F00',
      ]);
      expect(results[6]).toBe('The annotations are up to date: nothing was changed.');
      expect(results[7]).toEqual({ done: 1, undone: 0, open: false });
      expect(results[9]).toEqual([]);
      expect(results[11]).toBe('Cleared: 4 notes.');
      expect(results[12]).toEqual([]);
      expect((results[13] as string[]).filter((colour) => colour !== '' && colour !== '#000000')).toEqual([]);
      expect(results[14]).toEqual({ done: 2, undone: 0, open: false });
      expect(JSON.parse((results[15] as { bellhand: string }).bellhand)).toMatchObject({ horn: 'double' });
      expect(complaints).toBe('');
    });

    it('gives the user’s selection back', async () => {
      const range = { range: { from: 480, to: 1920, staff: 0, staffEnd: 1 }, picked: [] };
      const picked = { range: null, picked: ['0/0/0'] };
      const { results } = await take([
        opened,
        PANEL,
        { take: 'select', selection: range },
        { take: 'press', name: 'annotate' },
        { take: 'selection' },
        { take: 'select', selection: picked },
        { take: 'press', name: 'annotate' },
        { take: 'selection' },
        { take: 'history' },
      ]);
      expect(results[3]).toBe('Annotated in the selection. 2 stopped notes: 1 sure, 1 risky.');
      expect(results[4]).toEqual(range);
      expect(results[6]).toBe('Annotated in the selection. 1 stopped note: 1 sure.');
      expect(results[7]).toEqual(picked);
      expect(results[8]).toEqual({ done: 2, undone: 0, open: false });
    });

    it('reads octave lines and crooks, and says what stands in the way', async () => {
      const under = {
        ...standInOf([{ bars: [[stopped('C4', 2), stopped('C4', 2)]] }]),
        octaveLines: [{ tick: 0, ticks: 960, track: 0, track2: 0, ottavaType: 0 }],
      };
      const basso = [
        { bars: [[stopped('C5', 4)]], options: { name: 'Horn in Bb basso', transpose: [-14, -8] as const } },
      ];
      const flute = [
        { bars: BARS, options: { name: 'Flute', sound: 'wind.flutes.flute', transpose: [0, 0] as const } },
      ];
      const { results } = await take([
        { take: 'open', version, music: under },
        PANEL,
        { take: 'result' },
        { take: 'open', version, music: standInOf(basso) },
        { take: 'result' },
        { take: 'open', version, music: standInOf(flute) },
        { take: 'press', name: 'annotate' },
        { take: 'press', name: 'clear' },
        { take: 'open', version, music: { ...standInOf(PART), measures: [] } },
        { take: 'press', name: 'annotate' },
        { take: 'history' },
      ]);
      const written = (result: unknown) =>
        (result as { parts: { transpose: number; notes: { written: string }[] }[] }).parts.map(
          ({ transpose, notes }) => [transpose, notes.map((note) => note.written)],
        );
      expect(written(results[2])).toEqual([[-7, ['C5', 'C4']]]);
      expect(written(results[4])).toEqual([[-14, ['C5']]]);
      expect(results.slice(6, 8)).toEqual(['The score has no horn part.', 'The score has no horn part.']);
      expect(results[9]).toBe('The score has no bars.');
      expect(results[10]).toEqual({ done: 0, undone: 0, open: false });
    });

    it('takes a failure half-way back', async () => {
      const { results } = await take([
        opened,
        { take: 'music' },
        PANEL,
        { take: 'fail', after: 2 },
        { take: 'press', name: 'annotate' },
        { take: 'music' },
        { take: 'history' },
      ]);
      expect(results[4]).toBe('Nothing was changed: no more elements.');
      expect({ ...(results[5] as object), tags: {} }).toEqual(results[1]);
      expect(results[6]).toMatchObject({ done: 0, open: false });
    });

    it('follows an edit once the writer pauses, and works without a window', async () => {
      const { results } = await take([
        opened,
        PANEL,
        { take: 'tick' },
        { take: 'edit', chord: 3, pitch: 65 },
        { take: 'tick' },
        { take: 'news' },
        { take: 'look' },
        { take: 'tick' },
        { take: 'load', file: 'BellhandAnnotate.qml' },
        { take: 'texts' },
        { take: 'load', file: 'BellhandClear.qml' },
        { take: 'texts' },
        { take: 'history' },
      ]);
      expect(results.slice(2, 6)).toEqual([false, null, false, true]);
      expect(
        (results[6] as { findings: { what: string }[] }).findings.map(({ what }) => what).join(),
      ).not.toContain('C3');
      expect(results[7]).toBe(false);
      expect(ours(results[9])).toHaveLength(4);
      expect(results[11]).toEqual([]);
      expect(results[12]).toMatchObject({ done: 2, open: false });
    });
  });

  it.each([
    ['de_DE', 'Bezeichnet.'],
    ['pt_BR', 'Annotated.'],
  ])('speaks the language of %s, if it is one of ours', async (locale, said) => {
    const { results, complaints } = await inEngine(
      program!,
      [{ take: 'open', version: 40600, music: standInOf(PART) }, PANEL, { take: 'press', name: 'annotate' }],
      locale,
    );
    expect(results[2]).toBe(said);
    expect(complaints).toBe('');
  });

  it('gets right in our script what it gets wrong in others', async () => {
    expect(await trialsIn(program!, await editorScript(TRIALS))).toEqual({
      captured: [1, 2, 3],
      arrow: [[0, 1, 2, 3, 4]],
      weakKeys: 400,
      equalsInOrder: true,
    });
  });

  it('changes what it prints by the panel’s choices', async () => {
    const { results } = await take([
      { take: 'open', version: 40600, music: standInOf(PART) },
      PANEL,
      { take: 'decide', control: 'horn', value: 1 },
      { take: 'press', name: 'show-natural' },
      { take: 'decide', control: 'handOffset', value: 10 },
      { take: 'press', name: 'annotate' },
      { take: 'texts' },
      { take: 'look' },
      { take: 'open', version: 40600, music: null },
      { take: 'press', name: 'annotate' },
    ]);
    expect(ours(results[6])[0]!.text).toMatch(/B 2$/);
    expect(results[7]).toMatchObject({ hornIndex: 1, choice: { horn: 'single-f', handOffset: 10 } });
    expect(results[9]).toBe('No score is open.');
  });
});
