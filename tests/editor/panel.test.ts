/** The panel in the real editor, without a screen: what it asks, groups, steps through and writes at a press. */
import { afterAll, expect, it } from 'vitest';
import { ENGLISH_READER, LANGUAGES, readerOf } from '../../core/words/language.ts';
import { panelWords } from '../../core/words/panel.ts';
import { removeFolders } from './rig/folders.ts';
import { inEveryHost } from './rig/inEveryHost.ts';
import { hornScore, open, stopped } from './rig/music.ts';
import type { PanelAct, PanelMoment, Step } from './rig/steps.ts';

afterAll(removeFolders);

const PART = hornScore([
  [open('C5', 2), open('E4', 2)],
  [stopped('F2', 2), open('G4', 2)],
  [stopped('F2', 2), open('G4', 2)],
  [stopped('F2', 2), open('G4', 2)],
  [
    { ...open('E4', 2), glissando: '+' },
    { ...stopped('F4', 2), glissando: '-' },
  ],
]);

const select = (from: number, length = 1): PanelAct => ({ select: { from, length } });
const signs = (saved: string, sign: string) => saved.split(`<subtype>${sign}</subtype>`).length - 1;

inEveryHost('the panel', (host) => {
  async function after(acts: readonly PanelAct[]): Promise<readonly PanelMoment[]> {
    return (await host.run(PART, [{ do: 'panel', acts }])).results[0] as PanelMoment[];
  }

  it('answers for the selected note before anything is written', async () => {
    const [c, e, f] = await after([select(0), select(1), select(2)]);
    // smalley, stopped fingerings: C5 2 on the F side, from the harmonic a semitone above.
    expect(c!.answer).toMatchObject({ heading: 'C5 stopped', verdict: 'sure' });
    expect(c!.answer!.lines[0]).toBe('Finger B4 on the F horn 2; natural pitch C♯5.');
    expect(e!.answer!.lines).toContain(
      'Open, then closed by the hand: goes to C♯4 (open F horn) or D4 (F horn 1+2).',
    );
    expect(f!.answer).toMatchObject({ heading: 'F2 stopped', verdict: 'impossible' });
    expect(f!.answer!.lines).toContain('Sure nearby: A3.');
  });

  it('annotates selected notes by the words that stand there now, however far before and however short ago', async () => {
    const bars = Array.from({ length: 24 }, (_, bar) => [
      { ...open('C5', 2), ...(bar === 0 ? { words: 'gestopft' } : {}) },
      open('E5', 2),
    ]);
    const run = await host.run(hornScore(bars), [
      {
        do: 'panel',
        acts: [
          select(40, 4),
          { looks: 6 },
          { press: 'annotate' },
          { looks: 6 },
          { unseen: 'take a word away' },
          { press: 'annotate' },
        ],
      },
    ]);
    const moments = run.results[0] as PanelMoment[];
    expect(moments[2]!.sentence).toBe('Annotated in the selection. 4 stopped notes: 4 sure.');
    expect(moments[5]!.sentence).toBe('No stopped horn note is selected: nothing was changed.');
  });

  it('tells repeats once, steps through each of them and back, and begins where the writer is', async () => {
    const [down, again, third, slide, back, cursor, start] = await after([
      { press: 'step', what: 1 },
      { press: 'choose', what: 0 },
      { press: 'step', what: 1 },
      { press: 'step', what: 1 },
      { press: 'step', what: -1 },
      { press: 'chooseStart', what: true },
      select(8),
    ]);
    expect(down!.findings).toEqual(['Bars 2–4: 3 notes, too low', 'Bar 5, beat 3: F4, closes upward']);
    expect(down!.count).toBe(4);
    expect([down, again, third, slide, back].map((moment) => moment!.chosen.nth)).toEqual([
      '1 of 3',
      '2 of 3',
      '3 of 3',
      '',
      '3 of 3',
    ]);
    // F4 sounds a fifth lower, as F2 does.
    expect([down, slide].map((moment) => moment!.selected[0]!.pitch)).toEqual([34, 58]);
    expect(cursor!.findings[0]).toContain('Bars 2–4');
    expect(start!.findings[0]).toContain('Bar 5');
    // What is chosen goes along.
    expect(start!.chosen).toMatchObject({ row: 1, nth: '3 of 3' });
  });

  it('writes + and o over the selection at a press, and takes them away, each in one step', async () => {
    const run = await host.run(PART, [
      { do: 'save', as: 'before.mscx' },
      {
        do: 'panel',
        acts: [
          select(0, 2),
          { press: 'sign', what: 'stopped' },
          select(1),
          { press: 'sign', what: 'open' },
          { press: 'sign', what: 'open' },
        ],
      },
      { do: 'save', as: 'signed.mscx' },
      { do: 'undo' },
      { do: 'undo' },
      { do: 'undo' },
      { do: 'save', as: 'undone.mscx' },
    ]);
    const moments = run.results[1] as PanelMoment[];
    expect([1, 3, 4].map((i) => moments[i]!.sentence)).toEqual([
      'Done: Write + over 2 notes.',
      'Done: Write o.',
      'Done: Take the sign away.',
    ]);
    const signed = await run.text('signed.mscx');
    expect(signs(signed, 'brassMuteClosed')).toBe(5);
    expect(signs(signed, 'brassMuteOpen')).toBe(0);
    const undone = await run.text('undone.mscx');
    expect(undone).toBe(await run.text('before.mscx'));
  });

  it('speaks the editor’s language, from a script of its own for each, and else English', async () => {
    const locales = [...LANGUAGES.map((language) => `${language}_XX`), 'pt_BR', 'C'];
    const { results } = await host.run(
      PART,
      locales.map((locale): Step => ({ do: 'speak', locale })),
    );
    const english = panelWords(ENGLISH_READER).labels.annotate;
    const own = LANGUAGES.map((language) => panelWords(readerOf(language)).labels.annotate);
    expect(new Set(own).size).toBe(LANGUAGES.length);
    expect(results).toEqual([...own, english, english]);
  });

  it('says that undo took the annotations back, and that redo wrote them again', async () => {
    const moments = await after([{ press: 'annotate' }, { cmd: 'undo' }, { cmd: 'redo' }]);
    expect(moments.map(({ sentence }) => sentence)).toEqual([
      'Annotated.',
      'Taken back: Annotate.',
      'Done again: Annotate.',
    ]);
  });
});
