/** `bellhand install`: puts the editor's plugin where the editor looks for it. */
import { existsSync } from 'node:fs';
import { homedir } from 'node:os';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Command } from 'commander';
import { choicesText, type Reader } from '../../../core/index.ts';
import { Failure, systemReason } from '../failure.ts';
import { copyPlugin } from '../install/copyPlugin.ts';
import {
  documentsFolders,
  type Machine,
  namedPluginFolder,
  pluginFolders,
} from '../install/pluginFolders.ts';
import { printLines } from '../output/streams.ts';
import { wordsFor } from '../reader.ts';

/** The plugin lies beside the built command. */
const BUILT = fileURLToPath(new URL('bellhand/', import.meta.url));

export function installCommand(reader: Reader): Command {
  const words = wordsFor(reader);
  return new Command('install')
    .description(words.commands.install)
    .option('--dir <folder>', words.options.folder)
    .action(async ({ dir }: { dir?: string }) => {
      const machine: Machine = { platform: process.platform, home: homedir(), env: process.env };
      const folders = dir === undefined ? pluginFolders(machine) : [namedPluginFolder(resolve(dir))];
      if (folders.length === 0) {
        const places = choicesText(documentsFolders(machine), reader);
        throw new Failure(({ faults }) => faults.noPluginFolder(places));
      }
      if (!existsSync(BUILT)) throw new Failure(({ faults }) => faults.pluginNotBuilt(BUILT));
      for (const folder of folders) {
        try {
          printLines([words.told.installed(folder.version, await copyPlugin(BUILT, folder))]);
        } catch (fault) {
          if (fault instanceof Failure) throw fault;
          throw new Failure((said) => said.faults.notWritten(folder.path, systemReason(fault, said)));
        }
      }
      for (const version of new Set(folders.map((folder) => folder.version))) {
        const how = version === 3 ? words.told.switchOn3 : words.told.switchOn4;
        printLines([words.told.switchOn(version, how)]);
      }
    });
}
