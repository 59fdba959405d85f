/** Building the plugin and putting it where the editor finds it. */
import { mkdir, mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { runInNewContext } from 'node:vm';
import { parse } from 'acorn';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildPlugin } from '../../build/bundle.ts';
import { packPlugin } from '../../build/package.ts';
import { parsePitch } from '../../core/pitch/pitch.ts';
import { LANGUAGES, readerOf } from '../../core/words/language.ts';
import { noteClassName } from '../../core/words/noteNames.ts';
import about from '../../package.json' with { type: 'json' };
import { copyPlugin } from '../../plugin/batch/install/copyPlugin.ts';
import {
  documentsFolders,
  type Machine,
  namedPluginFolder,
  pluginFolders,
} from '../../plugin/batch/install/pluginFolders.ts';
import { bellhand } from '../batch/bellhand.ts';

let folder = '';
let built = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bellhand-install-'));
  built = await buildPlugin(join(folder, 'built'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const FILES = [
  'Bellhand.qml',
  'BellhandActions.qml',
  'BellhandAnnotate.qml',
  'BellhandAnswer.qml',
  'BellhandButton.qml',
  'BellhandCheckBox.qml',
  'BellhandClear.qml',
  'BellhandComboBox.qml',
  'BellhandDock.qml',
  'BellhandEtudeForm.qml',
  'BellhandFinding.qml',
  'BellhandFindings.qml',
  'BellhandFocusRing.qml',
  'BellhandFold.qml',
  'BellhandPanel.qml',
  'BellhandPlayer.qml',
  'BellhandSettings.qml',
  'BellhandSpinBox.qml',
  'BellhandText.qml',
  'BellhandTextField.qml',
  'BellhandTheme.qml',
  'LICENSE.txt',
  ...LANGUAGES.filter((language) => language !== 'en').map((language) => `bellhand-${language}.js`),
  'bellhand-etude.js',
  'bellhand.js',
  'bellhand.png',
].sort();

describe('the built plugin', () => {
  it('is one script under 250 kB, one for études and one for each language but English, with what the QML calls, beside it', async () => {
    expect((await readdir(built)).sort()).toEqual(FILES);
    const script = await readFile(join(built, 'bellhand.js'), 'utf8');
    expect(script.length).toBeLessThan(250_000);
    const scope: { Bellhand?: Record<string, unknown> } = {};
    runInNewContext(script, scope);
    expect(Object.keys(scope.Bellhand!)).toEqual(expect.arrayContaining(['hostOf', 'openPanel', 'runOnce']));
  });

  it('holds nothing that the editor’s engine cannot parse or does not have', async () => {
    const names = FILES.filter((name) => name.endsWith('.js'));
    const scripts = await Promise.all(names.map((name) => readFile(join(built, name), 'utf8')));
    for (const each of scripts) expect(() => parse(each, { ecmaVersion: 2016 })).not.toThrow();
    const script = scripts.join('\n');
    // Regular expressions that the engine refuses, some of them without a word, and built-ins that it lacks.
    const missing = [
      /\(\?<[=!a-z]/,
      /\\p\{/,
      /\.flat(?:Map)?\(/,
      /\.at\(-/,
      /\.replaceAll\(/,
      /\.matchAll\(/,
      /fromEntries/,
      /structuredClone/,
      /globalThis/,
      /new WeakMap\b/,
      /\.sort\(/,
    ];
    for (const pattern of missing) expect(script.match(pattern)?.[0], String(pattern)).toBeUndefined();
  });

  it('is a plugin only where it should be one: helpers do not name the editor', async () => {
    const plugins = [];
    for (const name of FILES.filter((file) => file.endsWith('.qml'))) {
      if ((await readFile(join(built, name), 'utf8')).includes('MuseScore')) plugins.push(name);
    }
    // Not the dock, which version 4 would list and cannot open.
    expect(plugins).toEqual(['Bellhand.qml', 'BellhandAnnotate.qml', 'BellhandClear.qml']);
  });

  it('says the package’s version in every entry', async () => {
    for (const name of ['Bellhand.qml', 'BellhandAnnotate.qml', 'BellhandClear.qml', 'BellhandDock.qml']) {
      expect(await readFile(join(built, name), 'utf8')).toContain(`version: "${about.version}"`);
    }
  });
});

const GUIDES = {
  en: 'GUIDE.txt',
  de: 'GUIDE-de.txt',
  fr: 'GUIDE-fr.txt',
  it: 'GUIDE-it.txt',
  es: 'GUIDE-es.txt',
};

describe('what people download', () => {
  const packed = () => packPlugin(built, join(folder, 'packages'));
  const contents = async (path: string) => unzipSync(await readFile(path));

  it('is a zip with one folder, the licence and in every language a guide of one page that says the version', async () => {
    const { zip } = await packed();
    expect(basename(zip)).toBe(`bellhand-${about.version}.zip`);
    const files = await contents(zip);
    expect(Object.keys(files).sort()).toEqual(
      [...FILES, ...Object.values(GUIDES)].map((name) => `bellhand/${name}`).sort(),
    );
    for (const language of LANGUAGES) {
      const guide = Buffer.from(files[`bellhand/${GUIDES[language]}`]!).toString();
      expect(guide).toContain(`BELLHAND ${about.version}`);
      expect(guide).not.toContain('{version}');
      expect(guide.split('\r\n').length).toBeLessThan(60);
      for (const line of guide.split('\r\n')) expect(line.length).toBeLessThanOrEqual(112);
      // It calls the buttons what the panel calls them, and the notes what the marks do.
      const { labels } = readerOf(language).words.panel;
      for (const button of [labels.annotate, labels.clear]) expect(guide).toContain(button);
      const fingered = noteClassName(parsePitch('B4')!, readerOf(language));
      expect(guide).toMatch(new RegExp(`^    ${fingered} 2 `, 'm'));
    }
    for (const name of FILES)
      expect(Buffer.compare(files[`bellhand/${name}`]!, await readFile(join(built, name))), name).toBe(0);
  });

  it('is an extension package whose manifest names files that are in it', async () => {
    const { extension } = await packed();
    const files = await contents(extension);
    const manifest = JSON.parse(Buffer.from(files['manifest.json']!).toString());
    expect(manifest.version).toBe(about.version);
    const named = [manifest.thumbnail, ...manifest.actions.map(({ path }: { path: string }) => path)];
    for (const name of named) expect(Object.keys(files)).toContain(name);
    expect(Object.keys(files)).not.toContain('BellhandDock.qml');
  });

  it('has the same bytes on another day and in another place', async () => {
    const first = await packed();
    const bytes = [await readFile(first.zip), await readFile(first.extension)];
    const { TZ } = process.env;
    process.env.TZ = 'Pacific/Auckland';
    const again = await packPlugin(await buildPlugin(join(folder, 'built-again')), join(folder, 'again'));
    if (TZ === undefined) delete process.env.TZ;
    else process.env.TZ = TZ;
    expect(bytes[0]!.equals(await readFile(again.zip))).toBe(true);
    expect(bytes[1]!.equals(await readFile(again.extension))).toBe(true);
  });
});

describe('installing', () => {
  const linux = (home: string): Machine => ({ platform: 'linux', home, env: {} });

  it('finds the versions in use, leaves out what version 4 cannot open, keeps the user’s choice, drops old files', async () => {
    const documents = join(folder, 'Documents');
    await mkdir(join(documents, 'MuseScore3'), { recursive: true });
    await mkdir(join(documents, 'MuseScore4/Plugins/bellhand'), { recursive: true });
    await writeFile(
      join(documents, 'MuseScore4/Plugins/bellhand/bellhand-choice.json'),
      '{"horn":"single-f"}',
    );
    await writeFile(join(documents, 'MuseScore4/Plugins/bellhand/Old.qml'), '');
    const targets = pluginFolders(linux(folder));
    expect(targets.map(({ version }) => version)).toEqual([3, 4]);
    const [three, four] = [await copyPlugin(built, targets[0]!), await copyPlugin(built, targets[1]!)];
    expect(three).toBe(join(documents, 'MuseScore3/Plugins/bellhand'));
    expect((await readdir(three)).sort()).toEqual(FILES);
    expect((await readdir(four)).sort()).toEqual(
      FILES.filter((name) => name !== 'BellhandDock.qml')
        .concat('bellhand-choice.json')
        .sort(),
    );
    expect((await stat(join(three, 'bellhand.js'))).size).toBeGreaterThan(10_000);
    expect(pluginFolders(linux(join(folder, 'nowhere')))).toEqual([]);
  });

  it('knows the documents folder by the desktop’s name for it, and where Windows keeps it online', async () => {
    await writeFile(
      join(folder, 'user-dirs.dirs'),
      'XDG_DESKTOP_DIR="$HOME/Tisch"\nXDG_DOCUMENTS_DIR="$HOME/Dokumente"\n',
    );
    const anna = { platform: 'linux', home: '/home/anna' } as const;
    expect(documentsFolders({ ...anna, env: { XDG_CONFIG_HOME: folder } })).toEqual(['/home/anna/Dokumente']);
    expect(documentsFolders({ ...anna, env: { XDG_CONFIG_HOME: join(folder, 'none') } })).toEqual([
      join('/home/anna', 'Documents'),
    ]);
    expect(documentsFolders({ platform: 'darwin', home: '/Users/anna', env: {} })).toEqual([
      join('/Users/anna', 'Documents'),
    ]);
    expect(
      documentsFolders({ platform: 'win32', home: 'C:/anna', env: { OneDrive: 'C:/anna/cloud' } }),
    ).toEqual(expect.arrayContaining([join('C:/anna/cloud', 'Documents'), join('C:/anna', 'Documents')]));
  });

  it.each([
    ['/a/MuseScore3/Plugins', 3],
    ['/a/MuseScore3', 3],
    ['/a/MuseScore4/Plugins', 4],
    ['/a/mine', 4],
  ] as const)('takes %s for a folder of version %i', (path, version) => {
    expect(namedPluginFolder(path)).toEqual({ version, path });
  });

  it('is a command: says where the plugin went and what to do next, or why it went nowhere', async () => {
    const home = join(folder, 'home');
    await mkdir(join(home, 'Documents/MuseScore4'), { recursive: true });
    const { HOME, XDG_CONFIG_HOME } = process.env;
    process.env.HOME = home;
    process.env.XDG_CONFIG_HOME = join(home, '.config');
    try {
      const run = bellhand(home, ['install']);
      const plugin = join(home, 'Documents/MuseScore4/Plugins/bellhand');
      expect(run).toEqual({
        exit: 0,
        stdout: `installed for MuseScore 4: ${plugin}\nNow switch it on, once, in MuseScore 4: Home > Plugins, choose each Bellhand entry, Enable.\n`,
        stderr: '',
      });
      expect(await readdir(plugin)).toContain('Bellhand.qml');
      await rm(join(home, 'Documents'), { recursive: true });
      const none = bellhand(home, ['install']);
      expect(none.exit).toBe(2);
      expect(none.stderr).toMatch(/^bellhand: neither MuseScore3 nor MuseScore4 is in .*--dir\n$/);
      await writeFile(join(home, 'file'), '');
      const refused = bellhand(home, ['install', '--dir', 'file/Plugins']);
      expect(refused.exit).toBe(2);
      expect(refused.stderr).toMatch(/^bellhand: .*cannot be made: .*\n$/);
    } finally {
      process.env.HOME = HOME;
      if (XDG_CONFIG_HOME === undefined) delete process.env.XDG_CONFIG_HOME;
      else process.env.XDG_CONFIG_HOME = XDG_CONFIG_HOME;
    }
  });
});
