/**
 * Makes what people download: `npm run package`. A zip with the folder that goes among the plugins of versions 3 and 4,
 * and an extension package that versions from 4.4 on take when it is dragged onto their window.
 */
import { mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Zippable, zipSync } from 'fflate';
import { ENGLISH_READER, LANGUAGES, type Language } from '../core/index.ts';
import about from '../package.json' with { type: 'json' };
import { manifestText } from './extensionManifest.ts';

const DIST = fileURLToPath(new URL('../dist', import.meta.url));
const GUIDES = new URL('guides/', import.meta.url);

/** Every file carries this day by the local clock, which is how a zip counts, so that the same source gives the same bytes on any day. */
const TIME = [2020, 0, 1] as const;

/** The dock: versions from 4.4 on, which alone take the extension package, have none. */
const NOT_IN_EXTENSION = ['BellhandDock.qml'];

/**
 * Packs the built plugin.
 * @param built the folder that holds the built plugin
 * @param into where the packages go
 * @returns the paths of the zip and of the extension package
 */
export async function packPlugin(
  built = join(DIST, 'bellhand'),
  into = join(DIST, 'packages'),
): Promise<{ readonly zip: string; readonly extension: string }> {
  const files = new Map<string, Uint8Array>();
  for (const language of LANGUAGES) files.set(guideName(language), windowsText(await guide(language)));
  for (const name of await readdir(built)) files.set(name, await readFile(join(built, name)));

  const extensionFiles = new Map(files).set('manifest.json', Buffer.from(manifestText(about.version)));
  for (const name of NOT_IN_EXTENSION) extensionFiles.delete(name);

  await rm(into, { recursive: true, force: true });
  await mkdir(into, { recursive: true });
  const zip = join(into, `bellhand-${about.version}.zip`);
  const extension = join(into, `bellhand-${about.version}.mext`);
  await writeFile(zip, packed(files, 'bellhand/'));
  await writeFile(extension, packed(extensionFiles, ''));
  return { zip, extension };
}

/** `GUIDE.txt`, and `GUIDE-de.txt` and so on beside it. */
function guideName(language: Language): string {
  return language === ENGLISH_READER.language ? 'GUIDE.txt' : `GUIDE-${language}.txt`;
}

async function guide(language: Language): Promise<string> {
  const text = await readFile(new URL(`${language}.txt`, GUIDES), 'utf8');
  return text.replaceAll('{version}', about.version);
}

function packed(files: ReadonlyMap<string, Uint8Array>, folder: string): Uint8Array {
  const entries: Zippable = {};
  for (const name of [...files.keys()].sort()) entries[folder + name] = files.get(name)!;
  return zipSync(entries, { level: 9, mtime: new Date(...TIME) });
}

/** Old text editors on Windows show everything on one line without these line ends, and letters wrong without the mark. */
function windowsText(text: string): Uint8Array {
  return Buffer.from(`\uFEFF${text.replace(/\n/g, '\r\n')}`);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { zip, extension } = await packPlugin();
  console.log(`for the plugin folder: ${zip}\nto drag onto the window, 4.4 and later: ${extension}`);
}
