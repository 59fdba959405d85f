/** `--in-place` changes nothing of a file but its marks: rights, links, owner and name stay. */
import { spawnSync } from 'node:child_process';
import { chmodSync, chownSync, linkSync, readdirSync, statSync, utimesSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { bellhand, bellhandHere, COMMAND, folderWith, textOf } from './bellhand.ts';
import { SURE as PART } from './hornParts.ts';

const isRoot = process.getuid?.() === 0;

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
