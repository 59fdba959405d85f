/** The panel in the real editor's window: mouse, keyboard, live list, dock, light and dark. */
import { readFile } from 'node:fs/promises';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, afterEach, describe, expect, it } from 'vitest';
import { MARK_PREFIX } from '../../core/marks/annotation.ts';
import { removeFolders } from './rig/folders.ts';
import { HOSTS, type Host } from './rig/host.ts';
import { HOST_3 } from './rig/host3.ts';
import { inEveryWindow } from './rig/inEveryHost.ts';
import { hornScore, open, rest, stopped } from './rig/music.ts';
import { differingPixels, meanBrightness, type Picture } from './rig/pictures.ts';
import { skipLoudly } from './rig/programs.ts';
import {
  awaitFile,
  CAN_SHOW_WINDOWS,
  type EditorWindow,
  openEditor,
  until,
  WINDOW_PROGRAMS,
} from './rig/window.ts';

afterAll(removeFolders);

if (HOSTS.some(({ isInstalled }) => isInstalled) && !CAN_SHOW_WINDOWS)
  skipLoudly('the panel in a window', WINDOW_PROGRAMS);

let editor: EditorWindow | null = null;
afterEach(async () => {
  await editor?.stop();
  editor = null;
});

const PART = hornScore([
  [stopped('C5'), stopped('Eb4'), open('G4'), stopped('C3')],
  [stopped('A4', 2), stopped('F2', 2)],
]);

/** The part in the editor's own format, so that saving asks nothing. */
async function ownFormat(host: Host, score = PART): Promise<string> {
  const run = await host.run(score, [{ do: 'save', as: 'part.mscx' }]);
  return run.path('part.mscx');
}

const marks = (saved: string) => saved.split(MARK_PREFIX).length - 1;

/** More of a picture differs than what blinks in it. */
const unlike = (one: Picture) => (other: Picture) => differingPixels(one, other) > 500;
const like = (one: Picture) => (other: Picture) => differingPixels(one, other) === 0;

/** Saves with the editor's own shortcut and waits until the file holds what it should. */
async function saved(window: EditorWindow, path: string, count: number): Promise<number> {
  window.focus(window.main.id);
  window.press('ctrl+s');
  const text = await awaitFile(path, (saved) => saved.includes('</museScore>') && marks(saved) === count);
  // The file is whole before the editor takes keys again.
  await sleep(300);
  return marks(text);
}

inEveryWindow('the panel in the editor’s window', (host) => {
  it('annotates, is undone in one step and redone, shows a note, follows an edit, clears', async () => {
    const path = await ownFormat(host);
    const window = await openEditor(host, path);
    editor = window;
    const { main } = editor;
    await editor.ready(main.id);
    editor.press('ctrl+alt+shift+p');
    // The button that annotates has the focus: Enter is enough.
    const panel = await editor.ready((await editor.windowNamed('^Bellhand$')).id);
    editor.press('Return');
    await sleep(300);
    expect(await saved(editor, path, 5)).toBe(5);
    editor.press('ctrl+z');
    expect(await saved(editor, path, 0)).toBe(0);
    editor.press('ctrl+shift+z');
    expect(await saved(editor, path, 5)).toBe(5);

    // A click on the first finding selects its note, which is no choice of the user's: Clear clears all.
    editor.focus(panel.id);
    await editor.ready(panel.id);
    const unchosen = await editor.still(panel);
    editor.click(panel.x + 150, panel.y + 260);
    await editor.pictureWhere(panel, unlike(unchosen));
    const first = await editor.still(panel);
    // What stands above the list: a score that came to the front would cover it.
    const head = { ...panel, height: 110 };
    const above = editor.picture(head);
    // The keyboard is still the panel's: the next finding, and back.
    editor.press('Down');
    await editor.pictureWhere(panel, unlike(first));
    const second = await editor.still(panel);
    editor.press('Page_Up');
    await editor.pictureWhere(panel, unlike(second));
    await editor.pictureWhere(head, like(above));
    expect(meanBrightness(above)).toBeGreaterThan(0.5);
    editor.click(panel.x + 300, panel.y + 67);
    await sleep(300);
    expect(await saved(editor, path, 0)).toBe(0);

    // A writer raises C3 by an octave: the finding has gone when the panel, which the score may cover, is looked at.
    editor.focus(panel.id);
    const shot = await editor.still(panel);
    await sleep(700);
    expect(differingPixels(shot, editor.picture(panel))).toBe(0);
    editor.intoScore();
    for (const keys of ['ctrl+Home', 'Right', 'Right', 'Right', 'Right', 'ctrl+Up']) {
      editor.press(keys);
      await sleep(150);
    }
    await editor.settled();
    editor.focus(panel.id);
    await editor.pictureWhere(panel, unlike(shot));
    editor.press('Escape');
    expect(await until(() => !window.isShown('^Bellhand$'))).toBe(true);
    expect(editor.isAlive()).toBe(true);
  }, 120_000);

  it.each([
    ['as written', ownFormat],
    ['in Concert Pitch', (of: Host, score: string) => of.inConcertPitch(score)],
  ])(
    'leaves a writer alone: notes, undo, redo, text, and annotating in between, %s',
    async (_, fileOf) => {
      const bars = Array.from({ length: 8 }, (_, i) => [
        i === 0 ? { ...rest(4), words: 'gestopft' } : rest(4),
      ]);
      const path = await fileOf(host, hornScore(bars));
      editor = await openEditor(host, path);
      const window = editor;
      const { main } = window;
      await window.ready(main.id);
      window.press('ctrl+alt+shift+p');
      await window.ready((await window.windowNamed('^Bellhand$')).id);
      window.intoScore();
      await sleep(300);
      const type = async (keys: readonly string[], pause = 120) => {
        for (const key of keys) {
          window.press(key);
          await sleep(pause);
        }
      };
      await type(['ctrl+Home', 'Right', 'n', '5'], 200);
      // Long enough for the list to be read anew in between.
      await type(['c', 'd', 'e', 'f', 'g', 'a']);
      await sleep(900);
      await type(['b', 'c', 'd', 'e']);
      await type(['ctrl+z', 'ctrl+z', 'ctrl+z']);
      await sleep(900);
      await type(['ctrl+shift+z', 'ctrl+shift+z', 'ctrl+shift+z']);
      window.press('ctrl+alt+shift+a');
      await sleep(700);
      await type(['f', 'g']);
      await type(['Escape', 'Escape', 'ctrl+Home', 'Right', 'ctrl+t'], 250);
      await type([...'dolcissimo'], 150);
      await type(['Escape', 'Escape'], 250);
      await saved(window, path, 1);
      const written = await readFile(path, 'utf8');
      // Twelve notes; the word makes them stopped, and the one that was selected was annotated.
      const perBar = written
        .split('<Measure>')
        .slice(1)
        .map((bar) => (bar.match(/<Note>/g) ?? []).length);
      expect(perBar).toEqual([4, 4, 4, 0, 0, 0, 0, 0]);
      expect(written).toContain('<text>dolcissimo</text>');
      expect(marks(written)).toBe(1);
    },
    120_000,
  );
});

describe.skipIf(!HOST_3.isInstalled || !CAN_SHOW_WINDOWS)('the panel as a dock of version 3', () => {
  it('opens at the side of the score, in the editor’s language and in its light and dark themes', async () => {
    const english = await side('light', 'en');
    const german = await side('light', 'de');
    const dark = await side('dark', 'en');
    // The dock draws its controls over the empty side.
    for (const { before, after } of [english, german, dark])
      expect(differingPixels(before, after)).toBeGreaterThan(5000);
    // Other words in the same place.
    expect(differingPixels(english.after, german.after)).toBeGreaterThan(500);
    // Most of the ground is the editor's own.
    expect(meanBrightness(english.after)).toBeGreaterThan(0.7);
    expect(meanBrightness(dark.after)).toBeLessThan(0.4);
  }, 120_000);
});

/** The side of the window where the dock opens, before and after. */
async function side(theme: 'light' | 'dark', language: string): Promise<{ before: Picture; after: Picture }> {
  const window = await openEditor(HOST_3, PART, { language, dark: theme === 'dark' });
  editor = window;
  const { main } = window;
  await window.ready(main.id);
  // Below the title of the dock, which the editor itself translates.
  const place = { x: main.x + main.width - 195, y: 475, width: 185, height: 295 };
  const before = window.picture(place);
  window.press('ctrl+alt+shift+d');
  await window.ready(main.id);
  const after = window.picture(place);
  expect(window.isAlive()).toBe(true);
  await window.stop();
  return { before, after };
}
