/** Drives the real editor without a screen: each run in a profile of its own, steps in, what they returned out. */
import { execFile, spawnSync } from 'node:child_process';
import { chmod, cp, mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { buildPlugin } from '../../../build/bundle.ts';
import { temporaryFolder } from './folders.ts';

const run = promisify(execFile);

/** Finds a program on the path. */
export function programNamed(...names: string[]): string | null {
  for (const name of names) {
    const found = spawnSync('which', [name], { encoding: 'utf8' });
    if (found.status === 0) return found.stdout.trim();
  }
  return null;
}

/** The editor's program, or null where it is not installed. */
export const HOST = programNamed('mscore3', 'musescore3');

/** Says loudly that tests are left out, and why. */
export function skipLoudly(what: string, how: string): void {
  console.warn(`\n  SKIPPED: ${what}. To run them: ${how}\n`);
}
if (!HOST)
  skipLoudly(
    'tests in the real editor, which is not installed',
    'apt-get install --no-install-recommends musescore3',
  );

/** One thing to do in the editor. */
export type Step =
  /** What the panel's buttons do. `choice` replaces the choice kept with the score. */
  | { readonly do: 'annotate' | 'clear'; readonly choice?: object; readonly failAfter?: number }
  | { readonly do: 'undo' | 'redo' | 'select-all' | 'deselect' }
  /** Selects the n-th chord of the score's first track, counted from 0, and `length` chords in all. */
  | { readonly do: 'select'; readonly from: number; readonly length: number }
  /** Writes the score; the name is in the run's folder. */
  | { readonly do: 'save'; readonly as: string }
  /** What the command line would print of the same music. */
  | { readonly do: 'result' }
  /** What the panel would list. */
  | { readonly do: 'findings' }
  | { readonly do: 'show'; readonly row: number }
  /** Composes an étude from what the panel's controls say; it becomes the open score. */
  | { readonly do: 'etude'; readonly form: object }
  | { readonly do: 'colour'; readonly nth: number; readonly colour: string }
  | { readonly do: 'text'; readonly nth: number; readonly text: string }
  | { readonly do: 'command'; readonly name: string }
  /** `tick` is a look at the notes, `rare tick` one that compares the score as written too. */
  | {
      readonly do: 'measure';
      readonly what: 'annotate' | 'export' | 'tick' | 'rare tick';
      readonly times: number;
    }
  | { readonly do: 'follow'; readonly name: string };

export interface HostRun {
  readonly folder: string;
  /** What each step returned, in order. */
  readonly results: readonly unknown[];
  /** A file that a step saved. */
  path(name: string): string;
  text(name: string): Promise<string>;
}

let pluginFolder: Promise<string> | null = null;

/** The built plugin, with the tests' own steps beside it. Built once. */
export function builtPlugin(): Promise<string> {
  pluginFolder ??= (async () => {
    const folder = await temporaryFolder('plugin');
    await buildPlugin(join(folder, 'bellhand'));
    await cp(fileURLToPath(new URL('steps.qml', import.meta.url)), join(folder, 'bellhand/steps.qml'));
    return join(folder, 'bellhand');
  })();
  return pluginFolder;
}

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

/**
 * Opens a score in the editor and takes the steps one after the other.
 * @param input a path, or the text of a MusicXML score
 */
export async function inHost(input: string, steps: readonly Step[]): Promise<HostRun> {
  if (!HOST) throw new Error('the editor is not installed');
  const { folder, env } = await freshProfile();
  const plugin = join(folder, 'plugin');
  await cp(await builtPlugin(), plugin, { recursive: true });
  let score = input;
  if (input.startsWith('<')) {
    score = join(folder, 'input.musicxml');
    await writeFile(score, input);
  }
  await writeFile(join(plugin, 'steps.json'), JSON.stringify({ folder, steps }));
  const { stderr } = await run(HOST, ['-p', join(plugin, 'steps.qml'), score], {
    env: { ...env, QT_QPA_PLATFORM: 'offscreen' },
    timeout: 60_000,
    maxBuffer: 1e8,
  });
  const answer = await readFile(join(folder, 'results.json'), 'utf8').catch(() => '');
  if (answer === '') throw new Error(`the editor gave no answer:\n${stderr}`);
  const { results, error } = JSON.parse(answer) as { results: unknown[]; error?: string };
  if (error) throw new Error(`step ${results.length + 1} failed in the editor: ${error}`);
  return {
    folder,
    results,
    path: (name) => join(folder, name),
    text: (name) => readFile(join(folder, name), 'utf8'),
  };
}

/** Writes a score as a picture of its first page, whole or trimmed to what is printed. @returns the picture's path */
export async function pictureOf(score: string, resolution = 100, isTrimmed = false): Promise<string> {
  if (!HOST) throw new Error('the editor is not installed');
  const { folder, env } = await freshProfile();
  await run(
    HOST,
    ['-r', String(resolution), ...(isTrimmed ? ['-T', '20'] : []), '-o', join(folder, 'page.png'), score],
    {
      env: { ...env, QT_QPA_PLATFORM: 'offscreen' },
      timeout: 60_000,
    },
  );
  // The editor paints on nothing: without a ground, black on black would compare equal.
  const picture = join(folder, 'page-1.png');
  await run('convert', [picture, '-background', 'white', '-alpha', 'remove', picture]);
  return picture;
}

/** How many pixels of two pictures differ. */
export async function differingPixels(one: string, other: string): Promise<number> {
  const compared = spawnSync('compare', ['-metric', 'AE', one, other, 'null:'], { encoding: 'utf8' });
  const count = Number.parseFloat(compared.stderr);
  if (compared.status === null || compared.status > 1 || Number.isNaN(count))
    throw new Error(`compare: ${compared.stderr}`);
  return count;
}
