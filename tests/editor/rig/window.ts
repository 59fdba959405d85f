/** The real editor in a window of its own virtual screen, with mouse, keyboard and pictures. */
import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { cp, mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { freshProfile, PROGRAM_3 } from './host3.ts';
import { differingPixels } from './pictures.ts';
import { programNamed } from './programs.ts';
import { builtPlugin } from './steps.ts';

/** True where everything a window test needs is installed. */
export const CAN_SHOW_WINDOWS =
  PROGRAM_3 !== null && ['Xvfb', 'xdotool', 'import'].every((program) => programNamed(program) !== null);

/** Plugins by their file, and the shortcut each is given. */
const SHORTCUTS: { readonly [plugin: string]: string } = {
  'Bellhand.qml': 'Ctrl+Alt+Shift+P',
  'BellhandDock.qml': 'Ctrl+Alt+Shift+D',
  'BellhandAnnotate.qml': 'Ctrl+Alt+Shift+A',
  'BellhandClear.qml': 'Ctrl+Alt+Shift+C',
};

/** In pixels of the screen. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface EditorWindow {
  readonly folder: string;
  readonly display: string;
  /** Presses a key or a chord of keys in the window that has the focus, e.g. `ctrl+s`. */
  press(keys: string): void;
  click(x: number, y: number): void;
  /** Waits until a window of this title is there. @returns its id and place */
  windowNamed(title: string): Promise<Place & { readonly id: string }>;
  focus(id: string): void;
  move(id: string, x: number, y: number): void;
  /** A picture of the whole screen, or of a part of it, as a PNG. */
  picture(path: string, part?: Place): void;
  /** Waits until the screen stands still, then gives a window the focus. */
  ready(id: string): Promise<void>;
  /** What the editor wrote to its error output so far. */
  complaints(): string;
  isAlive(): boolean;
  stop(): Promise<void>;
}

/** Opens a score (the text of a MusicXML file, or a path) in the editor with the plugin installed and loaded. */
export async function openEditor(
  input: string,
  options: { readonly language?: string; readonly dark?: boolean } = {},
): Promise<EditorWindow> {
  const { folder, env } = await freshProfile();
  const plugin = join(folder, 'bellhand');
  await cp(await builtPlugin(), plugin, { recursive: true });
  let score = input;
  if (input.startsWith('<')) {
    score = join(folder, 'input.musicxml');
    await writeFile(score, input);
  }
  await mkdir(join(folder, 'config/MuseScore'), { recursive: true });
  await mkdir(join(folder, 'data/MuseScore/MuseScore3'), { recursive: true });
  await writeFile(
    join(folder, 'config/MuseScore/MuseScore3.ini'),
    settings(options.language ?? 'en', options.dark ?? false),
  );
  await writeFile(join(folder, 'data/MuseScore/MuseScore3/plugins.xml'), pluginList(plugin));
  const { screen, display } = await startScreen();
  const onScreen = { ...env, DISPLAY: display };
  const editor = spawn(PROGRAM_3!, ['-m', '-w', score], {
    env: onScreen,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let complaints = '';
  editor.stderr!.on('data', (chunk) => {
    complaints += chunk;
  });
  const tool = (...args: string[]): string => {
    const done = spawnSync('xdotool', args, { env: onScreen, encoding: 'utf8' });
    return done.status === 0 ? done.stdout.trim() : '';
  };
  const picture = (path: string, part?: Place) => {
    const crop = part ? ['-crop', `${part.width}x${part.height}+${part.x}+${part.y}`, '+repage'] : [];
    const taken = spawnSync('import', ['-window', 'root', ...crop, path], {
      env: onScreen,
      encoding: 'utf8',
    });
    if (taken.status !== 0) throw new Error(taken.stderr);
  };
  const windowNamed = async (title: string) => {
    for (let i = 0; i < 150; i++) {
      if (editor.exitCode !== null || editor.signalCode !== null) break;
      const id = tool('search', '--onlyvisible', '--name', title).split('\n')[0];
      if (id) {
        const place = Object.fromEntries(
          tool('getwindowgeometry', '--shell', id)
            .split('\n')
            .map((line) => line.split('=')),
        );
        return {
          id,
          x: Number(place.X),
          y: Number(place.Y),
          width: Number(place.WIDTH),
          height: Number(place.HEIGHT),
        };
      }
      await sleep(100);
    }
    throw new Error(
      `no window "${title}" (${editor.signalCode ?? editor.exitCode ?? 'running'})\n${complaints}`,
    );
  };
  return {
    folder,
    display,
    press: (keys) => void tool('key', '--clearmodifiers', keys),
    click: (x, y) => void tool('mousemove', String(x), String(y), 'click', '1'),
    windowNamed,
    move: (id, x, y) => void tool('windowmove', '--sync', id, String(x), String(y)),
    focus: (id) => void tool('windowfocus', '--sync', id),
    picture,
    ready: async (id) => {
      const [one, other] = [join(folder, 'still-1.png'), join(folder, 'still-2.png')];
      await sleep(1000);
      for (let i = 0; i < 30; i++) {
        picture(one);
        await sleep(300);
        picture(other);
        if ((await differingPixels(one, other)) === 0) break;
      }
      tool('windowfocus', '--sync', id);
    },
    complaints: () => complaints,
    isAlive: () => editor.exitCode === null && editor.signalCode === null,
    stop: async () => {
      await ended(editor);
      await ended(screen);
    },
  };
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

async function startScreen(): Promise<{ screen: ChildProcess; display: string }> {
  const screen = spawn('Xvfb', ['-displayfd', '3', '-screen', '0', '1400x900x24', '-nolisten', 'tcp'], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
  });
  const number = await new Promise<string>((resolve, reject) => {
    screen.stdio[3]!.once('data', (chunk) => resolve(String(chunk).trim()));
    screen.once('exit', () => reject(new Error('Xvfb did not start')));
  });
  return { screen, display: `:${number}` };
}

async function ended(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  await new Promise<void>((resolve) => {
    child.once('exit', () => resolve());
    child.kill('SIGKILL');
  });
}

function settings(language: string, dark: boolean): string {
  return `[application]
startup\\firstStart=false

[ui]
application\\startup\\showSplashScreen=false
application\\startup\\showStartCenter=false
application\\startup\\showTours=false
application\\startup\\checkUpdate=false
application\\startup\\checkExtensionsUpdate=false
application\\language=${language}
application\\globalStyle=${dark ? 0 : 1}
`;
}

function pluginList(folder: string): string {
  const plugins = Object.entries(SHORTCUTS).map(
    ([file, keys]) =>
      `<Plugin><path>${join(folder, file)}</path><load>1</load><SC><key>plugin</key><seq>${keys}</seq></SC><version>1.0</version><description>d</description></Plugin>`,
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n<museScore version="3.01">${plugins.join('')}</museScore>\n`;
}
