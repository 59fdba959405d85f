/** Building the plugin and putting it where the editor finds it. */
import { mkdir, mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runInNewContext } from 'node:vm';
import { parse } from 'acorn';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildPlugin } from '../../build/bundle.ts';
import { documentsFolder, installInto, targetsIn } from '../../build/install-plugin.ts';

let folder = '';
let built = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'bellhand-install-'));
  built = await buildPlugin(join(folder, 'built'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const FILES = [
  'Bellhand.qml',
  'BellhandAnnotate.qml',
  'BellhandClear.qml',
  'BellhandDock.qml',
  'BellhandEtudeForm.qml',
  'BellhandPanel.qml',
  'LICENSE.txt',
  'bellhand.js',
];

describe('the built plugin', () => {
  it('is one script under 200 kB, with what the QML calls, beside it', async () => {
    expect((await readdir(built)).sort()).toEqual(FILES);
    const script = await readFile(join(built, 'bellhand.js'), 'utf8');
    expect(script.length).toBeLessThan(200_000);
    const scope: { Bellhand?: Record<string, unknown> } = {};
    runInNewContext(script, scope);
    expect(Object.keys(scope.Bellhand!)).toEqual(expect.arrayContaining(['hostOf', 'openPanel', 'runOnce']));
  });

  it('holds nothing that the editor’s engine cannot parse or does not have', async () => {
    const script = await readFile(join(built, 'bellhand.js'), 'utf8');
    expect(() => parse(script, { ecmaVersion: 2016 })).not.toThrow();
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
    expect(plugins).toEqual([
      'Bellhand.qml',
      'BellhandAnnotate.qml',
      'BellhandClear.qml',
      'BellhandDock.qml',
    ]);
  });
});

describe('installing', () => {
  it('finds the versions in use, leaves out what version 4 cannot open, keeps the user’s choice, drops old files', async () => {
    const documents = join(folder, 'Documents');
    await mkdir(join(documents, 'MuseScore3'), { recursive: true });
    await mkdir(join(documents, 'MuseScore4/Plugins/bellhand'), { recursive: true });
    await writeFile(
      join(documents, 'MuseScore4/Plugins/bellhand/bellhand-choice.json'),
      '{"horn":"single-f"}',
    );
    await writeFile(join(documents, 'MuseScore4/Plugins/bellhand/Old.qml'), '');
    const targets = targetsIn(documents);
    expect(targets.map(({ version }) => version)).toEqual([3, 4]);
    const [three, four] = [await installInto(built, targets[0]!), await installInto(built, targets[1]!)];
    expect(three).toBe(join(documents, 'MuseScore3/Plugins/bellhand'));
    expect((await readdir(three)).sort()).toEqual(FILES);
    expect((await readdir(four)).sort()).toEqual(
      FILES.filter((name) => name !== 'BellhandDock.qml')
        .concat('bellhand-choice.json')
        .sort(),
    );
    expect((await stat(join(three, 'bellhand.js'))).size).toBeGreaterThan(10_000);
    expect(targetsIn(join(folder, 'nowhere'))).toEqual([]);
  });

  it('knows the documents folder by the desktop’s name for it', async () => {
    await writeFile(
      join(folder, 'user-dirs.dirs'),
      'XDG_DESKTOP_DIR="$HOME/Tisch"\nXDG_DOCUMENTS_DIR="$HOME/Dokumente"\n',
    );
    expect(documentsFolder('linux', '/home/anna', folder)).toBe('/home/anna/Dokumente');
    expect(documentsFolder('linux', '/home/anna', join(folder, 'none'))).toBe(
      join('/home/anna', 'Documents'),
    );
    expect(documentsFolder('darwin', '/Users/anna', folder)).toBe(join('/Users/anna', 'Documents'));
  });
});
