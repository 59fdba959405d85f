/** How much is taken on at once: never more than cores and memory allow, the largest files first. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { planLoad } from '../../plugin/batch/files/load.ts';
import { bellhand, folderWith, score } from './bellhand.ts';

/** Files of these sizes in kilobytes, named by their size. */
function filesOf(kilobytes: readonly number[], ending = 'musicxml'): string[] {
  const folder = folderWith();
  return kilobytes.map((size, i) => {
    const path = join(folder, `${i}.${ending}`);
    writeFileSync(path, Buffer.alloc(1000 * size));
    return path;
  });
}

describe('planLoad', () => {
  const files = filesOf.bind(null, [1, 900, 20, 300]);
  const rich = { cores: 64, freeBytes: 64e9 };

  test('takes no more than is asked for, the files there are, or the cores', () => {
    expect(planLoad(files(), 300, rich).jobs).toBe(4);
    expect(planLoad(files(), 2, rich).jobs).toBe(2);
    expect(planLoad(files(), 300, { ...rich, cores: 3 }).jobs).toBe(3);
    expect(planLoad([], 300, rich).jobs).toBe(1);
  });

  test('takes the largest first, and goes in order alone', () => {
    expect(planLoad(files(), 2, rich).order).toEqual([1, 3, 2, 0]);
    expect(planLoad(files(), 1, rich).order).toEqual([0, 1, 2, 3]);
  });

  test('takes what fits into memory, however the files meet, and always one', () => {
    const large = filesOf([10_000, 10, 10, 10_000]);
    expect(planLoad(large, 4, { cores: 8, freeBytes: 10e6 }).jobs).toBe(1);
    expect(planLoad(large, 4, { cores: 8, freeBytes: 400e6 }).jobs).toBe(2);
    expect(planLoad(large, 4, { cores: 8, freeBytes: 1e9 }).jobs).toBe(4);
  });

  test('counts a packed score as what it unpacks to', () => {
    const machine = { cores: 8, freeBytes: 400e6 };
    expect(planLoad(filesOf([1000, 1000, 1000], 'mxl'), 3, machine).jobs).toBe(1);
    expect(planLoad(filesOf([1000, 1000, 1000]), 3, machine).jobs).toBe(3);
  });

  test('leaves a file that is missing to whoever opens it', () => {
    expect(planLoad(['none.musicxml', '-'], 2, rich)).toEqual({ jobs: 2, order: [0, 1] });
  });
});

test('300 jobs are no more threads than cores', () => {
  const names = Array.from({ length: 12 }, (_, i) => `${i}.musicxml`);
  const folder = folderWith(Object.fromEntries(names.map((name) => [name, score(['C5+', 'E5'])])));
  const { exit, stdout } = bellhand(folder, ['annotate', ...names, '--jobs', '300']);
  expect(exit).toBe(0);
  expect(stdout.trim().split('\n')).toHaveLength(12);
});
