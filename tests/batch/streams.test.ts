/** What leaves by standard output and standard error: whole or said why not, and never able to steer a terminal. */
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { printable, printableJson } from '../../plugin/batch/output/printable.ts';
import { bellhand, bellhandHere, COMMAND, folderWith, score, textOf } from './bellhand.ts';

const PART = score(['C5+', 'F2+']);
/** Far more than the 64 KB that a pipe holds. */
const LONG = score(Array.from({ length: 2000 }, () => 'C5+'));

/** Runs a line of shell in which `bellhand` is the built command; standard error comes with its exit code. */
function shell(folder: string, line: string): { stdout: string; stderr: string; exit: number | null } {
  const whole = `set -o pipefail; bellhand() { '${process.execPath}' '${COMMAND}' "$@"; }; ${line}`;
  const { stdout, stderr, status } = spawnSync('bash', ['-c', whole], {
    cwd: folder,
    encoding: 'utf8',
    maxBuffer: 2 ** 26,
  });
  return { stdout, stderr, exit: status };
}

function expectFull(stderr: string): void {
  expect(stderr).toMatch(/^bellhand: standard output cannot be written: the disk is full: [^\n]+\n$/m);
  expect(stderr).not.toMatch(/fault in bellhand|node:/);
}

describe('pipes', () => {
  test('a slow reader gets all of it', () => {
    const folder = folderWith({ 'part.musicxml': LONG });
    bellhand(folder, ['annotate', 'part.musicxml', '-o', 'file.musicxml']);
    const { exit, stderr } = shell(
      folder,
      'bellhand annotate part.musicxml -o - | (sleep 0.3; cat > piped.musicxml)',
    );
    expect({ exit, stderr }).toEqual({
      exit: 0,
      stderr: 'bellhand: part.musicxml: 2000 stopped notes: 2000 sure\n',
    });
    expect(bellhand(folder, ['clear', 'piped.musicxml', '-o', '-']).stdout).toBe(LONG);
  });

  test('a pipe that somebody made not to wait is waited for', () => {
    // A parent that looks at its own standard output leaves the pipe in that state.
    const parent = `process.stdout; require('child_process').spawnSync(process.execPath, process.argv.slice(2), { stdio: 'inherit' })`;
    const line = `node parent.cjs ${COMMAND} check part.musicxml --format json | (sleep 0.3; cat)`;
    const { stdout, stderr } = shell(folderWith({ 'part.musicxml': LONG, 'parent.cjs': parent }), line);
    expect(stderr).toBe('');
    expect(JSON.parse(stdout).parts[0].notes).toHaveLength(2000);
  });

  test.each([
    'check part.musicxml',
    'annotate part.musicxml -o -',
    'check part.musicxml --format json',
    'chart --format musicxml -o -',
  ])('a reader of "%s" who leaves ends it quietly', (command) => {
    const folder = folderWith({ 'part.musicxml': LONG });
    const { stderr } = shell(folder, `bellhand ${command} | head -c 10 >/dev/null; exit 0`);
    expect(stderr.replace(/^bellhand: part\.musicxml: 2000 stopped notes: 2000 sure\n$/, '')).toBe('');
  });

  test('files are written though nobody reads what is said of them', () => {
    const names = Array.from({ length: 8 }, (_, i) => `${i}.musicxml`);
    const folder = folderWith(Object.fromEntries(names.map((name) => [name, PART])));
    shell(folder, `bellhand annotate *.musicxml -o out/ --jobs 1 2>/dev/null | true`);
    expect(readdirSync(join(folder, 'out'))).toEqual(names);
  });

  test.each(['check part.musicxml', '--help'])('"%s" into a full disk says so and ends with 2', (command) => {
    const folder = folderWith({ 'part.musicxml': PART });
    const { exit, stderr } = shell(folder, `bellhand ${command} > /dev/full`);
    expect(exit).toBe(2);
    expectFull(stderr);
  });

  test.each([
    'check part.musicxml other.musicxml --jobs 2',
    'annotate part.musicxml -o -',
    'explain C5',
    'check --help',
  ])('so does "%s"', async (command) => {
    const folder = folderWith({ 'part.musicxml': PART, 'other.musicxml': PART });
    const { exit, stderr } = await bellhandHere(folder, command.split(' '), '', undefined, '/dev/full');
    expect(exit).toBe(2);
    expectFull(stderr);
  });

  test('messages that are lost end with 2', () => {
    const folder = folderWith({ 'part.musicxml': PART });
    expect(shell(folder, 'bellhand check none.musicxml 2> /dev/full').exit).toBe(2);
    expect(shell(folder, 'bellhand annotate part.musicxml 2> /dev/full').exit).toBe(2);
  });

  test.each(['/dev/stdout', '/dev/fd/1', '/proc/self/fd/1'])(
    '-o %s puts nothing but music there',
    (place) => {
      const folder = folderWith({ 'part.musicxml': PART });
      const { exit, stdout, stderr } = shell(folder, `bellhand annotate part.musicxml -o ${place} | cat`);
      expect(exit).toBe(0);
      expect(stdout).toMatch(/^<\?xml[\s\S]*<\/score-partwise>\n$/);
      expect(stderr).toMatch(/^bellhand: part\.musicxml: 2 stopped notes/);
      const etude = shell(folder, `bellhand etude --kind bend --seed 3 -o ${place} > etude.musicxml`);
      expect(etude.stderr).toMatch(/^bellhand: /);
      expect(readFileSync(join(folder, 'etude.musicxml'), 'utf8')).toMatch(
        /^<\?xml[\s\S]*<\/score-partwise>\s*$/,
      );
    },
  );

  const OWN_INPUT = {
    exit: 2,
    stderr: 'bellhand: part.musicxml: standard output goes into this input: send it to another file\n',
  };

  test('nothing is printed into its own input', () => {
    const folder = folderWith({ 'part.musicxml': PART });
    const { exit, stderr } = shell(folder, 'bellhand check part.musicxml >> part.musicxml');
    expect({ exit, stderr }).toEqual(OWN_INPUT);
    expect(textOf(folder, 'part.musicxml')).toBe(PART);
  });

  test.each(['annotate part.musicxml -o -', 'report part.musicxml -o -'])('nor by "%s"', async (command) => {
    const folder = folderWith({ 'part.musicxml': PART });
    const run = await bellhandHere(folder, command.split(' '), '', undefined, 'part.musicxml');
    expect(run).toMatchObject(OWN_INPUT);
    expect(textOf(folder, 'part.musicxml')).toBe(PART);
  });

  test('standard input among files does not mix music with messages', () => {
    const folder = folderWith({ 'part.musicxml': PART });
    const { exit, stdout, stderr } = bellhand(folder, ['annotate', '-', 'part.musicxml'], PART);
    expect({ exit, stdout }).toEqual({ exit: 2, stdout: '' });
    expect(stderr).toContain('name a folder with -o');
  });

  test('input without end is refused, not waited for', () => {
    const { exit, stderr } = shell(folderWith(), 'bellhand check /dev/zero; bellhand check - < /dev/zero');
    expect(exit).toBe(2);
    expect(stderr).toMatch(
      /^bellhand: \/dev\/zero: larger than 128 MB[^\n]+\nbellhand: standard input: larger than 128 MB[^\n]+\n$/,
    );
  });
});

/** One of each kind: control, escape sequence, C1, line and paragraph separators, direction, isolate, half of a pair. */
const STEERING = [
  '\u0007',
  '\u001b[31m',
  '\u009b31m',
  '\u0085',
  '\u2028',
  '\u2029',
  '\u202e',
  '\u2066',
  '\u200f',
  '\ud800',
];
const RAW = /(?!\n)[\p{Cc}\p{Zl}\p{Zp}\p{Bidi_Control}]/u;

describe('terminals', () => {
  test.each(STEERING)('%j is shown as its number', (text) => {
    expect(printable(`a${text}b`)).not.toMatch(RAW);
    expect(printable(`a${text}b`)).toContain(`a\\u{${text.codePointAt(0)!.toString(16)}}`);
    expect(JSON.parse(printableJson({ text }))).toEqual({ text });
    expect(printableJson({ text })).not.toMatch(RAW);
  });

  test.each(['♯♭→ × ≈ é 其 𝄪', 'می‌خواهم', '👩‍🎤'])('%s stays as it is', (text) => {
    expect(printable(text)).toBe(text);
    expect(printableJson(text)).toBe(`"${text}"`);
  });

  const FOREIGN = `Horn\u202e in F\u009b31m`;
  const commands: readonly (readonly string[])[] = [
    ['check', 'part.musicxml'],
    ['check', 'part.musicxml', '--format', 'json'],
    ['check', 'part.musicxml', 'part.musicxml', '--format', 'json'],
    ['check', 'part.musicxml', '--part', 'Tu\u001b[31mba\u2028'],
    ['check', 'no\u001b[2Jne.musicxml'],
    ['check', 'no\nne.musicxml'],
    ['annotate', 'part.musicxml'],
    ['annotate', 'part.musicxml', '-o', 'ou\u001b[31mt\u202e\n.musicxml'],
    ['explain', 'C5', '--horn', 'mi\u001b[31mne.json'],
    ['explain', 'X\u001b[31m5'],
    ['st\u001b[31mop'],
    ['check', 'part.musicxml', '--lo\u001b[31mud'],
  ];
  test.each(commands.map((args) => ({ args })))('$args', async ({ args }) => {
    const bad = score(['C5+', 'F2+', 'C5+', 'E4+'], { name: FOREIGN }).replace(
      'number="1"',
      'number="1&#x85;&#x202E;&#xA;x"',
    );
    const { stdout, stderr } = await bellhandHere(folderWith({ 'part.musicxml': bad }), args);
    expect(stdout + stderr).not.toBe('');
    expect(stdout + stderr).not.toMatch(RAW);
    if (stderr !== '') expect(stderr).toMatch(/^(?:bellhand: [^\n]+\n)+$/);
  });
});

test('nothing in the command line writes to the streams or to disk but by its one writer', () => {
  const root = new URL('../../plugin/batch/', import.meta.url);
  const files = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter(
    (name) => name.endsWith('.ts') && !name.startsWith('output/'),
  );
  expect(files.length).toBeGreaterThan(20);
  const wrong = files.filter((name) =>
    /process\.std(?:out|err)\b|console\.|\bwrite(?:File)?Sync\b|\bcreateWriteStream\b|\bwriteFile\b/.test(
      readFileSync(new URL(name, root), 'utf8'),
    ),
  );
  expect(wrong).toEqual([]);
});
