/**
 * Builds what is shipped: the editor's plugin folder `dist/bellhand/`, the command line `dist/bellhand.js`, the page
 * `dist/bellhand.html` and the core for programs, `dist/core.js`.
 */
import { chmod, cp, mkdir, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, transform } from 'esbuild';
import { ENGLISH_READER, LANGUAGES, type Language } from '../core/index.ts';
import { buildCore, buildCoreTypes } from './coreModule.ts';
import { forEditorEngine } from './engineScript.ts';
import { licencesOf, packagesIn } from './licences.ts';
import { quickly } from './quickScript.ts';
import { buildStandPage } from './standPage.ts';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const EDITOR = join(ROOT, 'plugin/editor');

/** What the editor takes in for the panel, in bytes; how long that takes it, `npm run bench -- host` says. */
const PLUGIN_SCRIPT_LIMIT = 250_000;

/** The editor's engine knows ECMAScript 2016 and runs scripts, not modules: one `var Bellhand`. */
export async function buildPlugin(folder = join(ROOT, 'dist/bellhand')): Promise<string> {
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true });
  const script = join(folder, 'bellhand.js');
  const { code, packages } = await scriptOf(exportsOf(join(EDITOR, 'main.ts')));
  await writeFile(script, code);
  const { size } = await stat(script);
  if (size > PLUGIN_SCRIPT_LIMIT) {
    throw new Error(
      `the plugin script has ${size} bytes, more than the ${PLUGIN_SCRIPT_LIMIT} allowed: import less into plugin/editor`,
    );
  }
  for (const language of LANGUAGES.filter((one) => one !== ENGLISH_READER.language))
    await writeFile(join(folder, `bellhand-${language}.js`), (await languageScript(language)).code);
  await writeFile(join(folder, 'bellhand-etude.js'), (await composerScript()).code);
  for (const name of await readdir(join(EDITOR, 'qml')))
    await cp(join(EDITOR, 'qml', name), join(folder, name));
  const ours = await readFile(join(ROOT, 'LICENSE'), 'utf8');
  await writeFile(join(folder, 'LICENSE.txt'), `${ours}\nIt carries:\n\n${licencesOf(packages)}`);
  return folder;
}

/** One script in ECMAScript 2016, from a module; its exports are `Bellhand`'s. */
export async function editorScript(entryPoint: string): Promise<string> {
  return (await scriptOf(exportsOf(entryPoint))).code;
}

function exportsOf(entryPoint: string): string {
  return `export * from ${JSON.stringify(entryPoint)};`;
}

/** What one language says in the editor; plugin/editor/reader.ts takes it in. Of the core's door it needs no more than this one file. */
function languageScript(language: Language): Promise<EditorScript> {
  return scriptOf(`export { words } from './core/words/${language}.ts';`);
}

/** What composes études in the editor; plugin/editor/composer.ts takes it in. */
function composerScript(): Promise<EditorScript> {
  return scriptOf(`export { etudeOnWish } from './plugin/etude/etudeOnWish.ts';`);
}

/** What the build puts in the place of what the editor's engines get wrong or are slow at, which every script needs. */
const HELPERS = [
  `export { stableSort } from './plugin/editor/engineSort.ts';`,
  `export { asList, gapless } from './plugin/editor/engineLists.ts';`,
].join('');

/** A script, and the names of the packages that it carries. */
interface EditorScript {
  readonly code: string;
  readonly packages: readonly string[];
}

async function scriptOf(module: string): Promise<EditorScript> {
  const bundled = await build({
    stdin: { contents: module + HELPERS, resolveDir: ROOT, loader: 'ts' },
    bundle: true,
    format: 'iife',
    globalName: 'Bellhand',
    target: 'es2016',
    // A field that is set, and not defined, is one step to the engine, not five.
    tsconfigRaw: { compilerOptions: { useDefineForClassFields: false } },
    inject: [join(EDITOR, 'engineWeakMap.ts')],
    legalComments: 'none',
    logLevel: 'warning',
    metafile: true,
    write: false,
  });
  const { code } = await transform(quickly(forEditorEngine(bundled.outputFiles[0]!.text)), {
    minify: true,
    target: 'es2016',
    // The engine reads escapes everywhere; raw characters only where it guesses the file's encoding.
    charset: 'ascii',
  });
  return { code, packages: packagesIn(bundled.metafile) };
}

/** How the names of files begin that the command line and its worker share. */
const SHARED = 'bellhand-shared-';

/**
 * The command line, the same as a function for tests, and its worker, for Node. What they are written with comes along,
 * which saves a third of every start, with its licences in a file beside them; what is optional, and large, is looked for
 * when it is asked for.
 */
export async function buildCommandLine(folder = join(ROOT, 'dist')): Promise<string> {
  const script = join(folder, 'bellhand.js');
  for (const name of await readdir(folder).catch(() => []))
    if (name.startsWith(SHARED)) await rm(join(folder, name));
  const { metafile } = await build({
    entryPoints: {
      bellhand: join(ROOT, 'plugin/batch/main.ts'),
      'bellhand-program': join(ROOT, 'plugin/batch/program.ts'),
      'bellhand-worker': join(ROOT, 'plugin/batch/files/worker.ts'),
    },
    outdir: folder,
    bundle: true,
    splitting: true,
    chunkNames: `${SHARED}[hash]`,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    external: ['verovio', '@fontsource/*'],
    // Packages of the older kind ask for Node's own modules.
    banner: {
      js: "#!/usr/bin/env node\nimport { createRequire as requireFrom } from 'node:module';\nconst require = requireFrom(import.meta.url);",
    },
    legalComments: 'none',
    logLevel: 'warning',
    metafile: true,
  });
  await writeFile(join(folder, 'licences.txt'), licencesOf(packagesIn(metafile)));
  await chmod(script, 0o755);
  return script;
}

/** Everything that is shipped. @returns a line for each of its parts: what it is, and its path or why there is none */
export function buildEverything(): Promise<readonly string[]> {
  return Promise.all([
    buildPlugin().then((folder) => `plugin: ${folder}`),
    buildCommandLine().then((script) => `command line: ${script}`),
    buildStandPage().then((page) => `page: ${page}`),
    buildCoreTypes().then(async (types) => `core: ${types}, ${await buildCore()}`),
  ]);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) console.log((await buildEverything()).join('\n'));
