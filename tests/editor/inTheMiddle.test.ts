/**
 * Whatever a writer is in the middle of, the panel's looks leave it alone: the notes and texts that come out, what undo
 * takes back, the selection and everything on the screen are as without the panel. What is expected holds without it too:
 * with BELLHAND_WITHOUT_PANEL set, the panel stays closed.
 */
import { setTimeout as sleep } from 'node:timers/promises';
import { afterAll, expect, it } from 'vitest';
import { removeFolders } from './rig/folders.ts';
import { inEveryWindow } from './rig/inEveryHost.ts';
import { hornScore, open, rest, stopped } from './rig/music.ts';
import { openEditor } from './rig/window.ts';
import { LOOKS_MS, type Outcome, Writer } from './rig/writer.ts';

afterAll(removeFolders);

const PART = hornScore([
  [open('C5'), stopped('C5'), open('G4'), open('E4')],
  [rest(4)],
  [rest(4)],
  [rest(4)],
]);

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
