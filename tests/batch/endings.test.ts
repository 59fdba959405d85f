/** What the ending of a name promises is what is written there, or nothing is. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { bellhandHere, folderWith, textOf } from './bellhand.ts';
import { SURE as PART } from './hornParts.ts';
import { WRITERS } from './writers.ts';

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
