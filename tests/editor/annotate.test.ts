/** The plugin in the real editor, without a screen: what it writes, takes back, keeps and leaves alone. */
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, it } from 'vitest';
import { countNotes, countText, ENGLISH_READER, examine, MARK_PREFIX, marksFor } from '../../core/index.ts';
import { DEFAULT_CHOICE } from '../../plugin/editor/choice.ts';
import type { PanelView } from '../../plugin/editor/panelView.ts';
import { readScore, writeMarks } from '../../plugin/musicxml/index.ts';
import { readDrawing } from './rig/drawing.ts';
import { removeFolders } from './rig/folders.ts';
import { inEveryHost } from './rig/inEveryHost.ts';
import { hornScore, longPart, open, type Played, rest, scoreOf, stopped } from './rig/music.ts';
import type { PanelMoment, Step } from './rig/steps.ts';

afterAll(removeFolders);

/** A part with sure, risky and impossible stopped notes, open ones, and signs and words of its own. */
const BARS: readonly (readonly Played[])[] = [
  [stopped('C5'), stopped('Eb4'), { ...open('G4'), glissando: '+' }, { ...stopped('C5'), glissando: '-' }],
  [
    { ...open('E4', 2), words: 'dolce', slur: '+' },
    { ...stopped('C#4', 2), slur: '-' },
  ],
  [stopped('C3', 2), rest(2)],
];
const PART = hornScore(BARS);
/** What `check` prints of it under its table. */
const COUNTS = '5 stopped notes: 3 sure, 1 risky, 1 impossible';

const DEMO = fileURLToPath(new URL('../../plugin/batch/demo/low-water.musicxml', import.meta.url));

/** The texts of ours in a saved score, without the prefix. */
function marksIn(saved: string): string[] {
  return Array.from(saved.matchAll(/<text>(.*?)<\/text>/gs), ([, text]) => text!.replace(/<[^>]*>/g, ''))
    .filter((text) => text.startsWith(MARK_PREFIX))
    .map((text) => text.replace(/[\u2060\u2063\u200b]/g, '').trim());
}

/** A saved score without what no reader sees: our choice among its properties. */
function music(saved: string): string {
  return saved.replace(/\s*<metaTag name="bellhand">.*?<\/metaTag>/, '');
}

/** A drawing without what it says of its file. */
const withoutTitle = (drawing: string) => drawing.replace(/<(title|desc)>.*?<\/\1>/gs, '');

const colours = (saved: string) => (saved.match(/<color /g) ?? []).length;

inEveryHost('annotating', (host) => {
  it('writes, redoes nothing twice, takes back in one step, redoes, and clears', async () => {
    const run = await host.run(PART, [
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
      const first = await host.run(PART, [
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
    const run = await host.run(PART, [
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
    const examinations = readScore(PART).horns.map(({ passage }) => examine(passage));
    expect(counts).toBe(countText(countNotes(examinations), ENGLISH_READER));
    expect(counts).toBe(COUNTS);
  });

  it('annotates and clears only what is selected', async () => {
    const run = await host.run(PART, [
      { do: 'select', from: 1, length: 2 },
      { do: 'annotate' },
      { do: 'save', as: 'range.mscx' },
      { do: 'select', from: 0, length: 1 },
      { do: 'annotate' },
      { do: 'save', as: 'single.mscx' },
      { do: 'select', from: 1, length: 1 },
      { do: 'clear' },
      { do: 'save', as: 'cleared.mscx' },
      { do: 'select', from: 4, length: 1 },
      { do: 'annotate' },
    ]);
    expect(run.results[1]).toBe('Annotated in the selection. 1 stopped note: 1 sure.');
    expect(marksIn(await run.text('range.mscx'))).toEqual(['(F)\nD 1']);
    expect(marksIn(await run.text('single.mscx'))).toEqual(['(C♯)\nB 2', '(F)\nD 1']);
    expect(marksIn(await run.text('cleared.mscx'))).toEqual(['(C♯)\nB 2']);
    expect(run.results[10]).toBe('No stopped horn note is selected: nothing was changed.');
  });

  it.each([{ before: [] }, { before: [{ do: 'colour', nth: 1, colour: '#00aa00' }] as const }])(
    'writes the same over selected notes from what an open panel knows, after $before',
    async ({ before }) => {
      const selected = { from: 0, length: 3 };
      // Where nothing moved for a while the panel takes it that it knows the part.
      const rest = { select: selected };
      const acts = [rest, rest, rest, { press: 'annotate' }] as const;
      const [beside, alone] = await Promise.all([
        host.run(PART, [...before, { do: 'panel', acts }, { do: 'save', as: 'marked.mscx' }]),
        host.run(PART, [
          ...before,
          { do: 'select', ...selected },
          { do: 'annotate' },
          { do: 'save', as: 'marked.mscx' },
        ]),
      ]);
      const [moments, sentence] = [beside.results[before.length], alone.results[before.length + 1]];
      expect((moments as PanelMoment[])[3]!.sentence).toBe(sentence);
      const marked = await beside.text('marked.mscx');
      expect(marksIn(marked).length).toBeGreaterThan(0);
      expect(music(marked)).toBe(music(await alone.text('marked.mscx')));
    },
  );

  it('writes the same with Concert Pitch on, and leaves it on', async () => {
    const [written, inConcert] = await Promise.all([
      host.run(PART, [{ do: 'annotate' }, { do: 'save', as: 'written.mscx' }, { do: 'result' }]),
      host.inConcertPitch(PART),
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

  it('leaves the texts and colours of the user alone, and says so', async () => {
    const run = await host.run(PART, [
      { do: 'colour', nth: 6, colour: '#00aa00' },
      { do: 'colour', nth: 0, colour: '#0072b2' },
      { do: 'text', nth: 0, text: 'con forza &amp; fuoco' },
      { do: 'save', as: 'before.mscx' },
      { do: 'annotate' },
      { do: 'save', as: 'annotated.mscx' },
      { do: 'clear' },
      { do: 'save', as: 'cleared.mscx' },
    ]);
    expect(run.results[4]).toBe('Annotated. 1 doubtful note had a colour already and kept it.');
    const annotated = await run.text('annotated.mscx');
    expect(annotated).toContain('<color r="0" g="170" b="0" a="255"/>');
    expect(annotated).toContain('con forza &amp; fuoco');
    expect(colours(annotated)).toBe(3);
    expect(music(await run.text('cleared.mscx'))).toBe(music(await run.text('before.mscx')));
  });

  it('takes its own colours off notes whose marks somebody deleted, and no other', async () => {
    const run = await host.run(PART, [
      { do: 'colour', nth: 0, colour: '#0072b2' },
      { do: 'save', as: 'before.mscx' },
      { do: 'colour', nth: 1, colour: '#d55f00' },
      { do: 'colour', nth: 6, colour: '#0073b2' },
      { do: 'save', as: 'painted.mscx' },
      { do: 'clear' },
      { do: 'save', as: 'cleared.mscx' },
    ]);
    expect(colours(await run.text('painted.mscx'))).toBe(3);
    expect(run.results[5]).toBe('Cleared: 2 notes.');
    expect(music(await run.text('cleared.mscx'))).toBe(music(await run.text('before.mscx')));
  });

  it('takes a failure half-way back, and the user’s own last edit stays', async () => {
    const run = await host.run(PART, [
      { do: 'text', nth: 0, text: 'mine' },
      { do: 'save', as: 'before.mscx' },
      { do: 'annotate', failAfter: 2 },
      { do: 'save', as: 'after.mscx' },
      { do: 'annotate', failAfter: 0 },
      { do: 'save', as: 'at-once.mscx' },
    ]);
    expect(run.results[2]).toBe('Nothing was changed: no more texts.');
    expect(music(await run.text('after.mscx'))).toBe(music(await run.text('before.mscx')));
    expect(run.results[4]).toBe('Nothing was changed: no more texts.');
    expect(music(await run.text('at-once.mscx'))).toBe(music(await run.text('before.mscx')));
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
    const run = await host.run(PART, [
      { do: 'annotate', choice },
      { do: 'save', as: 'chosen.mscz' },
      { do: 'save', as: 'chosen.mscx' },
    ]);
    expect(marksIn(await run.text('chosen.mscx')).slice(0, 2)).toEqual(['B 2', 'D 1']);
    expect(colours(await run.text('chosen.mscx'))).toBe(0);
    const reopened = await host.run(run.path('chosen.mscz'), [{ do: 'findings' }]);
    expect(reopened.results[0]).toMatchObject({ choice });
  });

  it.each([
    [
      'no horn part',
      scoreOf([{ bars: BARS, options: { name: 'Flute', sound: 'wind.flutes.flute', transpose: [0, 0] } }]),
      'The score has no horn part.',
      'The score has no horn part.',
    ],
    [
      'no stopped note',
      hornScore([[open('C5', 4)]]),
      'The horn part has no stopped note: nothing to annotate.',
      'There is nothing of ours to clear.',
    ],
    [
      'only rests',
      hornScore([[rest(4)]]),
      'The horn part has no stopped note: nothing to annotate.',
      'There is nothing of ours to clear.',
    ],
  ])(
    'says one plain sentence to a score with %s, and changes nothing',
    async (_, score, annotated, cleared) => {
      const run = await host.run(score, [
        { do: 'save', as: 'before.mscx' },
        { do: 'annotate' },
        { do: 'clear' },
        { do: 'findings' },
        { do: 'save', as: 'after.mscx' },
      ]);
      expect(run.results.slice(1, 3)).toEqual([annotated, cleared]);
      expect(run.results[3]).toMatchObject({ findings: [], isChecked: false });
      expect(await run.text('after.mscx')).toBe(await run.text('before.mscx'));
    },
  );

  it.each(['as it stands', 'annotated by the command line'])(
    'leaves no colour behind in the demo part %s: not on an accidental, a dot or a stem',
    async (how) => {
      const text = await readFile(DEMO, 'utf8');
      const annotated = writeMarks(
        readScore(text),
        readScore(text).horns.map(({ id, passage }) => ({ partId: id, marks: marksFor(examine(passage)) })),
      );
      const run = await host.run(how === 'as it stands' ? text : annotated, [
        { do: 'annotate' },
        { do: 'save', as: 'annotated.mscx' },
        { do: 'clear' },
        { do: 'save', as: 'cleared.mscx' },
      ]);
      expect(colours(await run.text('annotated.mscx'))).toBeGreaterThanOrEqual(7);
      expect(colours(await run.text('cleared.mscx'))).toBe(0);
    },
  );

  it('adds every element that it makes', async () => {
    const run = await host.run(PART, [{ do: 'count' }, { do: 'clear' }, { do: 'count' }]);
    for (const counted of [run.results[0], run.results[2]]) {
      const { made, added } = counted as { made: number; added: number };
      // Besides the five marks a pattern for all of them.
      expect({ made, added }).toEqual({ made: 6, added: 6 });
    }
  });

  it('brings the editor down in none of twenty rounds: annotate, clear, undo, save, reopen, and quit', async () => {
    // A sitting that does not end with exit status 0 throws.
    const runs = await host.rounds(
      PART,
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

  it('notices a raised note and a deleted one within a second, and looks in vain at nothing new', async () => {
    const select = (from: number): Step => ({ do: 'select', from, length: 1 });
    const run = await host.run(PART, [
      select(3),
      { do: 'follow', name: 'pitch-up-octave' },
      { do: 'follow', name: 'delete' },
    ]);
    // A look comes every 0.3 s and the list waits for one look without news.
    for (const followed of run.results.slice(1))
      expect((followed as { ticks: number }).ticks).toBeLessThanOrEqual(4);
    expect((run.results[1] as { findings: unknown[] }).findings).not.toEqual([]);
  });

  it('takes the user to the note of a finding', async () => {
    const run = await host.run(PART, [
      { do: 'show', row: 0 },
      { do: 'show', row: 1 },
    ]);
    // Sounding a fifth below: C5 is MIDI 65, C3 is 41.
    expect(run.results).toEqual([
      { selected: [{ pitch: 65, track: 0 }], sentence: '' },
      { selected: [{ pitch: 41, track: 0 }], sentence: '' },
    ]);
  });
});
