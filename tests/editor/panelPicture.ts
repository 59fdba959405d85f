/**
 * Makes the README's pictures of the panel from the real editor: `tsx tests/editor/panelPicture.ts`, in
 * `npm run pictures`.
 */
import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { HOST_4 } from './rig/host4.ts';
import { writePicture } from './rig/pictures.ts';
import { CAN_SHOW_WINDOWS, openEditor, WINDOW_PROGRAMS, type WindowOptions } from './rig/window.ts';

const DEMO = fileURLToPath(new URL('../../plugin/batch/demo/low-water.musicxml', import.meta.url));
const PANEL = fileURLToPath(new URL('../../plugin/editor/panel.png', import.meta.url));
const THEMES = fileURLToPath(new URL('../../build/pictures/themes.png', import.meta.url));

const convert = (...args: string[]) => promisify(execFile)('convert', args);
/** No dots in flat grounds, and colours enough that none turns into another. */
const SMALL = ['+dither', '-colors', '256', '-define', 'png:compression-level=9', '-strip'];

/** Opens the demo part, annotates it from the panel and takes the picture of both. @returns where it was put */
export async function panelPicture(): Promise<string> {
  await withPanel({}, async (editor, id) => {
    const { main } = editor;
    editor.move(id, main.x + main.width - 430, main.y + 130);
    editor.focus(id);
    editor.press('Return');
    await sleep(1500);
    // The slide up to a stopped note, with its repairs.
    for (let i = 0; i < 4; i++) {
      editor.press('Next');
      await sleep(500);
    }
    await sleep(1000);
    const whole = join(editor.folder, 'whole.png');
    writePicture(editor.picture(main), whole);
    await convert(whole, ...SMALL, PANEL);
  });
  return PANEL;
}

/** The panel 320 pixels wide in the themes that are not the usual one, side by side. @returns where it was put */
export async function themesPicture(): Promise<string> {
  const pictures: string[] = [];
  for (const options of [{ dark: true }, { contrast: 'black' }, { contrast: 'white' }] as const) {
    await withPanel(options, async (editor, id) => {
      editor.resize(id, 320, 560);
      editor.focus(id);
      editor.press('Next');
      await sleep(1500);
      const picture = join(editor.folder, 'panel.png');
      writePicture(editor.picture(await editor.windowNamed('^Bellhand$')), picture);
      pictures.push(picture);
    });
  }
  await convert(...pictures, '-bordercolor', 'white', '-border', '6', '+append', ...SMALL, THEMES);
  return THEMES;
}

async function withPanel(
  options: WindowOptions,
  work: (editor: Awaited<ReturnType<typeof openEditor>>, id: string) => Promise<void>,
): Promise<void> {
  if (!HOST_4.isInstalled) throw new Error(`the editor is needed: ${HOST_4.install}`);
  if (!CAN_SHOW_WINDOWS) throw new Error(`a window is needed: ${WINDOW_PROGRAMS}`);
  const editor = await openEditor(HOST_4, DEMO, options);
  try {
    await editor.ready(editor.main.id);
    editor.press('ctrl+alt+shift+p');
    const { id } = await editor.windowNamed('^Bellhand$');
    await sleep(700);
    await work(editor, id);
  } finally {
    await editor.stop();
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  console.log(await panelPicture());
  console.log(await themesPicture());
}
