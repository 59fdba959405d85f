/**
 * Spreads files over threads and hands the results back in the order of the files. The thread that is here already works
 * too: starting and warming up another costs as much as many a file. Whoever is free takes the next file by itself.
 */
import { Worker } from 'node:worker_threads';
import { EXIT } from '../failure.ts';
import { wordsFor } from '../reader.ts';
import { type FileTask, type Outcome, runFileTask } from './fileTask.ts';
import type { FilePair } from './outputs.ts';

/** What a worker thread is given: the task, all files, and the state that all threads share. */
export interface Share {
  readonly task: FileTask;
  readonly pairs: readonly FilePair[];
  /** Indexes into `pairs`, in the order in which the files are taken. */
  readonly order: Int32Array;
  /** Places in `order` taken so far; past its end when nothing more is to be begun. */
  readonly taken: Int32Array;
  /** Of each worker, the index of the file it is at; −1 between files. */
  readonly at: Int32Array;
  /** Which worker this is. */
  readonly worker: number;
}

/** What a worker says of a file when it is done. */
export interface Finished {
  readonly index: number;
  readonly outcome: Outcome;
}

/**
 * The index of the next file for a thread; −1 when none is left.
 */
export function takeNext({ order, taken }: Pick<Share, 'order' | 'taken'>): number {
  const place = Atomics.add(taken, 0, 1);
  return place >= 0 && place < order.length ? order[place]! : -1;
}

/**
 * Runs a task on every file.
 * @param order indexes into `pairs`, in the order in which the files are to be begun
 * @param jobs how many files at once; 1 or more
 * @param onResult called once for each file, in the order of `pairs`, as soon as everything before it is there
 * @param onProgress called with the number of files done
 * @param stop when it comes, files that were begun are finished and no other is
 */
export async function runOnAll(
  task: FileTask,
  pairs: readonly FilePair[],
  order: readonly number[],
  jobs: number,
  onResult: (outcome: Outcome, pair: FilePair) => void,
  onProgress: (done: number) => void,
  stop: AbortSignal,
): Promise<void> {
  const shared = {
    task,
    pairs,
    order: sharedNumbers(order),
    taken: sharedNumbers([0]),
    at: sharedNumbers(Array.from({ length: jobs }, () => -1)),
  };
  const end = (): void => {
    Atomics.store(shared.taken, 0, pairs.length);
  };
  if (stop.aborted) end();
  stop.addEventListener('abort', end);
  const outcomes = new Map<number, Outcome>();
  let told = 0;
  let done = 0;
  const finish = (index: number, outcome: Outcome): void => {
    outcomes.set(index, outcome);
    done += 1;
    for (let ready = outcomes.get(told); ready; ready = outcomes.get(told)) {
      outcomes.delete(told);
      onResult(ready, pairs[told]!);
      told += 1;
    }
    onProgress(done);
  };

  /** One worker works until no file is left; one that dies costs its file alone, and another takes over. */
  const work = (number: number): Promise<void> =>
    new Promise((resolve) => {
      const workerData: Share = { ...shared, worker: number };
      const worker = new Worker(new URL('./bellhand-worker.js', import.meta.url), { workerData });
      let cause = 'its worker stopped';
      worker.on('message', ({ index, outcome }: Finished) => finish(index, outcome));
      worker.on('error', (fault) => {
        cause = fault.message;
      });
      worker.on('exit', () => {
        const index = Atomics.exchange(shared.at, number, -1);
        if (index < 0) return resolve();
        const message = wordsFor(task.reader).faults.workerDied(pairs[index]!.input, cause);
        finish(index, { lines: [], messages: [message], exit: EXIT.failed });
        if (Atomics.load(shared.taken, 0) < pairs.length) work(number).then(resolve);
        else resolve();
      });
    });

  const workers = Array.from({ length: Math.min(jobs, pairs.length) - 1 }, (_, i) => work(i));
  for (let index = takeNext(shared); index >= 0; index = takeNext(shared)) {
    finish(index, runFileTask(task, pairs[index]!));
    // Lets in what the workers have to say, and an interrupt.
    await new Promise(setImmediate);
  }
  await Promise.all(workers);
  // Results behind one that was never begun have waited for it in vain.
  for (const index of [...outcomes.keys()].sort((a, b) => a - b))
    onResult(outcomes.get(index)!, pairs[index]!);
}

function sharedNumbers(values: readonly number[]): Int32Array {
  const numbers = new Int32Array(new SharedArrayBuffer(4 * values.length));
  numbers.set(values);
  return numbers;
}
