/** Version 4 in one sitting: annotated, cleared, undone, saved, closed and opened again, round after round, and quit in the end. */
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, describe, expect, it } from 'vitest';
import { MARK_PREFIX } from '../../core/marks/annotation.ts';
import { removeFolders } from './rig/folders.ts';
import { HOST_4 } from './rig/host4.ts';
import { hornScore, open, stopped } from './rig/music.ts';
import { awaitFile, CAN_SHOW_WINDOWS, type EditorWindow, openEditor, until } from './rig/window.ts';

afterAll(removeFolders);

/** An element that the editor would free twice brought it down in the second to the sixth of such rounds. */
const ROUNDS = Number(process.env.BELLHAND_ROUNDS ?? 6);
/** The score that was open last, on the page that version 4 shows when none is. */
const RECENT = { x: 624, y: 370 };
const MILLISECONDS_A_ROUND = 12_000;

describe.skipIf(!HOST_4.isInstalled || !CAN_SHOW_WINDOWS)('rounds in one window of version 4', () => {
  it(
    'bring it down in none of them, nor when it quits',
    async () => {
      const score = hornScore([[stopped('C5'), stopped('Eb4'), open('G4'), stopped('C3')]]);
      const path = (await HOST_4.run(score, [{ do: 'save', as: 'part.mscx' }])).path('part.mscx');
      const window = await openEditor(HOST_4, path);
      try {
        await window.ready(window.main.id);
        window.intoScore();
        for (let round = 1; round <= ROUNDS; round++) {
          await marked(window, path, round);
          if (round < ROUNDS) await reopened(window);
        }
        window.press('ctrl+q');
        expect(await window.ended()).toBe(0);
      } finally {
        await window.stop();
      }
    },
    ROUNDS * MILLISECONDS_A_ROUND + 20_000,
  );
});

/** Annotates, clears and takes the clearing back, and saves after each until the file is so. */
async function marked(window: EditorWindow, path: string, round: number): Promise<void> {
  for (const { keys, marks } of [
    { keys: 'ctrl+alt+shift+a', marks: 3 },
    { keys: 'ctrl+alt+shift+c', marks: 0 },
    { keys: 'ctrl+z', marks: 3 },
  ]) {
    window.press(keys);
    const isSaved = await until(async () => {
      await sleep(300);
      window.press('ctrl+s');
      const text = await awaitFile(path, (saved) => saved.includes('</museScore>'));
      return marksIn(text) === marks;
    });
    expect(isSaved, `round ${round}, ${keys}: ${window.complaints().slice(-300)}`).toBe(true);
  }
}

async function reopened(window: EditorWindow): Promise<void> {
  const title = window.title();
  window.press('ctrl+w');
  await awaitTitle(window, (now) => now !== title);
  await sleep(800);
  window.click(window.main.x + RECENT.x, window.main.y + RECENT.y);
  await awaitTitle(window, (now) => now === title);
  await sleep(300);
  window.intoScore();
}

async function awaitTitle(window: EditorWindow, holds: (title: string) => boolean): Promise<void> {
  for (let i = 0; i < 60 && !holds(window.title()); i++) await sleep(100);
  expect(holds(window.title()), `title: ${window.title()}`).toBe(true);
}

function marksIn(saved: string): number {
  return saved.split(MARK_PREFIX).length - 1;
}
