/** What the panel costs somebody who types notes, in the processor's time of the thread that draws and takes keys. */
import { setTimeout as sleep } from 'node:timers/promises';
import { HOSTS, type Host } from '../editor/rig/host.ts';
import { longPart } from '../editor/rig/music.ts';
import { skipLoudly } from '../editor/rig/programs.ts';
import { CAN_SHOW_WINDOWS, type EditorWindow, openEditor, WINDOW_PROGRAMS } from '../editor/rig/window.ts';
import type { BenchRow } from './benchRow.ts';

const NOTES = 2000;
/** A part in which the editor itself lays out as much as in a piece of music. */
const KEYS = ['c', 'e', 'd', 'f', 'e', 'g', 'f', 'a', 'g', 'b'];
/** As a quick writer types. */
const KEY_EVERY_MS = 300;
/** Until what was done before is over. */
const REST_MS = 2000;
/** Turn about without and with the panel, so that a slow stretch of the machine hits both; of fewer, chance alone makes a tenth. */
const TURNS = 12;
const MOST_RATIO = 1.1;

/** A row for every version of the editor that is installed. */
export async function typingBench(): Promise<BenchRow[]> {
  const rows: BenchRow[] = [];
  if (!CAN_SHOW_WINDOWS) skipLoudly('the bench of typing', WINDOW_PROGRAMS);
  for (const host of HOSTS) {
    if (!host.isInstalled) skipLoudly(`the bench of typing in ${host.version}`, host.install);
    else if (CAN_SHOW_WINDOWS) rows.push(await rowIn(host));
  }
  return rows;
}

async function rowIn(host: Host): Promise<BenchRow> {
  const window = await openEditor(host, longPart(NOTES));
  const alone: number[] = [];
  const beside: number[] = [];
  try {
    await window.ready(window.main.id);
    await typed(window);
    for (let turn = 0; turn < TURNS; turn++) {
      alone.push(...(await typed(window)));
      window.press('ctrl+alt+shift+p');
      const panel = await window.ready((await window.windowNamed('^Bellhand$')).id);
      await sleep(REST_MS);
      beside.push(...(await typed(window)));
      window.focus(panel.id);
      window.press('Escape');
      await sleep(REST_MS);
    }
  } finally {
    await window.stop();
  }
  const ratio = median(beside) / median(alone);
  return {
    name: `editor ${host.version}: a key while notes are typed beside the panel`,
    value: median(beside),
    unit: 'ms',
    ratio,
    baseline: `without the panel, ${median(alone).toFixed(0)} ms; the median of ${alone.length} keys`,
    limit: `ratio at most ${MOST_RATIO}`,
    ok: ratio <= MOST_RATIO,
  };
}

/** Writes notes over the first ones. @returns what each key cost, in milliseconds */
async function typed(window: EditorWindow): Promise<number[]> {
  window.intoScore();
  for (const key of ['Escape', 'Escape', 'ctrl+Home', 'Right', 'n', '5']) {
    window.press(key);
    await sleep(200);
  }
  await sleep(REST_MS);
  const costs: number[] = [];
  for (const key of KEYS) {
    const start = window.processorTime().main;
    window.press(key);
    await sleep(KEY_EVERY_MS);
    costs.push(window.processorTime().main - start);
  }
  window.press('Escape');
  return costs;
}

function median(values: readonly number[]): number {
  return values.slice().sort((a, b) => a - b)[Math.floor(values.length / 2)]!;
}
