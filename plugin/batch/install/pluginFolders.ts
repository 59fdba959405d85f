/** Where the editor looks for plugins: MuseScore3/Plugins and MuseScore4/Plugins among the user's documents. */
import { existsSync, readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';

/** A folder for plugins, and the editor's version that reads it. */
export interface PluginFolder {
  readonly version: 3 | 4;
  readonly path: string;
}

/** What is known of the user's machine. */
export interface Machine {
  readonly platform: NodeJS.Platform;
  /** The user's own folder. */
  readonly home: string;
  readonly env: { readonly [name: string]: string | undefined };
}

/** The plugin folders of the versions that are in use here: those that have made a folder among the documents. */
export function pluginFolders(machine: Machine): readonly PluginFolder[] {
  return documentsFolders(machine).flatMap((documents) =>
    ([3, 4] as const)
      .filter((version) => existsSync(join(documents, `MuseScore${version}`)))
      .map((version) => ({ version, path: join(documents, `MuseScore${version}`, 'Plugins') })),
  );
}

/**
 * A folder that the user named, with the version its name tells.
 * @returns version 4 where nothing tells: the version most people have, and 3 reads such a folder as well
 */
export function namedPluginFolder(path: string): PluginFolder {
  const names = [basename(path), basename(dirname(path))];
  return { version: names.some((name) => /3$/.test(name)) ? 3 : 4, path };
}

/**
 * The folders that may hold the user's documents, the likeliest first: on Linux as the desktop names them in the user's
 * language, on Windows the one that is kept online too.
 */
export function documentsFolders({ platform, home, env }: Machine): readonly string[] {
  const folders = [join(home, 'Documents')];
  if (platform === 'linux') {
    const named = desktopsName(join(env.XDG_CONFIG_HOME ?? join(home, '.config'), 'user-dirs.dirs'), home);
    if (named) return [named];
  }
  const online = env.OneDrive;
  if (platform === 'win32' && online) {
    for (const name of ['Documents', 'Dokumente', 'Documenti']) folders.unshift(join(online, name));
  }
  return folders;
}

function desktopsName(list: string, home: string): string | null {
  if (!existsSync(list)) return null;
  const named = /^XDG_DOCUMENTS_DIR="(.+)"$/m.exec(readFileSync(list, 'utf8'));
  return named ? named[1]!.replace('$HOME', home) : null;
}
