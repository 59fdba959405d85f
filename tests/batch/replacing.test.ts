/** What may be replaced: Bellhand's own work that nobody changed, and nothing else unless the user says so. */

import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  chownSync,
  linkSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { bellhand, bellhandHere, COMMAND, folderWith, score, textOf } from './bellhand.ts';

const PART = score(['C5+', 'E5']);
const REVISED = score(['B4+', 'E5']);
const isRoot = process.getuid?.() === 0;

/** Every command that writes a file, told to write `target`, and how the name of what it writes ends. */
const WRITERS: readonly {
  readonly what: string;
  readonly ending: string;
  readonly args: (target: string) => readonly string[];
}[] = [
  { what: 'annotate', ending: '.xml', args: (target) => ['annotate', 'part.musicxml', '-o', target] },
  { what: 'clear', ending: '.xml', args: (target) => ['clear', 'part.musicxml', '-o', target] },
  { what: 'report', ending: '.html', args: (target) => ['report', 'part.musicxml', '-o', target] },
  {
    what: 'etude',
    ending: '.musicxml',
    args: (target) => ['etude', '--kind', 'bend', '--seed', '3', '-o', target],
  },
  {
    what: 'lesson',
    ending: '.xml',
    args: (target) => ['lesson', '--level', '1', '--seed', '3', '-o', target],
  },
  {
    what: 'chart as a score',
    ending: '.xml',
    args: (target) => ['chart', '--format', 'musicxml', '-o', target],
  },
  { what: 'explain', ending: '.svg', args: (target) => ['explain', 'C5', '--curve', target] },
];

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

describe('the ending of a name', () => {
  test.each(WRITERS)('that promises something else is refused: $what', async ({ args }) => {
    const folder = folderWith({ 'part.musicxml': PART });
    const { exit, stdout, stderr } = await bellhandHere(folder, [...args('new.pdf'), '--force']);
    expect({ exit, stdout }).toEqual({ exit: 2, stdout: '' });
    expect(stderr).toMatch(
      /^bellhand: new\.pdf: what is written here is an? [^\n]+: end the name with \.[^\n]+\n$/,
    );
    expect(readdirSync(folder)).toEqual(['part.musicxml']);
  });

  test('of an input is as good for its result', async () => {
    const folder = folderWith({ 'part.txt': PART });
    expect(await bellhandHere(folder, ['annotate', 'part.txt'])).toMatchObject({ exit: 0, stderr: '' });
    expect(textOf(folder, 'part.marked.txt')).toContain('B 2');
  });

  test('tells how a score is held', async () => {
    const folder = folderWith({ 'part.musicxml': PART });
    const packed = (name: string) => {
      const files = unzipSync(readFileSync(join(folder, name)));
      const [, path] = /full-path="([^"]+)"/.exec(strFromU8(files['META-INF/container.xml']!))!;
      return strFromU8(files[path!]!);
    };
    await bellhandHere(folder, ['annotate', 'part.musicxml', '-o', 'part.mxl']);
    expect(packed('part.mxl')).toContain('B 2');
    await bellhandHere(folder, ['clear', 'part.mxl', '-o', 'back.musicxml']);
    expect(textOf(folder, 'back.musicxml')).toBe(PART);
    const lesson = ['lesson', '--level', '1', '--seed', '3', '-o'];
    for (const name of ['lesson.mxl', 'lesson.mxl', 'lesson.xml'])
      expect(await bellhandHere(folder, [...lesson, name])).toMatchObject({ exit: 0, stderr: '' });
    const unsealed = (text: string) => text.replace(/<!-- bellhand .*\n$/, '');
    expect(unsealed(packed('lesson.mxl'))).toBe(unsealed(textOf(folder, 'lesson.xml')));
    expect(await bellhandHere(folder, ['check', 'lesson.mxl'])).toMatchObject({ exit: 0 });
  });

  test('chooses what a chart is', async () => {
    const folder = folderWith({});
    await bellhandHere(folder, ['chart', '-o', 'chart.musicxml']);
    expect(textOf(folder, 'chart.musicxml')).toContain('<score-partwise');
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

describe('in place', () => {
  test('a file that is already as it should be is not written', async () => {
    const folder = folderWith({ 'part.musicxml': PART });
    await bellhandHere(folder, ['annotate', 'part.musicxml', '--in-place']);
    utimesSync(join(folder, 'part.musicxml'), 1, 1);
    chmodSync(join(folder, 'part.musicxml'), 0o444);
    expect((await bellhandHere(folder, ['annotate', 'part.musicxml', '--in-place'])).exit).toBe(0);
    expect(statSync(join(folder, 'part.musicxml')).mtimeMs).toBe(1000);
  });

  test('a file that may only be read is refused without --force', () => {
    const folder = folderWith({ 'part.musicxml': PART });
    chmodSync(join(folder, 'part.musicxml'), 0o444);
    const { exit, stderr } = bellhand(folder, ['annotate', 'part.musicxml', '--in-place']);
    expect(exit).toBe(2);
    expect(stderr).toMatch(/^bellhand: part\.musicxml: may only be read: [^\n]+--force\n$/);
    expect(textOf(folder, 'part.musicxml')).toBe(PART);
    expect(bellhand(folder, ['annotate', 'part.musicxml', '--in-place', '--force']).exit).toBe(0);
    expect(statSync(join(folder, 'part.musicxml')).mode & 0o777).toBe(0o444);
    expect(textOf(folder, 'part.musicxml')).toContain('(C♯)\nB 2');
  });

  test('hard links stay links to the same file, longer and shorter', () => {
    const folder = folderWith({ 'part.musicxml': PART });
    linkSync(join(folder, 'part.musicxml'), join(folder, 'archive.musicxml'));
    expect(bellhand(folder, ['annotate', 'part.musicxml', '--in-place'])).toMatchObject({
      exit: 0,
      stderr: '',
    });
    expect(textOf(folder, 'archive.musicxml')).toContain('(C♯)\nB 2');
    expect(bellhand(folder, ['clear', 'archive.musicxml', '--in-place']).exit).toBe(0);
    expect(textOf(folder, 'part.musicxml')).toBe(PART);
    expect(readdirSync(folder).sort()).toEqual(['archive.musicxml', 'part.musicxml']);
  });

  test.each(['annotate', 'clear'])('a score with two parts of one id stays as it is: %s', async (command) => {
    const [listed] = /<score-part.*<\/score-part>/.exec(PART)!;
    const twice = PART.replace(listed, `${listed}\n${listed}`);
    const folder = folderWith({ 'part.musicxml': twice });
    expect(await bellhandHere(folder, [command, 'part.musicxml', '--in-place', '--force'])).toMatchObject({
      exit: 2,
      stdout: '',
      stderr: expect.stringMatching(
        /^bellhand: part\.musicxml: line 4, column \d+: two parts have the id "P1"/,
      ),
    });
    expect(textOf(folder, 'part.musicxml')).toBe(twice);
    expect(readdirSync(folder)).toEqual(['part.musicxml']);
  });

  test('a name of 255 bytes works', async () => {
    const name = `${'é'.repeat(122)}.musicxml`;
    expect(Buffer.byteLength(name)).toBe(253);
    const folder = folderWith({ [name]: PART });
    expect(await bellhandHere(folder, ['annotate', name, '--in-place'])).toMatchObject({
      exit: 0,
      stderr: '',
    });
    expect(readdirSync(folder)).toEqual([name]);
  });

  test.skipIf(!isRoot)('owner and group stay', async () => {
    const folder = folderWith({ 'part.musicxml': PART });
    chownSync(join(folder, 'part.musicxml'), 1234, 2345);
    chmodSync(join(folder, 'part.musicxml'), 0o660);
    expect(await bellhandHere(folder, ['annotate', 'part.musicxml', '--in-place'])).toMatchObject({
      exit: 0,
      stderr: '',
    });
    const { uid, gid, mode } = statSync(join(folder, 'part.musicxml'));
    expect({ uid, gid, mode: mode & 0o777 }).toEqual({ uid: 1234, gid: 2345, mode: 0o660 });
  });

  test.skipIf(!isRoot)('the owner stays when another writes, and is told of when it cannot', () => {
    const folder = folderWith({ 'part.musicxml': PART, 'locked.musicxml': PART });
    chmodSync(folder, 0o777);
    chmodSync(join(folder, 'part.musicxml'), 0o666);
    chmodSync(join(folder, 'locked.musicxml'), 0o644);
    const asOther = (...args: string[]) =>
      spawnSync(process.execPath, [COMMAND, ...args], {
        cwd: folder,
        encoding: 'utf8',
        uid: 4321,
        gid: 4321,
      });
    expect(asOther('annotate', 'part.musicxml', '--in-place')).toMatchObject({ status: 0, stderr: '' });
    expect(statSync(join(folder, 'part.musicxml')).uid).toBe(0);
    expect(asOther('annotate', 'locked.musicxml', '--in-place').status).toBe(2);
    const forced = asOther('annotate', 'locked.musicxml', '--in-place', '--force');
    expect(forced.status).toBe(0);
    expect(forced.stderr).toBe(
      'bellhand: locked.musicxml: its group could not be kept\nbellhand: locked.musicxml: its owner could not be kept\n',
    );
    expect(textOf(folder, 'locked.musicxml')).toContain('(C♯)\nB 2');
  });
});

describe('a cleared archive', () => {
  const container =
    '<?xml version="1.0"?><container><rootfiles><rootfile full-path="in/score.xml"/></rootfiles></container>';
  const packed = zipSync({
    mimetype: [strToU8('application/vnd.recordare.musicxml'), { level: 0 }],
    'META-INF/container.xml': strToU8(container),
    'in/score.xml': [strToU8(PART), { level: 1, comment: 'as engraved' }],
    'notes.txt': strToU8('keep me'),
  });

  test('is the same archive byte for byte, however often it was marked', async () => {
    const folder = folderWith({ 'part.mxl': packed });
    await bellhandHere(folder, ['annotate', 'part.mxl']);
    await bellhandHere(folder, ['annotate', 'part.marked.mxl', '-o', 'twice.mxl', '--show', 'natural']);
    await bellhandHere(folder, ['annotate', 'twice.mxl', '--in-place', '--complete']);
    for (const marked of ['part.marked.mxl', 'twice.mxl']) {
      await bellhandHere(folder, ['clear', marked, '-o', 'back.mxl', '--force']);
      expect(readFileSync(join(folder, 'back.mxl')), marked).toEqual(Buffer.from(packed));
    }
    await bellhandHere(folder, ['annotate', 'part.mxl', '--in-place']);
    await bellhandHere(folder, ['clear', 'part.mxl', '--in-place']);
    expect(readFileSync(join(folder, 'part.mxl'))).toEqual(Buffer.from(packed));
  });

  test('keeps nothing of before when the score was changed meanwhile', async () => {
    const folder = folderWith({ 'part.mxl': packed });
    await bellhandHere(folder, ['annotate', 'part.mxl', '--in-place']);
    const entries = unzipSync(readFileSync(join(folder, 'part.mxl')));
    const changed = strFromU8(entries['in/score.xml']!).replace('Horn in F', 'Horn 2 in F');
    writeFileSync(join(folder, 'part.mxl'), zipSync({ ...entries, 'in/score.xml': strToU8(changed) }));
    await bellhandHere(folder, ['clear', 'part.mxl', '--in-place']);
    const cleared = unzipSync(readFileSync(join(folder, 'part.mxl')));
    expect(Object.keys(cleared)).toEqual(['mimetype', 'META-INF/container.xml', 'in/score.xml', 'notes.txt']);
    expect(strFromU8(cleared['in/score.xml']!)).toBe(PART.replace('Horn in F', 'Horn 2 in F'));
  });
});
