/** Many files: in parallel, told in order, one bad one among them. */
import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { bellhand, bellhandHere, folderWith, score, startBellhand, textOf } from './bellhand.ts';

/** Long ones first, so that workers finish in another order than the files are given in. */
const FILES: { readonly [name: string]: string } = {
  'a-long.musicxml': score(Array.from({ length: 1500 }, () => 'C5+')),
  'b-bad.musicxml': 'no score at all',
  'c-short.musicxml': score(['B4+', 'E5']),
  'd-low.musicxml': score(['F2+', 'E5']),
  'e-short.musicxml': score(['D5+', 'D5+']),
};
const NAMES = Object.keys(FILES);
const STEMS = NAMES.map((name) => name.replace('.musicxml', ''));

test.each(['1', '2', '3', '16'])('annotates in order with --jobs %s; the bad file alone fails', (jobs) => {
  const folder = folderWith(FILES);
  const { exit, stdout, stderr } = bellhand(folder, ['annotate', ...NAMES, '--jobs', jobs, '-o', 'out/']);
  expect(exit).toBe(2);
  expect(stdout).toBe(
    [
      'out/a-long.musicxml: 1500 stopped notes: 1500 sure',
      'out/c-short.musicxml: 1 stopped note: 1 sure',
      'out/d-low.musicxml: 1 stopped note: 1 impossible',
      'out/e-short.musicxml: 2 stopped notes: 2 sure',
      '',
    ].join('\n'),
  );
  const lines = stderr.trimEnd().split('\n');
  expect(lines).toHaveLength(3);
  expect(lines[0]).toMatch(/^bellhand: b-bad\.musicxml: .*not XML/);
  expect(lines[1]).toMatch(/^bellhand: d-low\.musicxml: 1 note cannot be played/);
  expect(lines[2]).toBe('bellhand: 5 files, 1 failed');
  expect(readdirSync(`${folder}/out`).sort()).toEqual(NAMES.filter((name) => name !== 'b-bad.musicxml'));
});

test('annotates in place, and the bad file stays as it was', async () => {
  const folder = folderWith(FILES);
  expect((await bellhandHere(folder, ['annotate', ...NAMES, '--in-place'])).exit).toBe(2);
  expect(textOf(folder, 'b-bad.musicxml')).toBe(FILES['b-bad.musicxml']);
  expect((await bellhandHere(folder, ['clear', ...NAMES, '--in-place'])).exit).toBe(2);
  for (const name of NAMES) expect(textOf(folder, name), name).toBe(FILES[name]);
  expect(readdirSync(folder).sort()).toEqual(NAMES);
});

test('check ends with the worst exit code of any file', async () => {
  const folder = folderWith(FILES);
  const without = (...left: string[]) => NAMES.filter((name) => !left.includes(name));
  expect((await bellhandHere(folder, ['check', ...NAMES])).exit).toBe(2);
  expect((await bellhandHere(folder, ['check', ...without('b-bad.musicxml')])).exit).toBe(1);
  expect((await bellhandHere(folder, ['check', ...without('b-bad.musicxml', 'd-low.musicxml')])).exit).toBe(
    0,
  );
});

test('check --format json prints one object a file, in order, a bad one with its error', async () => {
  const folder = folderWith(FILES);
  const { stdout } = await bellhandHere(folder, ['check', ...NAMES, '--format', 'json', '--jobs', '3']);
  const objects = stdout
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));
  expect(objects.map(({ file }) => file)).toEqual(NAMES);
  expect(objects[0].parts[0].notes).toHaveLength(1500);
  expect(objects[1].error).toMatch(/^b-bad\.musicxml: /);
  expect(objects[3].findings.map(({ id }: { id: string }) => id)).toEqual(['below-the-hand']);
});

test('names results after their files when no place is given', async () => {
  const folder = folderWith(FILES);
  await bellhandHere(folder, ['annotate', ...NAMES]);
  expect(readdirSync(folder).sort()).toEqual(
    STEMS.flatMap((stem) =>
      stem === 'b-bad' ? [`${stem}.musicxml`] : [`${stem}.marked.musicxml`, `${stem}.musicxml`],
    ),
  );
});

test('prints no progress where nobody watches', () => {
  const folder = folderWith({
    'a.musicxml': FILES['c-short.musicxml']!,
    'b.musicxml': FILES['e-short.musicxml']!,
  });
  expect(bellhand(folder, ['check', 'a.musicxml', 'b.musicxml']).stderr).toBe(
    'bellhand: 2 files, all done\n',
  );
});

test('an interrupt finishes what was begun, begins nothing more and leaves no half-written file', async () => {
  const long = score(Array.from({ length: 3000 }, () => 'C5+'));
  const names = Array.from({ length: 30 }, (_, i) => `${i + 10}.musicxml`);
  const folder = folderWith(Object.fromEntries(names.map((name) => [name, long])));
  const run = startBellhand(folder, ['annotate', ...names, '--jobs', '2', '-o', 'out/']);
  await new Promise((resolve) => run.stdout.once('data', resolve));
  run.kill('SIGINT');
  let stderr = '';
  run.stderr.on('data', (text) => {
    stderr += text;
  });
  const exit = await new Promise((resolve) => run.once('close', resolve));
  expect(exit).toBe(2);
  expect(stderr).toMatch(/^bellhand: 30 files, interrupted, \d+ not begun\n$/);
  const written = readdirSync(`${folder}/out`);
  expect(written.length).toBe(30 - Number(/(\d+) not begun/.exec(stderr)![1]));
  const whole = textOf(folder, `out/${written[0]}`);
  for (const name of written) expect(textOf(folder, `out/${name}`)).toBe(whole);
});
