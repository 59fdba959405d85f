/** `bellhand watch`, run as a user runs it, against a file that is saved the ways editors save. */
import { renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { bellhand, folderWith, score, startBellhand } from '../batch/bellhand.ts';

const FINE = score(['C5+', 'E5']);
/** F2 lies a fifth below the lowest stopped note a lip can force; common practice, no source. */
const IMPOSSIBLE = score(['C5+', 'F2+']);

/** A running watch and all it has said so far. */
class Watch {
  stdout = '';
  stderr = '';
  readonly folder: string;
  private readonly process;

  constructor(content: string) {
    this.folder = folderWith({ 'part.musicxml': content });
    this.process = startBellhand(this.folder, ['watch', 'part.musicxml']);
    this.process.stdout.on('data', (data) => {
      this.stdout += data;
    });
    this.process.stderr.on('data', (data) => {
      this.stderr += data;
    });
    onTestFinished(() => void this.process.kill('SIGKILL'));
  }

  save(content: string): void {
    writeFileSync(join(this.folder, 'part.musicxml'), content);
  }

  /** Waits until it has said something more that matches; fails with what it said instead. */
  async says(pattern: RegExp, stream: 'stdout' | 'stderr' = 'stdout'): Promise<void> {
    for (let waited = 0; waited < 15_000; waited += 25) {
      if (pattern.test(this[stream])) return;
      await pause(25);
    }
    expect(`${this.stdout}${this.stderr}`).toMatch(pattern);
  }

  forget(): void {
    this.stdout = '';
    this.stderr = '';
  }

  async interrupt(): Promise<number | null> {
    const ended = new Promise<number | null>((resolve) => this.process.once('exit', (code) => resolve(code)));
    this.process.kill('SIGINT');
    return ended;
  }
}

function pause(milliseconds: number): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, milliseconds);
  });
}

async function watching(content: string): Promise<Watch> {
  const watch = new Watch(content);
  await watch.says(/Ctrl-C ends it/);
  return watch;
}

describe('watch', () => {
  test('says at first what there is, then what came and what went, and ends cleanly', async () => {
    const watch = await watching(FINE);
    expect(watch.stdout).toContain('part.musicxml: 1 stopped note: 1 sure');
    watch.forget();
    watch.save(IMPOSSIBLE);
    await watch.says(/\+ Horn in F, bar 1, beat 3, F2: impossible \(below-the-hand\)\n {6}.+\n {6}.+/);
    watch.forget();
    watch.save(FINE);
    await watch.says(/− Horn in F, bar 1, beat 3, F2: impossible \(below-the-hand\) is gone/);
    watch.forget();
    watch.save(`${FINE}\n`);
    await watch.says(/nothing new/);
    expect(await watch.interrupt()).toBe(0);
    expect(watch.stderr).toBe('');
  });

  test('waits out a half-written save', async () => {
    const watch = await watching(FINE);
    watch.save(IMPOSSIBLE.slice(0, IMPOSSIBLE.length / 2));
    await pause(300);
    watch.save(IMPOSSIBLE);
    await watch.says(/\+ Horn in F, bar 1/);
    expect(watch.stderr).toBe('');
  });

  test('follows a file that is replaced by renaming, again and again', async () => {
    const watch = await watching(FINE);
    for (const [content, said] of [
      [IMPOSSIBLE, /\+ Horn in F/],
      [FINE, /− Horn in F/],
      [IMPOSSIBLE, /\+ Horn in F/],
    ] as const) {
      watch.forget();
      writeFileSync(join(watch.folder, 'part.musicxml.new'), content);
      renameSync(join(watch.folder, 'part.musicxml.new'), join(watch.folder, 'part.musicxml'));
      await watch.says(said);
    }
    expect(watch.stderr).toBe('');
  });

  test('says that the file is gone, once, and goes on when it is back', async () => {
    const watch = await watching(FINE);
    rmSync(join(watch.folder, 'part.musicxml'));
    await watch.says(/is gone; waiting/);
    await pause(1500);
    expect(watch.stdout.match(/is gone; waiting/g)).toHaveLength(1);
    watch.forget();
    watch.save(IMPOSSIBLE);
    await watch.says(/\+ Horn in F/);
    expect(watch.stderr).toBe('');
  });

  test('tells a lasting fault once, then recovers', async () => {
    const watch = await watching(FINE);
    watch.save('<score-partwise');
    await watch.says(/bellhand: part\.musicxml: .+/, 'stderr');
    await pause(1500);
    expect(watch.stderr.trim().split('\n')).toHaveLength(1);
    watch.save(IMPOSSIBLE);
    await watch.says(/\+ Horn in F/);
  });

  test.each([
    { what: 'a file that is not there', args: ['watch', 'none.musicxml'] },
    { what: 'a folder', args: ['watch', '.'] },
    { what: 'standard input', args: ['watch', '-'] },
  ])('refuses $what with one line', ({ args }) => {
    const run = bellhand(folderWith(), args);
    expect(run.exit).toBe(2);
    expect(run.stderr).toMatch(/^bellhand: [^\n]+\n$/);
    expect(run.stdout).toBe('');
  });
});
