/** What annotate, clear and check share: many files, many threads, results in order, one exit code. */
import { availableParallelism } from 'node:os';
import type { Command } from 'commander';
import { amount } from './counts.ts';
import { EXIT, type ExitCode } from './failure.ts';
import { type FileTask, type Outcome, runFileTask } from './fileTask.ts';
import { wholeNumber } from './optionValues.ts';
import type { FilePair } from './outputs.ts';
import { runOnAll } from './pool.ts';
import { Progress } from './progress.ts';

/** Adds `--jobs` to a command. */
export function withJobs(command: Command): Command {
  return command.option('--jobs <number>', 'files worked on at once', wholeNumber, availableParallelism());
}

/**
 * Does a task on every file and prints what comes of it, in the order of the files.
 * @returns the worst exit code of any file
 */
export async function runFiles(task: FileTask, pairs: readonly FilePair[], jobs: number): Promise<ExitCode> {
  const progress = new Progress(pairs.length);
  let worst: ExitCode = EXIT.fine;
  let failed = 0;
  const tell = ({ stdout, stderr, exit }: Outcome): void => {
    progress.hide();
    process.stdout.write(stdout);
    process.stderr.write(stderr);
    if (exit > worst) worst = exit;
    if (exit === EXIT.failed) failed += 1;
  };
  if (pairs.length === 1 || jobs === 1) {
    // One thread is enough, and this one is already running.
    pairs.forEach((pair, i) => {
      tell(runFileTask(task, pair));
      progress.show(i + 1);
    });
  } else {
    await runOnAll(task, pairs, jobs, tell, (done) => progress.show(done));
  }
  progress.hide();
  if (pairs.length > 1) {
    process.stderr.write(
      `bellhand: ${amount(pairs.length, 'file')}, ${failed === 0 ? 'all done' : `${failed} failed`}\n`,
    );
  }
  return worst;
}
