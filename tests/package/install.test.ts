/** The package as its users get it: packed, installed in an empty folder without what is optional, run, imported, compiled. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'bellhand-package-'));
const PACKAGE = join(folder, 'node_modules/bellhand');
const PART = join(ROOT, 'plugin/batch/demo/low-water.musicxml');

function run(command: string, args: readonly string[], cwd = folder) {
  const { status, stdout, stderr } = spawnSync(command, args, { cwd, encoding: 'utf8', timeout: 120_000 });
  return { exit: status, stdout, stderr };
}

beforeAll(() => {
  // What is shipped is built already; building again would pull it from under other tests.
  const packed = run('npm', ['pack', '--ignore-scripts', '--json', '--pack-destination', folder], ROOT);
  const [{ filename }] = JSON.parse(packed.stdout);
  writeFileSync(join(folder, 'package.json'), '{ "type": "module", "private": true }');
  const installed = run('npm', [
    ...['install', '--omit=optional', '--prefer-offline', '--no-audit', '--no-fund'],
    join(folder, filename),
  ]);
  expect(installed.exit, installed.stderr).toBe(0);
}, 180_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('what is in it', () => {
  test.each(['README.md', 'DEVELOPERS.md'])('everything that %s shows or leads to', (name) => {
    const text = readFileSync(join(PACKAGE, name), 'utf8');
    const leads = [...text.matchAll(/\]\((?!https?:|#)([^)#]+)[^)]*\)/g)].map(([, path]) => path!);
    if (name === 'README.md') expect(leads.length).toBeGreaterThan(4);
    expect(leads.filter((path) => !existsSync(join(PACKAGE, path)))).toEqual([]);
  });

  test('the plugin, the licence, nothing of the workshop', () => {
    for (const path of ['dist/bellhand/Bellhand.qml', 'dist/bellhand/bellhand.js', 'LICENSE'])
      expect(statSync(join(PACKAGE, path)).size).toBeGreaterThan(100);
    for (const path of ['tests', 'node_modules/verovio', 'plugin/batch/commands', 'tsconfig.json'])
      expect(existsSync(join(PACKAGE, path)), path).toBe(false);
  });

  test('nothing is installed beside it, and the licence of all that it carries is told', () => {
    expect(readdirSync(join(folder, 'node_modules')).filter((name) => !name.startsWith('.'))).toEqual([
      'bellhand',
    ]);
    const told = (file: string) =>
      [...readFileSync(join(PACKAGE, file), 'utf8').matchAll(/^(\S+) [\d.]+\nLicence: (\S+)$/gm)].map(
        (match) => match.slice(1).join(' '),
      );
    expect(told('dist/licences.txt')).toEqual([
      '@xmldom/xmldom MIT',
      'commander MIT',
      'fflate MIT',
      'saxes ISC',
      'xmlchars MIT',
    ]);
    expect(told('dist/bellhand/LICENSE.txt')).toEqual(['saxes ISC', 'xmlchars MIT']);
    expect(told('dist/bellhand.html')).toEqual(
      expect.arrayContaining(['@fontsource/tinos OFL-1.1', 'preact MIT', 'verovio LGPL-3.0-or-later']),
    );
  });

  test('metadata by which it is found and used', () => {
    const about = JSON.parse(readFileSync(join(PACKAGE, 'package.json'), 'utf8'));
    for (const field of [
      'name',
      'version',
      'description',
      'license',
      'keywords',
      'exports',
      'types',
      'bin',
      'engines',
    ])
      expect(about[field], field).toBeTruthy();
    expect(about.repository).toBeUndefined();
    for (const path of [
      about.types,
      about.exports['.'].types,
      about.exports['.'].default,
      ...Object.values<string>(about.bin),
    ])
      expect(existsSync(join(PACKAGE, path)), path).toBe(true);
  });
});

describe('the command', () => {
  const bellhand = (...args: string[]) => run(join(folder, 'node_modules/.bin/bellhand'), args);

  test('runs', () => {
    const { version } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
    expect(bellhand('--version').stdout.trim()).toBe(version);
    const explained = JSON.parse(bellhand('explain', 'C5', '--format', 'json').stdout);
    expect(explained).toMatchObject({ fingered: 'B4', valves: '2', natural: 'C#5' });
    expect(bellhand('check', PART).exit).toBe(1);
    expect(bellhand('etude', '--kind', 'match', '--seed', '1', '-o', 'etude.musicxml').exit).toBe(0);
    expect(bellhand('chart', '--format', 'musicxml', '-o', 'chart.musicxml').exit).toBe(0);
  });

  test.each([
    ['report', PART],
    ['chart', '--format', 'html'],
  ])('says in one sentence that pages need the engraver: %s', (...args) => {
    const { exit, stdout, stderr } = bellhand(...args, '-o', 'page.html');
    expect(stdout).toBe('');
    expect(stderr).toMatch(
      /^bellhand: .*pages are drawn by verovio, which is not installed: run npm install verovio, or use check, .*\n$/,
    );
    expect(stderr.trim().split('\n')).toHaveLength(1);
    expect(exit).toBe(2);
    expect(existsSync(join(folder, 'page.html'))).toBe(false);
  });
});

describe('the module', () => {
  const program = `import { closingCurve, composeEtude, examine, fingerings, passageOf, stop } from 'bellhand';
import { DEFAULT_SETTINGS, type Examination, type Fingering, HORNS, parseKey, tubesOf } from 'bellhand';

const examination: Examination = examine(passageOf('C5+ E5 | G4o~ A4+'));
const first: Fingering | undefined = fingerings(6500, 'stopped', DEFAULT_SETTINGS)[0];
const tube = tubesOf(HORNS[0]!.sides[0]!)[0]!;
const etude = composeEtude({
  kind: 'bend', key: parseKey('F'), level: 1, bars: 8, tempo: null, low: null, high: null, seed: 7,
  player: DEFAULT_SETTINGS,
});
export const found: readonly unknown[] = [
  examination.findings.map(({ id }) => id),
  first?.printed,
  Math.round(stop(tube, 8).dropCents),
  closingCurve(tube, { harmonics: [8], steps: 2 }).harmonics.length,
  etude.ok,
];
`;

  test('answers', () => {
    writeFileSync(
      join(folder, 'use.js'),
      `${program.replace(/type \w+, |: [\w |]+(?= =)|: readonly unknown\[\](?= =)|!(?=[.;)])/g, '')}console.log(JSON.stringify(found));`,
    );
    const { stdout, stderr } = run(process.execPath, ['use.js']);
    expect(stderr).toBe('');
    expect(JSON.parse(stdout)).toEqual([['closes-upward'], '2', 131, 1, true]);
  });

  test.each([
    ['nodenext', 'nodenext'],
    ['esnext', 'bundler'],
  ])('compiles as %s, resolved as %s', (module, moduleResolution) => {
    writeFileSync(join(folder, 'use.ts'), program);
    const compilerOptions = {
      module,
      moduleResolution,
      target: 'es2022',
      types: [],
      strict: true,
      noEmit: true,
    };
    writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify({ compilerOptions, files: ['use.ts'] }));
    const { exit, stdout } = run(process.execPath, [
      join(ROOT, 'node_modules/typescript/bin/tsc'),
      '-p',
      folder,
    ]);
    expect(stdout).toBe('');
    expect(exit).toBe(0);
  });

  test('tells the compiler what is wrong', () => {
    const wrong = program.replace("kind: 'bend'", "kind: 'polka'");
    writeFileSync(join(folder, 'use.ts'), wrong);
    const { stdout } = run(process.execPath, [join(ROOT, 'node_modules/typescript/bin/tsc'), '-p', folder]);
    expect(stdout).toContain(`'"polka"' is not assignable`);
  });
});
