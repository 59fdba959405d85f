/** What annotate, clear and check share: many files, many threads, results in order, one exit code. */
import { availableParallelism } from 'node:os';
import type { Command } from 'commander';
import type { CommandLineWords } from '../../../core/index.ts';
import { EXIT, type ExitCode } from '../failure.ts';
import { wholeNumber } from '../options/optionValues.ts';
import { hasReaderLeft, printLines, warnLines } from '../output/streams.ts';
import { wordsFor } from '../reader.ts';
import type { FileTask, Outcome } from './fileTask.ts';
import { planLoad } from './load.ts';
import type { FilePair } from './outputs.ts';
import { runOnAll } from './pool.ts';
import { Progress } from './progress.ts';

/** Adds `--jobs` to a command. */
export function withJobs(command: Command, words: CommandLineWords): Command {
  return command.option('--jobs <number>', words.options.jobs, wholeNumber(words), availableParallelism());
}

/**
 * Does a task on every file and prints what comes of it, in the order of the files. An interrupt lets the files that
 * were begun come to their end; a second one does not wait.
 * @returns the worst exit code of any file
 * @throws {Failure} when results cannot be printed; files that were begun are finished
 */
export async function runFiles(task: FileTask, pairs: readonly FilePair[], jobs: number): Promise<ExitCode> {
  const progress = new Progress(pairs.length, wordsFor(task.reader));
  const end = new AbortController();
  let fault: unknown = null;
  let worst: ExitCode = EXIT.fine;
  let done = 0;
  let failed = 0;
  const tell = ({ lines, messages, exit }: Outcome): void => {
    progress.hide();
    try {
      if (!fault) printLines(lines);
    } catch (refused) {
      fault = refused;
    }
    // A check that nobody reads is in vain; files that are written are not.
    if (fault || (task.kind === 'check' && hasReaderLeft())) end.abort();
    warnLines(messages);
    if (exit > worst) worst = exit;
    if (exit === EXIT.failed) failed += 1;
    done += 1;
  };
  const stop = () => end.abort();
  if (pairs.length > 1) process.once('SIGINT', stop).once('SIGTERM', stop);
  const inputs = pairs.map(({ input }) => input);
  const load = planLoad(inputs, jobs);
  await runOnAll(task, pairs, load.order, load.jobs, tell, (finished) => progress.show(finished), end.signal);
  process.off('SIGINT', stop).off('SIGTERM', stop);
  progress.hide();
  if (fault) throw fault;
  if (hasReaderLeft() && task.kind === 'check') return worst;
  const left = pairs.length - done;
  if (pairs.length > 1) warnLines([summary(pairs.length, failed, left, wordsFor(task.reader))]);
  return left > 0 ? EXIT.failed : worst;
}

function summary(files: number, failed: number, left: number, { told }: CommandLineWords): string {
  const parts = [told.files(files)];
  if (failed > 0) parts.push(told.failed(failed));
  if (left > 0) parts.push(told.interrupted(left));
  if (parts.length === 1) parts.push(told.allDone);
  return parts.join(', ');
}
