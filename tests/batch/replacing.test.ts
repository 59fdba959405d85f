/** What may be replaced: Bellhand's own work that nobody changed, and nothing else unless the user says so. */
import {
  chmodSync,
  linkSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { bellhandHere, folderWith, score, textOf } from './bellhand.ts';
import { SURE as PART } from './hornParts.ts';
import { WRITERS } from './writers.ts';

const REVISED = score(['B4+', 'E5']);

/** A report is engraved, which takes its time. */
const QUICK_WRITERS = WRITERS.filter(({ what }) => what !== 'report');

describe.each(WRITERS)('$what', ({ ending, args }) => {
  const mine = `mine${ending}`;

  test("does not replace somebody's file, and does with --force", async () => {
    const folder = folderWith({ 'part.musicxml': PART, [mine]: REVISED });
    const { exit, stderr, stdout } = await bellhandHere(folder, args(mine));
    expect({ exit, stdout }).toEqual({ exit: 2, stdout: '' });
    expect(stderr).toMatch(/^bellhand: mine\.[a-z]+: this file is there already[^\n]+--force\n$/);
    expect(textOf(folder, mine)).toBe(REVISED);
    expect(await bellhandHere(folder, [...args(mine), '--force'])).toMatchObject({
      exit: 0,
      stderr: '',
    });
    expect(textOf(folder, mine)).not.toBe(REVISED);
    expect(readdirSync(folder).sort()).toEqual([mine, 'part.musicxml']);
  });
});

describe.each(QUICK_WRITERS)('$what', ({ what, ending, args }) => {
  const made = `new${ending}`;

  test('replaces an empty file, and its own work again and again', async () => {
    const folder = folderWith({ 'part.musicxml': PART, [made]: '' });
    for (let run = 0; run < 2; run++)
      expect(await bellhandHere(folder, args(made))).toMatchObject({ exit: 0, stderr: '' });
  });

  test('does not replace its own work once it was changed, nor what another command made', async () => {
    const folder = folderWith({ 'part.musicxml': PART });
    await bellhandHere(folder, args(made));
    const own = textOf(folder, made);
    if (what !== 'clear') {
      for (const changed of [
        own.replace(/>([^<]*)</, '> $1<'),
        `${own}\n`,
        own.replace(/<!-- bellhand .*\n$/, ''),
      ]) {
        writeFileSync(join(folder, made), changed);
        expect((await bellhandHere(folder, args(made))).exit, changed.slice(-60)).toBe(2);
        expect(textOf(folder, made)).toBe(changed);
      }
      writeFileSync(join(folder, made), own);
    }
    const other = what === 'annotate' ? WRITERS[5]! : WRITERS[0]!;
    await bellhandHere(folder, other.args('other'));
    expect((await bellhandHere(folder, args('other'))).exit, other.what).toBe(2);
  });

  test('refuses a link to nothing and what may only be read', async () => {
    const folder = folderWith({ 'part.musicxml': PART });
    const link = `link${ending}`;
    const lock = `locked${ending}`;
    symlinkSync('gone', join(folder, link));
    const dangling = await bellhandHere(folder, args(link));
    expect(dangling.exit).toBe(2);
    expect(dangling.stderr).toMatch(/^bellhand: link\.[a-z]+: a link to gone, which is not there: [^\n]+\n$/);
    expect(readdirSync(folder).sort()).toEqual([link, 'part.musicxml']);
    writeFileSync(join(folder, lock), '');
    chmodSync(join(folder, lock), 0o444);
    const locked = await bellhandHere(folder, args(lock));
    expect(locked.exit).toBe(2);
    expect(locked.stderr).toMatch(/^bellhand: locked\.[a-z]+: may only be read: [^\n]+--force\n$/);
    expect((await bellhandHere(folder, [...args(lock), '--force'])).exit).toBe(0);
    expect(statSync(join(folder, lock)).mode & 0o777).toBe(0o444);
  });
});

describe('an input', () => {
  test.each(['part.musicxml', './part.musicxml', 'link.musicxml', 'hard.musicxml'])(
    'is no output by the name %s',
    async (name) => {
      const folder = folderWith({ 'part.musicxml': PART });
      symlinkSync('part.musicxml', join(folder, 'link.musicxml'));
      linkSync(join(folder, 'part.musicxml'), join(folder, 'hard.musicxml'));
      for (const command of ['report', 'annotate', 'clear']) {
        for (const force of [[], ['--force']]) {
          const { exit, stderr } = await bellhandHere(folder, [
            command,
            'part.musicxml',
            '-o',
            name,
            ...force,
          ]);
          expect(exit, command).toBe(2);
          expect(stderr).toMatch(/^bellhand: [^\n]+ would overwrite an input: [^\n]+\n$/);
          expect(textOf(folder, 'part.musicxml')).toBe(PART);
        }
      }
    },
  );
});

describe('a marked file', () => {
  test.each(['musicxml', 'mxl'])('is made anew when the part was revised (%s)', async (kind) => {
    const pack = (text: string) =>
      kind === 'mxl'
        ? zipSync(
            { 'a.musicxml': strToU8(text), 'a.png': [strToU8('p'), { level: 0 }] },
            { mtime: '2026-01-02T00:00:00' },
          )
        : text;
    const folder = folderWith({ [`part.${kind}`]: pack(PART) });
    await bellhandHere(folder, ['annotate', `part.${kind}`]);
    writeFileSync(join(folder, `part.${kind}`), pack(REVISED));
    expect(await bellhandHere(folder, ['annotate', `part.${kind}`])).toMatchObject({ exit: 0, stderr: '' });
    const { stdout } = await bellhandHere(folder, ['clear', `part.marked.${kind}`, '-o', `back.${kind}`]);
    expect(stdout).toBe(`back.${kind}: marks taken out\n`);
    expect(readFileSync(join(folder, `back.${kind}`))).toEqual(Buffer.from(pack(REVISED)));
  });

  test("that was changed is the user's", async () => {
    const folder = folderWith({ 'part.musicxml': PART });
    await bellhandHere(folder, ['annotate', 'part.musicxml']);
    const changed = textOf(folder, 'part.marked.musicxml').replace('B 2', 'B 2, gently');
    writeFileSync(join(folder, 'part.marked.musicxml'), changed);
    expect((await bellhandHere(folder, ['annotate', 'part.musicxml'])).exit).toBe(2);
    expect(textOf(folder, 'part.marked.musicxml')).toBe(changed);
    expect((await bellhandHere(folder, ['clear', 'part.marked.musicxml', '-o', '-'])).stdout).toBe(PART);
  });

  test("in an archive whose other entries were changed is the user's", async () => {
    const folder = folderWith({
      'part.mxl': zipSync({ 'a.musicxml': strToU8(PART), 'a.txt': strToU8('one') }),
    });
    await bellhandHere(folder, ['annotate', 'part.mxl']);
    const entries = unzipSync(readFileSync(join(folder, 'part.marked.mxl')));
    writeFileSync(join(folder, 'part.marked.mxl'), zipSync({ ...entries, 'a.txt': strToU8('two') }));
    expect((await bellhandHere(folder, ['annotate', 'part.mxl'])).exit).toBe(2);
  });

  test('annotated in place stays known, and an unmarked file in place gets no seal', async () => {
    const folder = folderWith({ 'part.musicxml': PART, 'own.musicxml': PART });
    await bellhandHere(folder, ['annotate', 'part.musicxml']);
    await bellhandHere(folder, ['annotate', 'part.marked.musicxml', '--in-place', '--show', 'natural']);
    expect((await bellhandHere(folder, ['annotate', 'part.musicxml'])).exit).toBe(0);
    await bellhandHere(folder, ['annotate', 'own.musicxml', '--in-place']);
    expect(textOf(folder, 'own.musicxml')).not.toContain('<!-- bellhand');
    await bellhandHere(folder, ['clear', 'part.marked.musicxml', '--in-place']);
    expect(textOf(folder, 'part.marked.musicxml')).toBe(PART);
  });

  test.each(['UTF-16', 'ISO-8859-1', 'windows-1252'])('in %s is known again', async (encoding) => {
    const text = PART.replace('UTF-8', encoding);
    const content =
      encoding === 'UTF-16' ? Buffer.from(`\ufeff${text}`, 'utf16le') : Buffer.from(text, 'latin1');
    const folder = folderWith({ 'part.musicxml': content });
    for (let run = 0; run < 2; run++)
      expect(
        await bellhandHere(folder, ['annotate', 'part.musicxml', '--show', run ? 'natural' : 'fingered']),
      ).toMatchObject({ exit: 0, stderr: '' });
    await bellhandHere(folder, ['clear', 'part.marked.musicxml', '--in-place']);
    expect(readFileSync(join(folder, 'part.marked.musicxml'))).toEqual(content);
  });
});
