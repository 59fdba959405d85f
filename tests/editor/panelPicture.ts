/** Makes the README's picture of the panel from the real editor: `tsx tests/editor/panelPicture.ts`, in `npm run pictures`. */
import { execFile } from 'node:child_process';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { HOST_3 } from './rig/host3.ts';
import { CAN_SHOW_WINDOWS, openEditor, WINDOW_PROGRAMS } from './rig/window.ts';

const DEMO = fileURLToPath(new URL('../../plugin/batch/demo/low-water.musicxml', import.meta.url));
const PICTURE = fileURLToPath(new URL('../../plugin/editor/panel.png', import.meta.url));

/** Opens the demo part, annotates it from the panel and takes the picture. @returns where it was put */
export async function panelPicture(): Promise<string> {
  if (!HOST_3.isInstalled) throw new Error(`the editor is needed: ${HOST_3.install}`);
  if (!CAN_SHOW_WINDOWS) throw new Error(`a window is needed: ${WINDOW_PROGRAMS}`);
  const editor = await openEditor(HOST_3, DEMO);
  try {
    const { main } = editor;
    await editor.ready(main.id);
    editor.press('ctrl+alt+shift+p');
    const { id } = await editor.windowNamed('^Bellhand$');
    await sleep(700);
    editor.move(id, main.x + main.width - 430, main.y + 130);
    editor.focus(id);
    editor.press('Return');
    await sleep(1500);
    const whole = join(editor.folder, 'whole.png');
    editor.picture(whole, main);
    await promisify(execFile)('convert', [
      whole,
      '-colors',
      '96',
      '-define',
      'png:compression-level=9',
      '-strip',
      PICTURE,
    ]);
    return PICTURE;
  } finally {
    await editor.stop();
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) console.log(await panelPicture());
