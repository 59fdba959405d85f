/** Version 3.2.3, as Debian packages it. */
import { execFile } from 'node:child_process';
import { chmod, mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { temporaryFolder } from './folders.ts';
import type { Host, WindowStage } from './host.ts';
import { onWhite } from './pictures.ts';
import { programNamed } from './programs.ts';
import { copyBuiltPlugin, type HostRun, resultsIn, type Step } from './steps.ts';
import { SHORTCUTS, type WindowOptions } from './window.ts';

const execute = promisify(execFile);

/** Where the program is; null where it is not installed. */
export const PROGRAM_3 = programNamed('mscore3', 'musescore3');

export const HOST_3: Host = {
  version: '3.2.3',
  major: 3,
  isInstalled: PROGRAM_3 !== null,
  install: 'apt-get install --no-install-recommends musescore3',
  run,
  inConcertPitch,
  pictureOf,
  drawingOf,
  prepareWindow,
};

/** A fresh home for the editor. */
export async function freshProfile(): Promise<{ readonly folder: string; readonly env: NodeJS.ProcessEnv }> {
  const folder = await temporaryFolder('host');
  for (const name of ['config', 'data', 'run']) await mkdir(join(folder, name));
  await chmod(join(folder, 'run'), 0o700);
  return {
    folder,
    env: {
      PATH: process.env.PATH,
      LANG: 'C.UTF-8',
      HOME: folder,
      XDG_CONFIG_HOME: join(folder, 'config'),
      XDG_DATA_HOME: join(folder, 'data'),
      XDG_RUNTIME_DIR: join(folder, 'run'),
      // The editor's socket for finding an instance that already runs lies here: none of ours finds another's.
      TMPDIR: join(folder, 'run'),
    },
  };
}

async function run(input: string, steps: readonly Step[], milliseconds = 60_000): Promise<HostRun> {
  const { folder, env } = await freshProfile();
  const plugin = join(folder, 'plugin');
  await copyBuiltPlugin(plugin);
  let score = input;
  if (input.startsWith('<')) {
    score = join(folder, 'input.musicxml');
    await writeFile(score, input);
  }
  await writeFile(join(plugin, 'steps.json'), JSON.stringify({ folder, steps }));
  const { stderr } = await execute(PROGRAM_3!, ['-p', join(plugin, 'steps.qml'), score], {
    env: { ...env, QT_QPA_PLATFORM: 'offscreen' },
    timeout: milliseconds,
    maxBuffer: 1e8,
  });
  const answer = await readFile(join(folder, 'results.json'), 'utf8').catch(() => '');
  return {
    folder,
    results: resultsIn(answer, stderr),
    path: (name) => join(folder, name),
    text: (name) => readFile(join(folder, name), 'utf8'),
  };
}

/** The command for it needs a window. */
async function inConcertPitch(input: string): Promise<string> {
  const saved = await run(input, [{ do: 'save', as: 'concert.mscx' }]);
  const path = saved.path('concert.mscx');
  const text = await saved.text('concert.mscx');
  await writeFile(path, text.replace('<Style>', '<Style><concertPitch>1</concertPitch>'));
  return path;
}

async function pictureOf(score: string, resolution = 100, isTrimmed = false): Promise<string> {
  const { folder, env } = await freshProfile();
  await execute(
    PROGRAM_3!,
    ['-r', String(resolution), ...(isTrimmed ? ['-T', '20'] : []), '-o', join(folder, 'page.png'), score],
    {
      env: { ...env, QT_QPA_PLATFORM: 'offscreen' },
      timeout: 60_000,
    },
  );
  return onWhite(join(folder, 'page-1.png'));
}

async function drawingOf(score: string): Promise<string> {
  const { folder, env } = await freshProfile();
  await execute(PROGRAM_3!, ['-o', join(folder, 'page.svg'), score], {
    env: { ...env, QT_QPA_PLATFORM: 'offscreen' },
    timeout: 60_000,
  });
  return readFile(join(folder, 'page-1.svg'), 'utf8');
}

async function prepareWindow({ language = 'en', dark = false }: WindowOptions): Promise<WindowStage> {
  const { folder, env } = await freshProfile();
  const plugin = join(folder, 'bellhand');
  await copyBuiltPlugin(plugin);
  await mkdir(join(folder, 'config/MuseScore'), { recursive: true });
  await mkdir(join(folder, 'data/MuseScore/MuseScore3'), { recursive: true });
  await writeFile(join(folder, 'config/MuseScore/MuseScore3.ini'), settings(language, dark));
  await writeFile(join(folder, 'data/MuseScore/MuseScore3/plugins.xml'), pluginList(plugin));
  return { folder, env, program: [PROGRAM_3!, '-m', '-w'], title: () => 'MuseScore 3' };
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
