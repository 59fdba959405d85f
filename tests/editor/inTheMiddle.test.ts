/**
 * Whatever a writer is in the middle of, the panel's looks leave it alone: the notes and texts that come out, what undo
 * takes back, the selection and everything on the screen are as without the panel. What is expected holds without it too:
 * with BELLHAND_WITHOUT_PANEL set, the panel stays closed.
 */
import { stat } from 'node:fs/promises';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, expect, it } from 'vitest';
import { removeFolders } from './rig/folders.ts';
import type { Host } from './rig/host.ts';
import { inEveryWindow } from './rig/inEveryHost.ts';
import { hornScore, open, rest, stopped } from './rig/music.ts';
import { differingPixels, placeOfColour } from './rig/pictures.ts';
import { awaitFile, type EditorWindow, INPUT_MODES, openEditor } from './rig/window.ts';

afterAll(removeFolders);

const PART = hornScore([
  [open('C5'), stopped('C5'), open('G4'), open('E4')],
  [rest(4)],
  [rest(4)],
  [rest(4)],
]);
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
const LOOKS_MS = 1100;

interface Outcome {
  readonly pitches: readonly number[];
  readonly texts: readonly string[];
}

/** Something that a writer may be in the middle of. */
interface Middle {
  readonly name: string;
  /** What is done, with a pause in the middle. */
  readonly act: (writer: Writer) => Promise<void>;
  /** How many steps of the undo history it is, found without the panel. */
  readonly steps: number;
  readonly comesOut: (outcome: Outcome) => void;
}

const START: Outcome = { pitches: [65, 65, 60, 57], texts: [] };
const pitchesAre =
  (...pitches: number[]) =>
  (outcome: Outcome) =>
    expect(outcome.pitches).toEqual(pitches);

const MIDDLES: readonly Middle[] = [
  {
    name: 'dragging a note',
    act: async (writer) => {
      await writer.firstNote();
      await writer.dragSelected(-26);
    },
    steps: 1,
    comesOut: ({ pitches: [first, ...others] }) => {
      expect(first).toBeGreaterThan(65);
      expect(others).toEqual([65, 60, 57]);
    },
  },
  {
    name: 'entering notes',
    act: async (writer) => {
      await writer.firstNote();
      await writer.type('ctrl+Right', 'n', '5', 'c');
      await writer.pause();
      await writer.type('d');
      await writer.pause();
      await writer.type('e', 'Escape', 'Escape');
    },
    steps: 3,
    comesOut: ({ pitches }) => {
      expect(pitches.slice(0, 4)).toEqual(START.pitches);
      const [c, d, e, ...more] = pitches.slice(4);
      expect([d! - c!, e! - d!, more]).toEqual([2, 2, []]);
    },
  },
  {
    name: 'giving notes other pitches',
    act: async (writer) => {
      await writer.firstNote();
      await writer.type('ctrl+shift+i', 'd');
      await writer.pause();
      await writer.type('e', 'Escape', 'Escape');
    },
    steps: 2,
    comesOut: ({ pitches: [first, second, ...others] }) => {
      expect(second! - first!).toBe(2);
      expect(others).toEqual([60, 57]);
    },
  },
  {
    name: 'writing a rhythm',
    act: async (writer) => {
      await writer.emptyBar();
      await writer.inMode('note-input-rhythm');
      await writer.type('5');
      await writer.pause();
      await writer.type('4', '4', 'Escape', 'Escape');
    },
    steps: 3,
    comesOut: ({ pitches }) => {
      const [first, ...more] = pitches.slice(4);
      expect(pitches.slice(0, 4)).toEqual(START.pitches);
      expect(more).toEqual([first, first]);
    },
  },
  {
    name: 'inserting notes',
    act: async (writer) => {
      await writer.emptyBar();
      await writer.inMode('note-input-timewise');
      await writer.type('5', 'c');
      await writer.pause();
      await writer.type('d', 'Escape', 'Escape');
    },
    steps: 2,
    comesOut: ({ pitches }) => {
      expect(pitches.slice(0, 4)).toEqual(START.pitches);
      const [c, d, ...more] = pitches.slice(4);
      expect([d! - c!, more]).toEqual([2, []]);
    },
  },
  {
    // Notes come from a MIDI keyboard alone: none is here, so the editor waits.
    name: 'waiting for notes in real time',
    act: async (writer) => {
      await writer.emptyBar();
      await writer.inMode('note-input-realtime-manual');
      await writer.pause();
      await writer.type('Escape', 'Escape');
      await writer.inMode('note-input');
      await writer.type('Escape', 'Escape');
    },
    steps: 0,
    comesOut: pitchesAre(...START.pitches),
  },
  {
    name: 'writing a text',
    act: async (writer) => {
      await writer.firstNote();
      await writer.type('ctrl+t', ...'dol');
      await writer.pause({ isStill: false });
      await writer.type(...'ce', 'Escape', 'Escape');
    },
    steps: 1,
    comesOut: ({ texts }) => expect(texts).toEqual(['dolce']),
  },
  {
    name: 'having a stretch selected',
    act: async (writer) => {
      await writer.firstNote();
      await writer.type('shift+Right', 'shift+Right');
      await writer.pause();
      await writer.type('Up');
    },
    steps: 1,
    comesOut: pitchesAre(66, 66, 61, 57),
  },
  {
    name: 'having a note selected',
    act: async (writer) => {
      await writer.firstNote();
      await writer.type('Right');
      await writer.pause();
      await writer.type('Up');
    },
    steps: 1,
    comesOut: pitchesAre(65, 66, 60, 57),
  },
  {
    name: 'listening',
    act: async (writer) => {
      await writer.firstNote();
      await writer.type('space');
      await writer.pause({ isStill: false });
      await writer.type('space');
      await writer.firstNote();
      await writer.type('Up');
    },
    steps: 1,
    comesOut: pitchesAre(66, 65, 60, 57),
  },
];

inEveryWindow('a writer in the middle of something', (host) => {
  it.each(['as written', 'in Concert Pitch'])(
    'is left alone, %s',
    async (shown) => {
      const isConcert = shown === 'in Concert Pitch';
      const path = isConcert
        ? await host.inConcertPitch(PART)
        : (await host.run(PART, [{ do: 'save', as: 'part.mscx' }])).path('part.mscx');
      const window = await openEditor(host, path);
      try {
        await window.ready(window.main.id);
        window.intoScore();
        await sleep(500);
        const writer = new Writer(host, window, path);
        if (process.env.BELLHAND_WITHOUT_PANEL === undefined) {
          window.press('ctrl+alt+shift+p');
          const panel = await window.ready((await window.windowNamed('^Bellhand$')).id);
          window.move(panel.id, 950, 200);
        }
        window.intoScore();
        await sleep(LOOKS_MS);
        await writer.expectToSave(false, 'looking');
        for (const middle of isConcert ? MIDDLES.slice(0, 2) : MIDDLES) await leavesAlone(writer, middle);
      } finally {
        await window.stop();
      }
    },
    180_000,
  );
});

async function leavesAlone(writer: Writer, { name, act, steps, comesOut }: Middle): Promise<void> {
  await act(writer);
  if (steps > 0) await writer.expectToSave(true, name);
  expect(writer.differences, `${name}: what changed on the screen`).toEqual([]);
  try {
    comesOut(await writer.saved());
    for (let step = 1; step <= steps; step++) {
      await writer.type('ctrl+z');
      if (step === steps - 1) expect(await writer.saved()).not.toEqual(START);
    }
    expect(await writer.saved()).toEqual(START);
    await writer.expectToSave(false, 'what was saved');
  } catch (error) {
    throw new Error(name, { cause: error });
  }
}

/** Works in the editor's window with keys and mouse. */
class Writer {
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
