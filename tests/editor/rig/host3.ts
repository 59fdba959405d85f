/** Version 3.2.3, as Debian packages it. */
import { execFile } from 'node:child_process';
import { chmod, mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { temporaryFolder } from './folders.ts';
import type { Host, WindowStage } from './host.ts';
import { onWhite } from './pictures.ts';
import { programNamed } from './programs.ts';
import { copyBuiltPlugin, copyPluginWithSteps, type HostRun, type Step } from './steps.ts';
import { LONGEST_MS, RESULTS, resultsIn, type Task, taskOf, tasksInTurn } from './tasks.ts';
import { together } from './together.ts';
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
  rounds,
  inConcertPitch,
  pictureOf,
  drawingOf: (score) => drawn(score),
  prepareWindow,
};

const WITHOUT_SCREEN = { QT_QPA_PLATFORM: 'offscreen' };

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

/** One sitting of the editor, in which one score is opened after the other. */
const inOneSitting = together(async (tasks: readonly Task[]): Promise<readonly Promise<HostRun>[]> => {
  const { folder, env } = await freshProfile();
  const plugin = join(folder, 'plugin');
  await copyPluginWithSteps(plugin);
  await writeFile(join(plugin, 'tasks.json'), JSON.stringify(tasks));
  const { stderr } = await execute(PROGRAM_3!, ['-p', join(plugin, 'steps.qml'), tasks[0]!.input], {
    env: { ...env, ...WITHOUT_SCREEN },
    timeout: Math.max(...tasks.map(({ milliseconds }) => milliseconds)),
    maxBuffer: 1e8,
  });
  return tasks.map(async (task) => ({
    results: await resultsIn(join(task.folder, RESULTS), stderr),
    temporary: join(folder, 'run'),
    path: (name: string) => join(task.folder, name),
    text: (name: string) => readFile(join(task.folder, name), 'utf8'),
  }));
});

async function run(input: string, steps: readonly Step[], milliseconds?: number): Promise<HostRun> {
  return inOneSitting(await taskOf(input, steps, milliseconds));
}

async function rounds(input: string, steps: readonly Step[], count: number): Promise<readonly HostRun[]> {
  const tasks = await tasksInTurn(input, steps, count, ({ folder }, name) => join(folder, name));
  return Promise.all(tasks.map(inOneSitting));
}

/** The command for it needs a window. */
async function inConcertPitch(input: string): Promise<string> {
  const saved = await run(input, [{ do: 'save', as: 'concert.mscx' }]);
  const path = saved.path('concert.mscx');
  const text = await saved.text('concert.mscx');
  await writeFile(path, text.replace('<Style>', '<Style><concertPitch>1</concertPitch>'));
  return path;
}

/** Scores as files of another kind, in one sitting. @param options of the program @returns where each is */
async function converted(scores: readonly string[], name: string, options: readonly string[] = []) {
  const { folder, env } = await freshProfile();
  const jobs = scores.map((score, i) => ({ in: score, out: join(folder, `${i}`, name) }));
  for (const { out } of jobs) await mkdir(dirname(out));
  await writeFile(join(folder, 'jobs.json'), JSON.stringify(jobs));
  await execute(PROGRAM_3!, [...options, '-j', join(folder, 'jobs.json')], {
    env: { ...env, ...WITHOUT_SCREEN },
    timeout: LONGEST_MS,
  });
  return jobs.map(({ out }) => out.replace('.', '-1.'));
}

async function pictureOf(score: string, resolution = 100, isTrimmed = false): Promise<string> {
  const options = ['-r', String(resolution), ...(isTrimmed ? ['-T', '20'] : [])];
  const [picture] = await converted([score], 'page.png', options);
  return onWhite(picture!);
}

const drawn = together(async (scores: readonly string[]) =>
  (await converted(scores, 'page.svg')).map((path) => readFile(path, 'utf8')),
);

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
