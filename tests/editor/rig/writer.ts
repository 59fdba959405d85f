/** A writer at work in the editor's window, with keys and mouse: what is on the screen, and what comes out in the end. */
import { stat } from 'node:fs/promises';
import { setTimeout as sleep } from 'node:timers/promises';
import { expect } from 'vitest';
import type { Host } from './host.ts';
import { differingPixels, placeOfColour } from './pictures.ts';
import { awaitFile, type EditorWindow, INPUT_MODES } from './window.ts';

/** What a selected note is drawn in. */
const SELECTED = { 3: '#2E86AB', 4: '#0065BF' } as const;
/** What the panel, which is moved aside, never covers. */
const UNCOVERED = { x: 230, y: 130, width: 700, height: 500 };
/** The arrow in version 3's main window, and where in its menu a way to write notes stands, from 1. */
const MENU_OF_MODES = { x: 55, y: 80 };
const PLACE_IN_MENU = {
  'note-input': 2,
  'note-input-rhythm': 4,
  'note-input-realtime-manual': 6,
  'note-input-timewise': 7,
} as const;
/** Time for several looks, and for the list to be made anew. */
export const LOOKS_MS = 1100;

/** What the editor saved. */
export interface Outcome {
  readonly pitches: readonly number[];
  readonly texts: readonly string[];
}

/** Works in the editor's window with keys and mouse. */
export class Writer {
  private readonly host: Host;
  private readonly window: EditorWindow;
  private readonly path: string;
  /** How many pixels changed while the writer paused, wherever any did. */
  readonly differences: number[] = [];

  constructor(host: Host, window: EditorWindow, path: string) {
    this.host = host;
    this.window = window;
    this.path = path;
  }

  /**
   * Version 3 writes a star beside the title of a score with something to save. Version 4 draws it into its window, where
   * nothing but a picture tells.
   */
  async expectToSave(isSomething: boolean, message: string): Promise<void> {
    if (this.host.major === 4) return;
    const isStarred = () => this.window.title().includes('*');
    await expect.poll(isStarred, { timeout: 4000, interval: 200, message }).toBe(isSomething);
  }

  async type(...keys: readonly string[]): Promise<void> {
    for (const key of keys) {
      this.window.press(key);
      await sleep(this.host.major === 3 ? 90 : 130);
    }
  }

  async emptyBar(): Promise<void> {
    await this.firstNote();
    await this.type('ctrl+Right');
  }

  /** Begins to write notes in one of the editor's ways, which have keys in version 4 and a menu in version 3. */
  async inMode(mode: keyof typeof PLACE_IN_MENU): Promise<void> {
    if (mode === 'note-input' && this.host.major === 4) await this.type('n');
    else if (mode !== 'note-input' && this.host.major === 4) await this.type(INPUT_MODES[mode].toLowerCase());
    else {
      const { x, y } = this.window.main;
      this.window.click(x + MENU_OF_MODES.x, y + MENU_OF_MODES.y);
      await sleep(500);
      await this.type(...Array.from({ length: PLACE_IN_MENU[mode] }, () => 'Down'), 'Return');
    }
  }

  async firstNote(): Promise<void> {
    await this.type('Escape', 'ctrl+Home', 'Right');
    // A selection that has just moved is drawn once more.
    await sleep(200);
  }

  /** Waits while the panel looks; nothing may change on the screen but what moves by itself. */
  async pause({ isStill = true } = {}): Promise<void> {
    await sleep(300);
    const before = isStill ? await this.window.still(UNCOVERED) : null;
    await sleep(LOOKS_MS);
    if (!before) return;
    const pixels = differingPixels(before, this.window.picture(UNCOVERED));
    if (pixels > 0) this.differences.push(pixels);
  }

  /** Takes the selected note up or down, and holds it while the panel looks. */
  async dragSelected(pixels: number): Promise<void> {
    const place = placeOfColour(await this.window.still(UNCOVERED), SELECTED[this.host.major]);
    if (!place) throw new Error('no selected note on the screen');
    const from = { x: UNCOVERED.x + place.x, y: UNCOVERED.y + place.y };
    await this.window.drag(from, { x: 0, y: pixels }, LOOKS_MS);
    await sleep(200);
  }

  /** What the editor saves now. */
  async saved(): Promise<Outcome> {
    const before = (await stat(this.path)).mtimeMs;
    await this.type('ctrl+s');
    for (let i = 0; i < 10 && (await stat(this.path)).mtimeMs === before; i++) await sleep(100);
    const text = await awaitFile(this.path, (saved) => saved.includes('</museScore>'));
    return {
      pitches: Array.from(text.matchAll(/<pitch>(\d+)<\/pitch>/g), ([, pitch]) => Number(pitch)),
      texts: Array.from(text.matchAll(/<StaffText>[\s\S]*?<text>([^<]*)<\/text>/g), ([, words]) => words!),
    };
  }
}
