/** The panel is at home in version 4: its keyboard, its windows, its themes. */
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, afterEach, describe, expect, it } from 'vitest';
import { removeFolders } from './rig/folders.ts';
import { HOST_4 } from './rig/host4.ts';
import { hornScore, open, stopped } from './rig/music.ts';
import { differingPixels, meanBrightness } from './rig/pictures.ts';
import {
  awaitFile,
  CAN_SHOW_WINDOWS,
  type EditorWindow,
  openEditor,
  until,
  type WindowOptions,
} from './rig/window.ts';

afterAll(removeFolders);

let editor: EditorWindow | null = null;
afterEach(async () => {
  await editor?.stop();
  editor = null;
});

const PART = hornScore([[stopped('C5'), stopped('Eb4'), open('G4'), stopped('C3')]]);

/** What the panel keeps beside the plugin. */
const kept = (window: EditorWindow, name: string) =>
  join(window.folder, 'Documents/MuseScore4/Plugins/bellhand', name);

async function openPanel(window: EditorWindow) {
  window.focus(window.main.id);
  window.press('ctrl+alt+shift+p');
  return window.ready((await window.windowNamed('^Bellhand$')).id);
}

async function opened(options: WindowOptions = {}): Promise<EditorWindow> {
  const window = await openEditor(HOST_4, PART, options);
  editor = window;
  await window.ready(window.main.id);
  return window;
}

describe.skipIf(!HOST_4.isInstalled || !CAN_SHOW_WINDOWS)('the panel in version 4', () => {
  it('is worked with Tab and Space, can be made narrow, and comes back as it was left', async () => {
    const window = await opened();
    const panel = await openPanel(window);
    expect(meanBrightness(await window.still(panel))).toBeGreaterThan(0.8);
    // From Annotate past Clear, + and o to what is shown over the notes, which opens; then past études to its first box.
    for (const key of ['Tab', 'Tab', 'Tab', 'Tab', 'space', 'Tab', 'Tab', 'space']) {
      window.press(key);
      await sleep(150);
    }
    const choice = await awaitFile(kept(window, 'bellhand-choice.json'), (text) => text !== '');
    expect(JSON.parse(choice)).toMatchObject({ show: { fingered: false, valves: true } });

    window.resize(panel.id, 320, 560);
    const size = await awaitFile(kept(window, 'bellhand-window.json'), (text) => text.includes('320'));
    expect(JSON.parse(size)).toEqual({ width: 320, height: 560 });
    window.focus(panel.id);
    window.press('alt+F4');
    expect(await until(() => !window.isShown('^Bellhand$'))).toBe(true);
    const again = await openPanel(window);
    expect(again.id).not.toBe(panel.id);
    expect(again).toMatchObject({ width: 320, height: 560 });

    // Made higher and short again it is the same, without a blank where the counts stand in between.
    const short = await window.still(again);
    window.resize(again.id, 320, 700);
    await window.pictureWhere(again, (shot) => differingPixels(short, shot) > 500);
    window.resize(again.id, 320, 560);
    await window.pictureWhere(again, (shot) => differingPixels(short, shot) === 0);
  }, 240_000);

  it('has the editor’s colours, in high contrast too', async () => {
    const window = await opened({ contrast: 'black' });
    const panel = await openPanel(window);
    expect(meanBrightness(await window.still(panel))).toBeLessThan(0.15);
  }, 120_000);
});
