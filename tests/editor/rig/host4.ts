/**
 * Version 4.6.5, unpacked where the environment's HOST46 says. Plugins cannot save there: what a step saves is what the
 * editor itself writes at the end of a run that takes the steps up to it.
 */
import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chmod, mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { basename, dirname, extname, join } from 'node:path';
import { promisify } from 'node:util';
import { temporaryFolder } from './folders.ts';
import type { Host, WindowStage } from './host.ts';
import { onWhite } from './pictures.ts';
import { copyBuiltPlugin, copyPluginWithSteps, type HostRun, type Step } from './steps.ts';
import { LONGEST_MS, RESULTS, resultsIn, type Task, taskOf, tasksInTurn } from './tasks.ts';
import { together } from './together.ts';
import { INPUT_MODES, SHORTCUTS, type WindowOptions } from './window.ts';

const execute = promisify(execFile);

/** Where the program is, or would be. */
export const PROGRAM_4 = join(process.env.HOST46 ?? '', 'inst/bin/mscore');

export const HOST_4: Host = {
  version: '4.6.5',
  major: 4,
  isInstalled: Boolean(process.env.HOST46) && existsSync(PROGRAM_4),
  install: 'unpack ../shared/host46 as .ci/run does, and set HOST46 to the folder that holds inst/',
  run,
  rounds,
  inConcertPitch,
  pictureOf,
  drawingOf: (score) => drawn(score),
  prepareWindow,
};

/** A plugin's address: its path below the folder of plugins. */
export const uriOf = (plugin: string): string => `musescore://extensions/v1/bellhand/${plugin.toLowerCase()}`;

/** A fresh home for the editor, with the plugin installed and switched on. */
export async function freshProfile4(
  settings: readonly string[] = [],
  putPlugin = copyBuiltPlugin,
): Promise<{ readonly folder: string; readonly plugin: string; readonly env: NodeJS.ProcessEnv }> {
  const folder = await temporaryFolder('host');
  const at = (...names: string[]) => join(folder, ...names);
  const plugin = at('Documents/MuseScore4/Plugins/bellhand');
  for (const name of ['config/MuseScore', 'data/MuseScore/MuseScore4/extensions', 'cache', 'state', 'run'])
    await mkdir(at(name), { recursive: true });
  await chmod(at('run'), 0o700);
  await putPlugin(plugin);
  const plugins = (await readdir(plugin)).filter((name) => name.endsWith('.qml'));
  const switchedOn = plugins.map((name) => ({
    uri: uriOf(name),
    actions: [{ code: 'main', exec_point: 'manually' }],
  }));
  await writeFile(at('data/MuseScore/MuseScore4/extensions/config.json'), JSON.stringify(switchedOn));
  await writeFile(at('config/MuseScore/MuseScore4.ini'), [...SETTINGS, ...settings, ''].join('\n'));
  return {
    folder,
    plugin,
    env: {
      PATH: process.env.PATH,
      LANG: 'C.UTF-8',
      LC_ALL: 'C.UTF-8',
      NO_AT_BRIDGE: '1',
      HOME: folder,
      XDG_CONFIG_HOME: at('config'),
      XDG_DATA_HOME: at('data'),
      XDG_CACHE_HOME: at('cache'),
      XDG_STATE_HOME: at('state'),
      XDG_RUNTIME_DIR: at('run'),
      TMPDIR: at('run'),
    },
  };
}

/** Nothing that asks, greets or looks for news. A section may be opened more than once. */
const SETTINGS = [
  '[application]',
  'hasCompletedFirstLaunchSetup=true',
  'welcomeDialogShowOnStartup=false',
  'welcomeDialogLastShownVersion=4.6.5',
  'checkForUpdate=false',
  'startup\\modeStart=0',
  '[musesounds]',
  'checkForUpdate=false',
  '[project]',
  'disableVersionChecking=true',
  'autoSaveEnabled=false',
  '[ui]',
  'application\\startup\\showSplashScreen=false',
  'application\\followSystemTheme=false',
];

/** It takes its windows' system from its own variable before Qt's. */
const WITHOUT_SCREEN = { QT_QPA_PLATFORM: 'offscreen', MU_QT_QPA_PLATFORM: 'offscreen' };

/** Where the editor writes what a step saves: writing `.mscx` it empties the folder, so each has one of its own. */
const savedAs = ({ folder }: Task, name: string): string => join(folder, `saved ${name}`, name);

/** One sitting of the editor, in which every score is opened anew for everything that is saved of it. */
const inOneSitting = together(async (tasks: readonly Task[]): Promise<readonly Promise<HostRun>[]> => {
  const { folder: home, plugin, env } = await freshProfile4([], copyPluginWithSteps);
  const openings = tasks.map(openingsOf);
  for (const { folder } of openings.flat()) await mkdir(folder);
  await writeFile(join(plugin, 'tasks.json'), JSON.stringify(openings.flat()));
  const stderr = await convert(
    env,
    openings.flat().map(({ input, output }) => ({ in: input, out: output })),
    ['--extension', uriOf('steps.qml')],
    Math.max(...tasks.map(({ milliseconds }) => milliseconds)),
  );
  return tasks.map(async (task, i) => {
    let results: readonly unknown[] = [];
    for (const { folder } of openings[i]!) results = await resultsIn(join(folder, RESULTS), stderr);
    return {
      results,
      temporary: join(home, 'run'),
      path: (name: string) => savedAs(task, name),
      text: (name: string) => textOf(savedAs(task, name)),
    };
  });
});

/** The times that the editor opens a task's score: it takes the steps up to the next that saves. The last takes all. */
function openingsOf(task: Task) {
  const { input, steps } = task;
  const ends = steps.flatMap((step, i) => (step.do === 'save' && i < steps.length - 1 ? [i] : []));
  return [...ends, steps.length].map((end) => {
    const save = steps[end] ?? steps.at(-1);
    const output = savedAs(task, save?.do === 'save' ? save.as : 'unused.mscz');
    return { input, steps: steps.slice(0, end), folder: join(task.folder, `steps to ${end}`), output };
  });
}

/** Has the editor write scores as other files. @returns what it wrote to its error output */
async function convert(
  env: NodeJS.ProcessEnv,
  jobs: readonly { readonly in: string; readonly out: string }[],
  options: readonly string[] = [],
  milliseconds = LONGEST_MS,
): Promise<string> {
  for (const { out } of jobs) await mkdir(dirname(out), { recursive: true });
  const file = join(env.HOME!, 'jobs.json');
  await writeFile(file, JSON.stringify(jobs));
  const { stderr } = await execute(PROGRAM_4, [...options, '-j', file], {
    env: { ...env, ...WITHOUT_SCREEN },
    timeout: milliseconds,
    maxBuffer: 1e8,
  });
  return stderr;
}

async function run(input: string, steps: readonly Step[], milliseconds?: number): Promise<HostRun> {
  return inOneSitting(await taskOf(input, steps, milliseconds));
}

async function rounds(input: string, steps: readonly Step[], count: number): Promise<readonly HostRun[]> {
  return Promise.all((await tasksInTurn(input, steps, count, savedAs)).map(inOneSitting));
}

/** A saved score as text: `.mscx` keeps part scores and styles in files of their own, and numbers its elements by chance. */
async function textOf(path: string): Promise<string> {
  if (extname(path) !== '.mscx') return readFile(path, 'utf8');
  const below = await readdir(join(path, '..'), { recursive: true });
  const named = (extension: string) => below.filter((name) => extname(name) === extension).sort();
  const files = [...named('.mscx'), ...named('.mss')];
  const texts = await Promise.all(files.map((name) => readFile(join(path, '..', name), 'utf8')));
  return texts.join('\n').replace(/\s*<(eid|linkedTo)>.*?<\/\1>/g, '');
}

async function inConcertPitch(input: string): Promise<string> {
  const saved = await run(input, [
    { do: 'command', name: 'concert-pitch' },
    { do: 'save', as: 'concert.mscx' },
  ]);
  return saved.path('concert.mscx');
}

async function pictureOf(score: string, resolution = 100, isTrimmed = false): Promise<string> {
  const { folder, env } = await freshProfile4();
  const options = ['-r', String(resolution), ...(isTrimmed ? ['-T', '20'] : [])];
  await convert(env, [{ in: score, out: join(folder, 'pages/page.png') }], options);
  return onWhite(join(folder, 'pages/page-1.png'));
}

const drawn = together(async (scores: readonly string[]) => {
  const { folder, env } = await freshProfile4();
  await convert(
    env,
    scores.map((score, i) => ({ in: score, out: join(folder, `page ${i}`, 'page.svg') })),
  );
  return scores.map((_, i) => readFile(join(folder, `page ${i}`, 'page-1.svg'), 'utf8'));
});

async function prepareWindow({
  language = 'en',
  dark = false,
  contrast,
}: WindowOptions): Promise<WindowStage> {
  const { folder, env } = await freshProfile4([
    `application\\currentThemeCode=${contrast ? `high_contrast_${contrast}` : dark ? 'dark' : 'light'}`,
    '[application]',
    `language=${language}`,
  ]);
  await writeFile(join(folder, 'data/MuseScore/MuseScore4/shortcuts.xml'), shortcuts());
  return {
    folder,
    env: { ...env, QT_QPA_PLATFORM: 'xcb', LIBGL_ALWAYS_SOFTWARE: '1' },
    program: [PROGRAM_4],
    title: (score) => basename(score, '.mscx'),
  };
}

function shortcuts(): string {
  const plugins = Object.entries(SHORTCUTS).map(([plugin, keys]) => [
    `${uriOf(plugin).replace('musescore:', 'action:')}?action=main`,
    keys,
  ]);
  const given = [...plugins, ...Object.entries(INPUT_MODES)].map(
    ([action, keys]) => `<SC><key>${action}</key><seq>${keys}</seq></SC>`,
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n<Shortcuts>${given.join('')}</Shortcuts>\n`;
}
