/** A worker thread: takes files one by one, as long as there are any, and does the task on each. */
import { parentPort, workerData } from 'node:worker_threads';
import { runFileTask } from './fileTask.ts';
import { type Finished, type Share, takeNext } from './pool.ts';

const share = workerData as Share;
const { task, pairs, at, worker } = share;

for (let index = takeNext(share); index >= 0; index = takeNext(share)) {
  Atomics.store(at, worker, index);
  const outcome = runFileTask(task, pairs[index]!);
  parentPort!.postMessage({ index, outcome } satisfies Finished);
  Atomics.store(at, worker, -1);
}
