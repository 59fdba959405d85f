/**
 * Builds the plugin and puts it where the editor looks for plugins: `npm run install-plugin`, `… -- --dir FOLDER`.
 * Documents/MuseScore3/Plugins and Documents/MuseScore4/Plugins, on Linux, macOS and Windows alike.
 */
import { existsSync, readFileSync } from 'node:fs';
import { copyFile, mkdir, readdir, rm } from 'node:fs/promises';
import { homedir } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Command } from 'commander';
import { buildPlugin } from './bundle.ts';

/** Where the plugin goes, and for which version of the editor. */
export interface Target {
  readonly version: 3 | 4;
  /** The editor's folder for plugins; ours is put inside. */
  readonly plugins: string;
}

/** The panel at the side: version 4 has no docks and would list a plugin that does not open. */
const ONLY_VERSION_3 = 'BellhandDock.qml';

/** The plugin folders of the versions that are in use here: those that have made a folder among the documents. */
export function targetsIn(documents: string): readonly Target[] {
  return ([3, 4] as const)
    .filter((version) => existsSync(join(documents, `MuseScore${version}`)))
    .map((version) => ({ version, plugins: join(documents, `MuseScore${version}`, 'Plugins') }));
}

/** The user's documents folder: on Linux as the desktop names it in the user's language. */
export function documentsFolder(platform: NodeJS.Platform, home: string, config: string): string {
  const list = join(config, 'user-dirs.dirs');
  if (platform === 'linux' && existsSync(list)) {
    const named = /^XDG_DOCUMENTS_DIR="(.+)"$/m.exec(readFileSync(list, 'utf8'));
    if (named) return named[1]!.replace('$HOME', home);
  }
  return join(home, 'Documents');
}

/**
 * Copies the built plugin. What the user chose in the panel is kept; files of an older version go.
 * @returns the plugin's own folder
 */
export async function installInto(built: string, { version, plugins }: Target): Promise<string> {
  const folder = join(plugins, 'bellhand');
  await mkdir(folder, { recursive: true });
  const names = (await readdir(built)).filter((name) => version === 3 || name !== ONLY_VERSION_3);
  for (const name of await readdir(folder)) {
    if (/\.(?:qml|js)$/.test(name) && !names.includes(name)) await rm(join(folder, name));
  }
  for (const name of names) await copyFile(join(built, name), join(folder, name));
  return folder;
}

async function main(): Promise<void> {
  const { dir } = new Command('install-plugin')
    .description('Puts the plugin into the editor’s plugin folder.')
    .option('--dir <folder>', 'the editor’s plugin folder, where it is not among your documents')
    .parse()
    .opts<{ dir?: string }>();
  const config = process.env.XDG_CONFIG_HOME ?? join(homedir(), '.config');
  const documents = documentsFolder(process.platform, homedir(), config);
  const targets: readonly Target[] = dir
    ? [{ version: /MuseScore4/.test(resolve(dir)) ? 4 : 3, plugins: resolve(dir) }]
    : targetsIn(documents);
  if (targets.length === 0) {
    console.error(
      `install-plugin: neither MuseScore3 nor MuseScore4 is in ${documents}: start the editor once, or name its plugin folder with --dir`,
    );
    process.exit(2);
  }
  const built = await buildPlugin();
  for (const target of targets) {
    try {
      console.log(`installed ${await installInto(built, target)}`);
    } catch (error) {
      console.error(`install-plugin: ${target.plugins} cannot be written to: ${(error as Error).message}`);
      process.exit(2);
    }
  }
  console.log(
    'Now switch Bellhand on in the editor: Plugins > Plugin Manager in version 3, Home > Plugins in version 4.',
  );
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await main();
