/** How results are written: whole or not at all, with rights and links kept. */
import {
  chmodSync,
  linkSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
} from 'node:fs';
import { join } from 'node:path';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { expect, test } from 'vitest';
import { bellhand, bellhandHere, folderWith, score, textOf } from './bellhand.ts';

const PART = score(['C5+', 'E5']);

test('--in-place keeps the access rights and leaves nothing else behind', () => {
  const folder = folderWith({ 'part.musicxml': PART });
  chmodSync(join(folder, 'part.musicxml'), 0o640);
  expect(bellhand(folder, ['annotate', 'part.musicxml', '--in-place']).exit).toBe(0);
  expect(textOf(folder, 'part.musicxml')).toContain('(C♯)\nB 2');
  expect(statSync(join(folder, 'part.musicxml')).mode & 0o777).toBe(0o640);
  expect(readdirSync(folder)).toEqual(['part.musicxml']);
});

test('--in-place writes through a link and keeps it one', async () => {
  const folder = folderWith({ 'part.musicxml': PART });
  symlinkSync('part.musicxml', join(folder, 'link.musicxml'));
  expect((await bellhandHere(folder, ['annotate', 'link.musicxml', '--in-place'])).exit).toBe(0);
  expect(lstatSync(join(folder, 'link.musicxml')).isSymbolicLink()).toBe(true);
  expect(textOf(folder, 'part.musicxml')).toContain('(C♯)\nB 2');
});

test.each([
  { what: 'a symbolic link', link: (from: string, to: string) => symlinkSync(from, to) },
  { what: 'a hard link', link: (from: string, to: string) => linkSync(from, to) },
])('an input is not overwritten by way of $what', async ({ link }) => {
  const folder = folderWith({ 'part.musicxml': PART });
  link(join(folder, 'part.musicxml'), join(folder, 'other.musicxml'));
  const run = await bellhandHere(folder, ['annotate', 'part.musicxml', '-o', 'other.musicxml']);
  expect(run.exit).toBe(2);
  expect(run.stderr).toContain('would overwrite an input');
  expect(textOf(folder, 'part.musicxml')).toBe(PART);
});

test('results of the same name from two folders do not overwrite each other', async () => {
  const folder = folderWith();
  for (const name of ['one', 'two']) mkdirSync(join(folder, name));
  for (const name of ['one', 'two'])
    await bellhandHere(folder, ['clear', '-', '-o', `${name}/part.musicxml`], PART);
  const run = await bellhandHere(folder, [
    'annotate',
    'one/part.musicxml',
    'two/part.musicxml',
    '-o',
    'out/',
  ]);
  expect(run.exit).toBe(2);
  expect(run.stderr).toContain('both one/part.musicxml and two/part.musicxml would be written here');
  expect(readdirSync(join(folder, 'out'))).toEqual([]);
});

test('a result that cannot be moved into place leaves nothing behind', async () => {
  const folder = folderWith({ 'part.musicxml': PART });
  // A name of 255 bytes is the longest that a folder takes.
  const run = await bellhandHere(folder, ['annotate', 'part.musicxml', '-o', `${'x'.repeat(300)}.musicxml`]);
  expect(run.exit).toBe(2);
  expect(run.stderr).toMatch(/^bellhand: x+\.musicxml: cannot be written: the name is too long: [^\n]+\n$/);
  expect(readdirSync(folder)).toEqual(['part.musicxml']);
});

test('a device is written to and stays a device', () => {
  const folder = folderWith({ 'part.musicxml': PART });
  expect(bellhand(folder, ['annotate', 'part.musicxml', '-o', '/dev/null']).exit).toBe(0);
  expect(lstatSync('/dev/null').isCharacterDevice()).toBe(true);
});

test('compressed scores come out compressed, their other entries kept, and clear gives back the score', async () => {
  const container =
    '<?xml version="1.0"?><container><rootfiles><rootfile full-path="in/score.xml"/></rootfiles></container>';
  const packed = zipSync({
    'META-INF/container.xml': strToU8(container),
    'in/score.xml': strToU8(PART),
    'notes.txt': strToU8('keep me'),
  });
  const folder = folderWith({ 'part.mxl': packed });
  expect((await bellhandHere(folder, ['annotate', 'part.mxl', '--in-place'])).exit).toBe(0);
  const marked = unzipSync(bytesOf(folder, 'part.mxl'));
  expect(strFromU8(marked['in/score.xml']!)).toContain('(C♯)\nB 2');
  expect(strFromU8(marked['notes.txt']!)).toBe('keep me');
  expect((await bellhandHere(folder, ['clear', 'part.mxl', '--in-place'])).exit).toBe(0);
  expect(strFromU8(unzipSync(bytesOf(folder, 'part.mxl'))['in/score.xml']!)).toBe(PART);
});

function bytesOf(folder: string, name: string): Uint8Array {
  return new Uint8Array(readFileSync(join(folder, name)));
}
