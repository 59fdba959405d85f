/** The plugin in the real editor, without a screen: what it writes, takes back, knows again and keeps. */
import { fileURLToPath } from 'node:url';
import { afterAll, expect, it } from 'vitest';
import { countNotes, countText, ENGLISH_READER, examine } from '../../core/index.ts';
import { DEFAULT_CHOICE } from '../../plugin/editor/choice.ts';
import type { PanelView } from '../../plugin/editor/panelView.ts';
import { readScore } from '../../plugin/musicxml/index.ts';
import { readDrawing } from './rig/drawing.ts';
import { EVERY_VERDICT } from './rig/everyVerdict.ts';
import { removeFolders } from './rig/folders.ts';
import { inEveryHost } from './rig/inEveryHost.ts';
import { hornScore, longPart, rest, stopped } from './rig/music.ts';
import { colours, marksIn, music } from './rig/savedScore.ts';

afterAll(removeFolders);

/** What `check` prints of the part under its table. */
const COUNTS = '5 stopped notes: 3 sure, 1 risky, 1 impossible';

/** A drawing without what it says of its file. */
const withoutTitle = (drawing: string) => drawing.replace(/<(title|desc)>.*?<\/\1>/gs, '');

inEveryHost('annotating', (host) => {
  it('writes, redoes nothing twice, takes back in one step, redoes, and clears', async () => {
    const run = await host.run(EVERY_VERDICT, [
      { do: 'save', as: 'before.mscx' },
      { do: 'annotate' },
      { do: 'save', as: 'annotated.mscx' },
      { do: 'annotate' },
      { do: 'save', as: 'twice.mscx' },
      { do: 'undo' },
      { do: 'save', as: 'undone.mscx' },
      { do: 'redo' },
      { do: 'save', as: 'redone.mscx' },
      { do: 'clear' },
      { do: 'save', as: 'cleared.mscx' },
      { do: 'undo' },
      { do: 'save', as: 'uncleared.mscx' },
    ]);
    const saved = async (name: string) => music(await run.text(`${name}.mscx`));
    const [before, annotated] = [await saved('before'), await saved('annotated')];
    expect(run.results[1]).toBe('Annotated.');
    expect(run.results[3]).toBe('The annotations are up to date: nothing was changed.');
    expect(run.results[9]).toBe('Cleared: 5 notes.');
    // C5 and E♭4 as on every stopped F-horn chart: fingered a semitone below.
    expect(marksIn(annotated).slice(0, 2)).toEqual(['(C♯)\nB 2', '(F)\nD 1']);
    expect(marksIn(annotated)).toHaveLength(5);
    expect(colours(annotated)).toBe(2);
    expect(await saved('twice')).toBe(annotated);
    expect(await saved('undone')).toBe(before);
    expect(await saved('redone')).toBe(annotated);
    expect(await saved('cleared')).toBe(before);
    expect(await saved('uncleared')).toBe(annotated);
    const [clean, marked, cleared] = await Promise.all(
      ['before', 'annotated', 'cleared'].map((name) => host.drawingOf(run.path(`${name}.mscx`))),
    );
    expect(readDrawing(clean!).texts).toHaveLength(1);
    expect(readDrawing(marked!).texts.length).toBeGreaterThan(5);
    expect(withoutTitle(cleared!)).toBe(withoutTitle(clean!));
  });

  it.each(['mscz', 'mscx', 'musicxml'])(
    'knows its marks again after saving and opening as %s',
    async (format) => {
      const first = await host.run(EVERY_VERDICT, [
        { do: 'save', as: 'plain.mscx' },
        { do: 'save', as: `plain.${format}` },
        { do: 'annotate' },
        { do: 'save', as: `score.${format}` },
      ]);
      const [again, plain] = await Promise.all([
        host.run(first.path(`score.${format}`), [
          { do: 'annotate' },
          { do: 'annotate' },
          { do: 'save', as: 'again.mscx' },
          { do: 'clear' },
          { do: 'save', as: 'cleared.mscx' },
        ]),
        host.run(first.path(`plain.${format}`), [{ do: 'save', as: 'plain.mscx' }]),
      ]);
      // MusicXML has no place for a mark that the editor would read: then its row is set again.
      expect(again.results.slice(0, 2)).toEqual([
        format === 'musicxml' ? 'Annotated.' : 'The annotations are up to date: nothing was changed.',
        'The annotations are up to date: nothing was changed.',
      ]);
      const annotated = await again.text('again.mscx');
      expect(marksIn(annotated)).toHaveLength(5);
      expect(annotated.match(/<offset [^>]*y="-/g)).toHaveLength(5);
      expect(music(await again.text('cleared.mscx'))).toBe(music(await plain.text('plain.mscx')));
    },
  );

  it('names notes as chosen, knows every naming again, and counts as the command line does', async () => {
    const choice = (noteNaming: string) => ({ ...DEFAULT_CHOICE, noteNaming });
    const run = await host.run(EVERY_VERDICT, [
      { do: 'save', as: 'before.mscx' },
      { do: 'annotate', choice: choice('german') },
      { do: 'save', as: 'german.mscx' },
      { do: 'findings' },
      { do: 'annotate', choice: choice('solfege') },
      { do: 'save', as: 'solfege.mscx' },
      { do: 'clear', choice: choice('english') },
      { do: 'save', as: 'cleared.mscx' },
    ]);
    expect(marksIn(await run.text('german.mscx')).slice(0, 2)).toEqual(['(Cis)\nH 2', '(F)\nD 1']);
    expect(marksIn(await run.text('solfege.mscx')).slice(0, 2)).toEqual(['(do♯)\nsi 2', '(fa)\nre 1']);
    expect(music(await run.text('cleared.mscx'))).toBe(music(await run.text('before.mscx')));
    const { findings, counts, noteNamingIndex } = run.results[3] as PanelView;
    expect(findings.map(({ what }) => what)).toContain('c, wants up');
    expect(noteNamingIndex).toBe(1);
    const examinations = readScore(EVERY_VERDICT).horns.map(({ passage }) => examine(passage));
    expect(counts).toBe(countText(countNotes(examinations), ENGLISH_READER));
    expect(counts).toBe(COUNTS);
  });

  it('writes the same with Concert Pitch on, and leaves it on', async () => {
    const [written, inConcert] = await Promise.all([
      host.run(EVERY_VERDICT, [{ do: 'annotate' }, { do: 'save', as: 'written.mscx' }, { do: 'result' }]),
      host.inConcertPitch(EVERY_VERDICT),
    ]);
    const run = await host.run(inConcert, [
      { do: 'save', as: 'before.mscx' },
      { do: 'annotate' },
      { do: 'save', as: 'concert.mscx' },
      { do: 'result' },
      { do: 'undo' },
      { do: 'save', as: 'undone.mscx' },
    ]);
    const concert = await run.text('concert.mscx');
    expect(concert).toContain('<concertPitch>1</concertPitch>');
    expect(run.results[1]).toBe(written.results[0]);
    expect(run.results[3]).toEqual(written.results[2]);
    expect(marksIn(concert)).toEqual(marksIn(await written.text('written.mscx')));
    expect(music(await run.text('undone.mscx'))).toBe(music(await run.text('before.mscx')));
  });

  it('prints valves alone in a bar of sixteenths, the top player above and the lower voice below', async () => {
    const bars = [
      [
        stopped('C5', 0.25),
        stopped('A4', 0.25),
        stopped('C5', 0.5),
        stopped('G4'),
        { ...stopped('C4', 2), pitch: ['C4', 'G4'] },
      ],
      [{ ...stopped('C4', 4), pitch: ['C4', 'G4'] }],
    ];
    const second = [[rest(3), stopped('D4')], [rest(4)]];
    const run = await host.run(hornScore(bars, { second }), [
      { do: 'annotate' },
      { do: 'save', as: 'annotated.mscx' },
      { do: 'annotate' },
    ]);
    const annotated = await run.text('annotated.mscx');
    // In the order of the page: for a chord the editor stacks upward from what comes first.
    expect(marksIn(annotated)).toEqual([...['2', '23', '2', '2'], ...['2', '12'], 'B 2', 'F♯ 2']);
    expect(annotated.match(/<placement>below<\/placement>/g)).toHaveLength(1);
    expect(run.results[2]).toBe('The annotations are up to date: nothing was changed.');
  });

  it('looks alike in the score and in the part that the editor keeps in step with it', async () => {
    // A flute and a horn, with a part score of each, as the editor itself made and saved them.
    const run = await host.run(fileURLToPath(new URL('rig/scoreWithPart.mscx', import.meta.url)), [
      { do: 'save', as: 'before.mscx' },
      { do: 'annotate' },
      { do: 'save', as: 'annotated.mscx' },
      { do: 'clear' },
      { do: 'save', as: 'cleared.mscx' },
    ]);
    const annotated = await run.text('annotated.mscx');
    expect(marksIn(annotated)).toEqual(['(C♯)\nB 2', '(F)\nD 1', '(C♯)\nB 2', '(F)\nD 1']);
    expect(annotated.match(/<size>8<\/size>/g)).toHaveLength(4);
    expect(music(await run.text('cleared.mscx'))).toBe(music(await run.text('before.mscx')));
  });

  it('keeps the choice with the score', async () => {
    const choice = {
      horn: 'single-f',
      tolerance: 30,
      handOffset: 10,
      show: { fingered: true, valves: true, natural: false, verdict: false, colour: false, repeat: 'all' },
    };
    const run = await host.run(EVERY_VERDICT, [
      { do: 'annotate', choice },
      { do: 'save', as: 'chosen.mscz' },
      { do: 'save', as: 'chosen.mscx' },
    ]);
    expect(marksIn(await run.text('chosen.mscx')).slice(0, 2)).toEqual(['B 2', 'D 1']);
    expect(colours(await run.text('chosen.mscx'))).toBe(0);
    const reopened = await host.run(run.path('chosen.mscz'), [{ do: 'findings' }]);
    expect(reopened.results[0]).toMatchObject({ choice });
  });

  it('adds every element that it makes', async () => {
    const run = await host.run(EVERY_VERDICT, [{ do: 'count' }, { do: 'clear' }, { do: 'count' }]);
    for (const counted of [run.results[0], run.results[2]]) {
      const { made, added } = counted as { made: number; added: number };
      // Besides the five marks a pattern for all of them, and in version 3 one at each end, for the editor to lay out no more.
      const elements = host.major === 3 ? 8 : 6;
      expect({ made, added }).toEqual({ made: elements, added: elements });
    }
  });

  it('brings the editor down in none of twenty rounds: annotate, clear, undo, save, reopen, and quit', async () => {
    // A sitting that does not end with exit status 0 throws.
    const runs = await host.rounds(
      EVERY_VERDICT,
      [{ do: 'annotate' }, { do: 'clear' }, { do: 'undo' }, { do: 'save', as: 'score.mscz' }],
      20,
    );
    expect(runs).toHaveLength(20);
    runs.forEach(({ results }, round) => {
      expect(results[0]).toMatch(round === 0 ? /^Annotated\.$/ : /^The annotations are up to date/);
      expect(results[1]).toBe('Cleared: 5 notes.');
    });
  });

  it('annotates a part of 2,000 notes, and undoes it in one step', async () => {
    const run = await host.run(longPart(2000), [
      { do: 'save', as: 'before.mscx' },
      { do: 'annotate' },
      { do: 'save', as: 'annotated.mscx' },
      { do: 'undo' },
      { do: 'save', as: 'undone.mscx' },
    ]);
    expect(run.results[1]).toMatch(/^Annotated\.$/);
    expect(marksIn(await run.text('annotated.mscx'))).toHaveLength(2000);
    expect(music(await run.text('undone.mscx'))).toBe(music(await run.text('before.mscx')));
  });
});
