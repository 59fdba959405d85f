/** A worker thread: takes files one by one and does the task on each. */
import { parentPort, workerData } from 'node:worker_threads';
import { type FileTask, runFileTask } from './fileTask.ts';
import type { Assignment, Completion } from './pool.ts';

const task = workerData as FileTask;

parentPort!.on('message', ({ place, pair }: Assignment) => {
  parentPort!.postMessage({ place, outcome: runFileTask(task, pair) } satisfies Completion);
});
