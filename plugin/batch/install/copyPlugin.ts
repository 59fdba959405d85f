/** Puts the built plugin into one of the editor's plugin folders. */
import { copyFile, readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { makeFolder } from '../output/folder.ts';
import type { PluginFolder } from './pluginFolders.ts';

/** The panel at the side: version 4 has no docks and would list a plugin that does not open. */
const ONLY_VERSION_3 = 'BellhandDock.qml';

/**
 * Copies the built plugin. What the user chose in the panel is kept; files of an older version go.
 * @param built the folder that holds the built plugin
 * @returns the plugin's own folder
 * @throws {Failure} when it cannot be made
 */
export async function copyPlugin(built: string, { version, path }: PluginFolder): Promise<string> {
  const folder = join(path, 'bellhand');
  makeFolder(folder);
  const names = (await readdir(built)).filter((name) => version === 3 || name !== ONLY_VERSION_3);
  for (const name of await readdir(folder)) {
    if (/\.(?:qml|js)$/.test(name) && !names.includes(name)) await rm(join(folder, name));
  }
  for (const name of names) await copyFile(join(built, name), join(folder, name));
  return folder;
}
