/** What is built is built anew before tests whenever anything that it is made of has changed, and only then. */
import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { isUpToDate } from '../../build/upToDate.ts';

const SOURCES = ['core/a/a.ts', 'plugin/b.ts', 'build/c.ts', 'package.json', 'package-lock.json'];
const MADE = [
  ...['bellhand/bellhand.js', 'bellhand.js', 'bellhand-program.js', 'bellhand-worker.js'],
  ...['core/a.d.ts', 'core.d.ts'],
];
const LONG_AGO = new Date(2020, 0, 1);

let root = '';
const at = (name: string) => join(root, name);

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'bellhand-built-'));
  for (const name of [...SOURCES, ...[...MADE, 'core.js'].map((made) => `dist/${made}`)]) {
    mkdirSync(dirname(at(name)), { recursive: true });
    writeFileSync(at(name), '');
  }
  for (const name of [...SOURCES, 'core/a', 'core', 'plugin', 'build'])
    utimesSync(at(name), LONG_AGO, LONG_AGO);
});
afterEach(() => rmSync(root, { recursive: true }));

test('nothing has changed', async () => {
  expect(await isUpToDate(root)).toBe(true);
});

test.each([
  ['a source changed', () => writeFileSync(at('core/a/a.ts'), 'more')],
  ['the lock file changed', () => writeFileSync(at('package-lock.json'), 'more')],
  ['a source went', () => rmSync(at('core/a/a.ts'))],
  ['a source came', () => writeFileSync(at('plugin/new.ts'), '')],
  ['a part is missing', () => rmSync(at('dist/core.js'))],
  ['nothing is built', () => rmSync(at('dist'), { recursive: true })],
  [
    'the page is older',
    () => {
      writeFileSync(at('dist/bellhand.html'), '');
      utimesSync(at('dist/bellhand.html'), new Date(2019, 0, 1), new Date(2019, 0, 1));
    },
  ],
])('%s', async (_, change) => {
  change();
  expect(await isUpToDate(root)).toBe(false);
});
