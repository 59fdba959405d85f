/** A real editor in a window of its own virtual screen, with mouse, keyboard and pictures. */
import { spawn, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { readFile, writeFile } from 'node:fs/promises';
import { constants, setPriority } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import type { Host } from './host.ts';
import { differingPixels, type Picture } from './pictures.ts';
import { programNamed } from './programs.ts';
import { endProcess, type Place, startScreen } from './screen.ts';

/** What a window takes besides the editor: without a manager, windows behave otherwise than at a user's. */
const PROGRAMS = ['Xvfb', 'openbox', 'xdotool'];

/** True where all of it is installed. */
export const CAN_SHOW_WINDOWS = PROGRAMS.every((program) => programNamed(program) !== null);

/** How to get it. */
export const WINDOW_PROGRAMS = 'apt-get install xvfb openbox xdotool';

/** In the main window of every version: between the palettes and the page. */
const BESIDE_PAGE = { x: 350, y: 700 };

/** The share of a core that an editor at rest uses at most, with its blinking cursor and the panel's looks. */
const AT_REST = 0.12;

/** How the editor is to look. */
export interface WindowOptions {
  readonly language?: string;
  readonly dark?: boolean;
  /** High contrast on this ground; version 4 only. */
  readonly contrast?: 'black' | 'white';
}

/** The plugin's entries, and the shortcut that each is given. */
export const SHORTCUTS = {
  'Bellhand.qml': 'Ctrl+Alt+Shift+P',
  'BellhandDock.qml': 'Ctrl+Alt+Shift+D',
  'BellhandAnnotate.qml': 'Ctrl+Alt+Shift+A',
  'BellhandClear.qml': 'Ctrl+Alt+Shift+C',
} as const;

/**
 * Ways of writing notes that have no keys of their own, by the editor's names for them: version 4 is given these keys,
 * version 3 has a menu.
 */
export const INPUT_MODES = {
  'note-input-rhythm': 'Ctrl+Alt+Shift+R',
  'note-input-realtime-manual': 'Ctrl+Alt+Shift+M',
  'note-input-timewise': 'Ctrl+Alt+Shift+I',
} as const;

/** A window on the screen. */
export type Shown = Place & { readonly id: string };

export interface EditorWindow {
  readonly folder: string;
  readonly display: string;
  /** The window with the score. */
  readonly main: Shown;
  /** Presses a key or a chord of keys in the window that has the focus, e.g. `ctrl+s`. */
  press(keys: string): void;
  /** What the main window's title says. */
  title(): string;
  click(x: number, y: number): void;
  /** Takes hold of what is at a place, moves it and holds it there before letting go. */
  drag(from: { x: number; y: number }, by: { x: number; y: number }, holdMilliseconds: number): Promise<void>;
  /** Waits until a window of this title is there. @returns its id and place */
  windowNamed(title: string, milliseconds?: number): Promise<Shown>;
  /** True while a window of this title is on the screen. */
  isShown(title: string): boolean;
  focus(id: string): void;
  /** Gives the score the keyboard, with a click beside its page, as a user does. */
  intoScore(): void;
  move(id: string, x: number, y: number): void;
  resize(id: string, width: number, height: number): void;
  /** What the whole screen shows at this moment, or a part of it. */
  picture(part?: Place): Picture;
  /** Looks at a part of the screen until it shows what it should. @throws Error when it does not within ten seconds */
  pictureWhere(part: Place, holds: (picture: Picture) => boolean): Promise<Picture>;
  /** What a part of the screen shows once it stands still: for a third of a second, and within ten seconds. */
  still(part?: Place): Promise<Picture>;
  /** Waits until the screen stands still, then gives a window the focus. @returns where it is: a panel moves aside once it is open */
  ready(id: string): Promise<Shown>;
  /** How much of the processor's time the editor has used, in milliseconds, and the part of it that draws and takes keys. */
  processorTime(): { readonly all: number; readonly main: number };
  /** Waits until the editor rests. @returns the processor's time that it took until then, in milliseconds */
  settled(work?: () => void): Promise<number>;
  /** What the editor wrote to its error output so far. */
  complaints(): string;
  isAlive(): boolean;
  /** Waits until the editor has ended by itself. @returns its exit status, or the signal that ended it; null when it goes on */
  ended(milliseconds?: number): Promise<number | string | null>;
  stop(): Promise<void>;
}

/** Opens a score (the text of a MusicXML file, or a path) in the editor with the plugin installed and loaded. */
export async function openEditor(
  host: Host,
  input: string,
  options: WindowOptions = {},
): Promise<EditorWindow> {
  const { folder, env, program, title } = await host.prepareWindow(options);
  let score = input;
  if (input.startsWith('<')) {
    score = join(folder, 'input.musicxml');
    await writeFile(score, input);
  }
  const screen = await startScreen(folder);
  const { display, picture } = screen;
  const onScreen = { ...env, DISPLAY: display };
  const manager = spawn('openbox', [], { env: onScreen, stdio: 'ignore' });
  const editor = spawn(program[0]!, [...program.slice(1), score], {
    env: onScreen,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  for (const { pid } of [process, screen.process, manager, editor]) answerAtOnce(pid!);
  let complaints = '';
  editor.stderr!.on('data', (chunk) => {
    complaints += chunk;
  });
  const tool = (...args: string[]): string => {
    const done = spawnSync('xdotool', args, { env: onScreen, encoding: 'utf8' });
    return done.status === 0 ? done.stdout.trim() : '';
  };
  const shownAs = (id: string): Shown => {
    // Its own account of where a window is counts the manager's title bar twice.
    const size = numbersIn(tool('getwindowgeometry', '--shell', id));
    tool('mousemove', '--window', id, '0', '0');
    const corner = numbersIn(tool('getmouselocation', '--shell'));
    return { id, x: corner.X!, y: corner.Y!, width: size.WIDTH!, height: size.HEIGHT! };
  };
  const windowNamed = async (title: string, milliseconds = 15_000) => {
    for (let i = 0; i < milliseconds / 100; i++) {
      if (editor.exitCode !== null || editor.signalCode !== null) break;
      const id = tool('search', '--onlyvisible', '--name', title).split('\n')[0];
      if (id) return shownAs(id);
      await sleep(100);
    }
    throw new Error(
      `no window "${title}" (${editor.signalCode ?? editor.exitCode ?? 'running'})\n${complaints}`,
    );
  };
  const still = async (part?: Place) => {
    let now = picture(part);
    await until(async () => {
      const before = now;
      await sleep(300);
      now = picture(part);
      return differingPixels(before, now) === 0;
    });
    return now;
  };
  const processorTime = () => {
    // The program's name stands in brackets and may hold anything; times are in hundredths of a second.
    const [, fields] = readFileSync(`/proc/${editor.pid}/stat`, 'utf8').split(') ') as [string, string];
    const [user, system] = fields.split(' ').slice(11, 13).map(Number) as [number, number];
    const [main] = readFileSync(`/proc/${editor.pid}/schedstat`, 'utf8').split(' ').map(Number) as [number];
    return { all: 10 * (user + system), main: main / 1e6 };
  };
  const click = (x: number, y: number) => void tool('mousemove', String(x), String(y), 'click', '1');
  const focus = (id: string) => void tool('windowactivate', '--sync', id);
  // A whole score takes its time to open.
  const main = await windowNamed(title(score), 60_000);
  return {
    folder,
    display,
    main,
    press: (keys) => void tool('key', '--clearmodifiers', keys),
    title: () => tool('getwindowname', main.id),
    click,
    drag: async ({ x, y }, by, holdMilliseconds) => {
      tool('mousemove', String(x), String(y));
      await sleep(200);
      tool('mousedown', '1');
      for (let part = 1; part <= 10; part++) {
        tool(
          'mousemove',
          String(Math.round(x + (part * by.x) / 10)),
          String(Math.round(y + (part * by.y) / 10)),
        );
        await sleep(50);
      }
      await sleep(holdMilliseconds);
      tool('mouseup', '1');
    },
    windowNamed,
    isShown: (name) => tool('search', '--onlyvisible', '--name', name) !== '',
    move: (id, x, y) => void tool('windowmove', '--sync', id, String(x), String(y)),
    resize: (id, width, height) => void tool('windowsize', id, String(width), String(height)),
    focus,
    intoScore: () => {
      focus(main.id);
      click(main.x + BESIDE_PAGE.x, main.y + BESIDE_PAGE.y);
    },
    picture,
    pictureWhere: async (part, holds) => {
      let now = picture(part);
      const isSeen = await until(() => {
        now = picture(part);
        return holds(now);
      });
      if (!isSeen) throw new Error('the screen does not come to show what it should');
      return now;
    },
    still,
    ready: async (id) => {
      await sleep(1000);
      await still();
      tool('windowactivate', '--sync', id);
      return shownAs(id);
    },
    processorTime,
    settled: async (work) => {
      const start = processorTime().all;
      work?.();
      let before = start;
      for (let quiet = 0; quiet < 3; ) {
        await sleep(200);
        const now = processorTime().all;
        quiet = now - before < AT_REST * 200 ? quiet + 1 : 0;
        before = now;
      }
      return before - start;
    },
    complaints: () => complaints,
    isAlive: () => editor.exitCode === null && editor.signalCode === null,
    ended: async (milliseconds = 10_000) => {
      for (let i = 0; i < milliseconds / 100 && editor.exitCode === null && editor.signalCode === null; i++)
        await sleep(100);
      return editor.signalCode ?? editor.exitCode;
    },
    stop: async () => {
      for (const child of [editor, manager, screen.process]) await endProcess(child);
    },
  };
}

/** Asks again and again whether something holds. @returns whether it did in time */
export async function until(
  holds: () => boolean | Promise<boolean>,
  milliseconds = 10_000,
): Promise<boolean> {
  for (const end = Date.now() + milliseconds; Date.now() < end; await sleep(100))
    if (await holds()) return true;
  return false;
}

/** Lets a program go before others: at a user's, an editor answers at once, whatever tests run beside it. Not everybody may. */
function answerAtOnce(pid: number): void {
  try {
    setPriority(pid, constants.priority.PRIORITY_HIGH);
  } catch {
    // It answers as quickly as the machine lets it.
  }
}

/** Reads what the panel or a save left, waiting for it. */
export async function awaitFile(
  path: string,
  holds: (text: string) => boolean,
  milliseconds = 5000,
): Promise<string> {
  const until = Date.now() + milliseconds;
  let text = '';
  while (Date.now() < until) {
    text = await readFile(path, 'utf8').catch(() => '');
    if (holds(text)) return text;
    await sleep(100);
  }
  return text;
}

/** Lines such as `X=12`. */
function numbersIn(lines: string): { readonly [name: string]: number } {
  return Object.fromEntries(
    lines.split('\n').map((line) => [line.split('=')[0]!, Number(line.split('=')[1])]),
  );
}
