/** Builds what programs import: the core as one module, `dist/core.js`, with its types, `dist/core.d.ts`. */
import { spawnSync } from 'node:child_process';
import { readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { guardedDoor } from './guardedDoor.ts';

const ROOT = fileURLToPath(new URL('..', import.meta.url));

/** The module, as plain as the core is: ECMAScript 2016, nothing imported. Its types must stand there already. */
export async function buildCore(folder = join(ROOT, 'dist')): Promise<string> {
  const module = join(folder, 'core.js');
  await build({
    stdin: { contents: guardedDoor(folder), resolveDir: ROOT, sourcefile: 'core.ts' },
    outfile: module,
    bundle: true,
    platform: 'neutral',
    format: 'esm',
    target: 'es2016',
    legalComments: 'none',
    logLevel: 'warning',
  });
  return module;
}

/** The types, as the compiler itself writes them: a file for each of the core's, and one that leads to its door. */
export async function buildCoreTypes(folder = join(ROOT, 'dist')): Promise<string> {
  const types = join(folder, 'core');
  await rm(types, { recursive: true, force: true });
  const { status, stdout } = spawnSync(
    process.execPath,
    [
      join(ROOT, 'node_modules/typescript/bin/tsc'),
      ...['-p', join(ROOT, 'core/tsconfig.json'), '--noEmit', 'false', '--declaration'],
      ...['--emitDeclarationOnly', '--removeComments', 'false', '--rootDir', join(ROOT, 'core')],
      ...['--outDir', types],
    ],
    { encoding: 'utf8' },
  );
  if (status !== 0) throw new Error(`the types of the core cannot be written:\n${stdout}`);
  for (const name of await readdir(types, { recursive: true })) {
    if (!name.endsWith('.d.ts')) continue;
    const file = join(types, name);
    // Beside a declaration stands no source: whoever imports it sees a module.
    await writeFile(file, (await readFile(file, 'utf8')).replace(/(['"]\.[^'"]*)\.ts(['"])/g, '$1.js$2'));
  }
  const door = join(folder, 'core.d.ts');
  await writeFile(door, "export * from './core/index.js';\n");
  return door;
}
