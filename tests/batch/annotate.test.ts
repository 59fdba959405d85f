/** `annotate` marks a part as its options say, and `clear` gives it back as it was. */
import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { bellhand, bellhandHere, folderWith, score, textOf } from './bellhand.ts';
import { IMPOSSIBLE, SURE } from './hornParts.ts';

describe('annotate', () => {
  test('writes a new file beside the input and leaves the input alone', () => {
    const folder = folderWith({ 'part.musicxml': SURE });
    const run = bellhand(folder, ['annotate', 'part.musicxml']);
    expect(run).toEqual({ exit: 0, stdout: 'part.marked.musicxml: 1 stopped note: 1 sure\n', stderr: '' });
    expect(textOf(folder, 'part.musicxml')).toBe(SURE);
    expect(textOf(folder, 'part.marked.musicxml')).toContain('(C♯)\nB 2');
    expect(readdirSync(folder).sort()).toEqual(['part.marked.musicxml', 'part.musicxml']);
  });

  test('ends with 0 for an impossible note, and says so on standard error', async () => {
    const folder = folderWith({ 'part.musicxml': IMPOSSIBLE });
    const run = await bellhandHere(folder, ['annotate', 'part.musicxml']);
    expect(run.exit).toBe(0);
    expect(run.stdout).toBe('part.marked.musicxml: 2 stopped notes: 1 sure, 1 impossible\n');
    expect(run.stderr).toMatch(
      /^bellhand: part\.musicxml: 1 note cannot be played as written, in bar 1: .*\n$/,
    );
    expect(textOf(folder, 'part.marked.musicxml')).toContain('color="#D55F00"');
  });

  test.each([
    { what: 'a file', output: 'out.xml', made: 'out.xml' },
    { what: 'a folder that exists', output: '.', made: null },
    { what: 'a folder that does not exist yet', output: 'new/deep/', made: 'new/deep/part.musicxml' },
  ])('-o takes $what', async ({ output, made }) => {
    const folder = folderWith({ 'part.musicxml': SURE });
    const run = await bellhandHere(folder, ['annotate', 'part.musicxml', '-o', output]);
    if (made === null) {
      // The folder is the input's own, so the result would fall onto it.
      expect(run.exit).toBe(2);
      expect(run.stderr).toContain('would overwrite an input');
    } else {
      expect(run).toMatchObject({ exit: 0, stderr: '' });
      expect(textOf(folder, made)).toContain('(C♯)\nB 2');
    }
    expect(textOf(folder, 'part.musicxml')).toBe(SURE);
  });

  test('reads standard input and writes standard output for -', () => {
    const folder = folderWith();
    const run = bellhand(folder, ['annotate', '-'], SURE);
    expect(run.exit).toBe(0);
    expect(run.stdout).toContain('(C♯)\nB 2');
    expect(run.stdout).toMatch(/<\/score-partwise>\n$/);
    expect(run.stderr).toBe('bellhand: -: 1 stopped note: 1 sure\n');
    const back = bellhand(folder, ['clear', '-'], run.stdout);
    expect(back.stdout).toBe(SURE);
  });

  test.each<{ args: string[]; has: string[]; lacks: string[] }>([
    { args: ['--show', 'natural'], has: ['(C♯)</words>'], lacks: ['B 2', 'color='] },
    { args: ['--show', 'fingered,valves'], has: ['B 2</words>'], lacks: ['(C♯)', 'color='] },
    { args: ['--show', 'valves,verdict'], has: ['2</words>', '× too low'], lacks: ['B 2', '(C♯)', 'color='] },
    { args: ['--show', 'colour'], has: ['color="#D55F00"'], lacks: ['B 2', '(C♯)', '×'] },
    { args: ['--valves-as', 'fingering'], has: ['<fingering>', '(C♯)\nB</words>'], lacks: ['B 2'] },
    {
      args: ['--show', 'valves', '--valves-as', 'fingering'],
      has: ['2</fingering>'],
      lacks: ['<words', '(C♯)', 'color='],
    },
    // smalley: C5 is T23 on the B♭ side; a single B♭ horn has no thumb valve to name.
    { args: ['--horn', 'single-bflat'], has: ['(C♯)\nC♯ 23'], lacks: ['B 2'] },
    { args: ['--horn', 'double-stop-valve'], has: ['(C♯)\nC T0'], lacks: ['B 2'] },
  ])('$args', async ({ args, has, lacks }) => {
    const folder = folderWith({ 'part.musicxml': IMPOSSIBLE });
    expect((await bellhandHere(folder, ['annotate', 'part.musicxml', ...args])).exit).toBe(0);
    const marked = textOf(folder, 'part.marked.musicxml');
    for (const text of has) expect(marked).toContain(text);
    for (const text of lacks) expect(marked).not.toContain(text);
  });

  test('--complete adds the signs and the cancelling word that are missing, and clear takes them out', async () => {
    const worded = score(['C5', 'D5', 'G4', 'G4', 'G4', 'G4'])
      .replace(
        '<note>',
        '<direction><direction-type><words>chiuso</words></direction-type></direction><note>',
      )
      // Two bars of rest, after which a horn player opens unless told otherwise; common practice, no source.
      .replace('<measure number="2">', `${restMeasure('1a')}${restMeasure('1b')}<measure number="2">`);
    const folder = folderWith({ 'part.musicxml': worded });
    const run = await bellhandHere(folder, ['annotate', 'part.musicxml', '--complete']);
    expect(run).toMatchObject({ exit: 0, stderr: '' });
    expect(run.stdout).toBe('part.marked.musicxml: 2 stopped notes: 2 sure; added 2 signs and 1 word\n');
    const marked = textOf(folder, 'part.marked.musicxml');
    expect(marked.match(/<stopped\/>/g)).toHaveLength(2);
    expect(marked.match(/aperto<\/words>/g)).toHaveLength(1);
    expect(marked.indexOf('aperto')).toBeGreaterThan(marked.indexOf('1b'));
    await bellhandHere(folder, ['annotate', 'part.marked.musicxml', '--complete', '-o', 'again.musicxml']);
    expect(textOf(folder, 'again.musicxml')).toBe(marked);
    await bellhandHere(folder, ['clear', 'part.marked.musicxml']);
    expect(textOf(folder, 'part.cleared.musicxml')).toBe(worded);
  });

  test('repeats are left out unless they are asked for', async () => {
    const folder = folderWith({ 'part.musicxml': score(['C5+', 'C5+', 'C5+', 'B4+']) });
    const texts = async (...args: string[]) => {
      await bellhandHere(folder, ['annotate', 'part.musicxml', ...args]);
      return textOf(folder, 'part.marked.musicxml').match(/<words/g);
    };
    // A bar says anew what the bar before said.
    expect(await texts()).toHaveLength(3);
    expect(await texts('--repeat', 'all')).toHaveLength(4);
  });

  test('annotating twice changes nothing more', async () => {
    const folder = folderWith({ 'part.musicxml': IMPOSSIBLE });
    await bellhandHere(folder, ['annotate', 'part.musicxml', '-o', 'once.musicxml']);
    await bellhandHere(folder, ['annotate', 'once.musicxml', '-o', 'twice.musicxml']);
    expect(textOf(folder, 'twice.musicxml')).toBe(textOf(folder, 'once.musicxml'));
  });
});

describe('clear', () => {
  test('gives back the file as it was, under a name of its own', async () => {
    const folder = folderWith({ 'part.musicxml': IMPOSSIBLE });
    await bellhandHere(folder, ['annotate', 'part.musicxml']);
    const run = await bellhandHere(folder, ['clear', 'part.marked.musicxml']);
    expect(run).toEqual({ exit: 0, stdout: 'part.cleared.musicxml: marks taken out\n', stderr: '' });
    expect(textOf(folder, 'part.cleared.musicxml')).toBe(IMPOSSIBLE);
  });

  test('says so when there was nothing to take out', async () => {
    const folder = folderWith({ 'part.musicxml': SURE });
    const run = await bellhandHere(folder, ['clear', 'part.musicxml']);
    expect(run.stdout).toBe('part.cleared.musicxml: there were no marks to take out\n');
    expect(textOf(folder, 'part.cleared.musicxml')).toBe(SURE);
  });
});

function restMeasure(number: string): string {
  return `<measure number="${number}"><note><rest measure="yes"/><duration>4</duration><voice>1</voice></note></measure>`;
}
