/** Spreads files over worker threads and hands the results back in the order of the files. */
import { Worker } from 'node:worker_threads';
import { EXIT } from '../failure.ts';
import type { FileTask, Outcome } from './fileTask.ts';
import type { FilePair } from './outputs.ts';

/** A place in the list of files, as sent to a worker and back. */
export interface Assignment {
  readonly place: number;
  readonly pair: FilePair;
}

export interface Completion {
  readonly place: number;
  readonly outcome: Outcome;
}

/**
 * Runs a task on every file.
 * @param jobs how many files at once; 1 or more
 * @param onResult called once for each file, in the order of `pairs`, as soon as everything before it is there
 * @param onProgress called with the number of files done
 * @param stop when it comes, files that were begun are finished and no other is
 */
export async function runOnAll(
  task: FileTask,
  pairs: readonly FilePair[],
  jobs: number,
  onResult: (outcome: Outcome, pair: FilePair) => void,
  onProgress: (done: number) => void,
  stop: AbortSignal,
): Promise<void> {
  const outcomes = new Map<number, Outcome>();
  const isLeft = (): boolean => next < pairs.length && !stop.aborted;
  let next = 0;
  let told = 0;
  let done = 0;

  const finish = (place: number, outcome: Outcome): void => {
    outcomes.set(place, outcome);
    done += 1;
    for (let ready = outcomes.get(told); ready; ready = outcomes.get(told)) {
      outcomes.delete(told);
      onResult(ready, pairs[told]!);
      told += 1;
    }
    onProgress(done);
  };

  /** One worker works until no file is left; one that dies costs its file alone, and another takes over. */
  const work = (): Promise<void> =>
    new Promise((resolve) => {
      const worker = new Worker(new URL('./bellhand-worker.js', import.meta.url), { workerData: task });
      let place = -1;
      const assign = (): void => {
        place = isLeft() ? next++ : -1;
        if (place < 0) void worker.terminate();
        else worker.postMessage({ place, pair: pairs[place]! } satisfies Assignment);
      };
      let cause = 'its worker stopped';
      worker.on('message', (completion: Completion) => {
        finish(completion.place, completion.outcome);
        assign();
      });
      worker.on('error', (fault) => {
        cause = fault.message;
      });
      worker.on('exit', () => {
        if (place < 0) {
          resolve();
          return;
        }
        const remedy = 'try it alone, with --jobs 1';
        finish(place, {
          lines: [],
          messages: [`${pairs[place]!.input}: could not be worked on (${cause}): ${remedy}`],
          exit: EXIT.failed,
        });
        if (isLeft()) work().then(resolve);
        else resolve();
      });
      assign();
    });

  await Promise.all(Array.from({ length: Math.min(jobs, pairs.length) }, work));
}
