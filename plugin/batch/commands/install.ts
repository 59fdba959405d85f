/** `bellhand install`: puts the editor's plugin where the editor looks for it. */
import { existsSync } from 'node:fs';
import { homedir } from 'node:os';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Command } from 'commander';
import { Failure, systemReason } from '../failure.ts';
import { copyPlugin } from '../install/copyPlugin.ts';
import {
  documentsFolders,
  type Machine,
  namedPluginFolder,
  pluginFolders,
} from '../install/pluginFolders.ts';
import { printLines } from '../output/streams.ts';

/** The plugin lies beside the built command. */
const BUILT = fileURLToPath(new URL('bellhand/', import.meta.url));

/** How each version's user switches a plugin on. */
const SWITCHED_ON = {
  3: 'Plugins > Plugin Manager, tick the Bellhand entries, OK',
  4: 'Home > Plugins, choose each Bellhand entry, Enable',
} as const;

export function installCommand(): Command {
  return new Command('install')
    .description('put the plugin into the plugin folder of MuseScore 3 and 4')
    .option('--dir <folder>', 'the plugin folder, where it is not among your documents')
    .action(async ({ dir }: { dir?: string }) => {
      const machine: Machine = { platform: process.platform, home: homedir(), env: process.env };
      const folders = dir === undefined ? pluginFolders(machine) : [namedPluginFolder(resolve(dir))];
      if (folders.length === 0) {
        throw new Failure(
          `neither MuseScore3 nor MuseScore4 is in ${documentsFolders(machine).join(' or ')}: start the editor once, or name its plugin folder with --dir`,
        );
      }
      if (!existsSync(BUILT)) throw new Failure(`the plugin is not in ${BUILT}: run npm run build`);
      for (const folder of folders) {
        try {
          printLines([`installed for MuseScore ${folder.version}: ${await copyPlugin(BUILT, folder)}`]);
        } catch (fault) {
          if (fault instanceof Failure) throw fault;
          throw new Failure(`${folder.path} cannot be written to: ${systemReason(fault)}`);
        }
      }
      for (const version of new Set(folders.map((folder) => folder.version))) {
        printLines([`Now switch it on, once, in MuseScore ${version}: ${SWITCHED_ON[version]}.`]);
      }
    });
}
