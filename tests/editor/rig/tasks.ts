/** Runs of an editor without a screen: what is to be done in each, and what came of it. */
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { temporaryFolder } from './folders.ts';
import type { Step } from './steps.ts';

/** A score and the steps to take in it. Tasks that are asked for at the same time share one start of the editor. */
export interface Task {
  /** An empty folder for what the steps leave. */
  readonly folder: string;
  /** The score's file. A task before may be the one that saves it. */
  readonly input: string;
  readonly steps: readonly Step[];
  /** How long the editor may take for all tasks of its sitting. */
  readonly milliseconds: number;
}

/** The name of the file with what the steps of a task returned, in the task's folder. */
export const RESULTS = 'results.json';

/** Long enough for a busy machine, and shorter than the tests' own limit, so that nothing is left running. */
export const LONGEST_MS = 500_000;

/** @param input a path, or the text of a MusicXML score */
export async function taskOf(
  input: string,
  steps: readonly Step[],
  milliseconds = LONGEST_MS,
): Promise<Task> {
  const folder = await temporaryFolder('task');
  const isPath = !input.startsWith('<');
  const score = isPath ? input : join(folder, 'input.musicxml');
  if (!isPath) await writeFile(score, input);
  return { folder, input: score, steps, milliseconds };
}

/** What `steps.qml` left in a file. @throws what went wrong inside the editor */
export async function resultsIn(path: string, complaints: string): Promise<readonly unknown[]> {
  const answer = await readFile(path, 'utf8').catch(() => '');
  if (answer === '') throw new Error(`the editor gave no answer:\n${complaints}`);
  const { results, error } = JSON.parse(answer) as { results: unknown[]; error?: string };
  if (error) throw new Error(`step ${results.length + 1} failed in the editor: ${error}`);
  return results;
}

/** The same steps again and again, each time on what they saved last the time before. @param savedAs where a task saves a name */
export async function tasksInTurn(
  input: string,
  steps: readonly Step[],
  count: number,
  savedAs: (task: Task, name: string) => string,
): Promise<readonly Task[]> {
  const last = steps.at(-1)!;
  if (last.do !== 'save') throw new Error('the last step of a round saves what the next one opens');
  const tasks: Task[] = [];
  for (let i = 0; i < count; i++) {
    const before = tasks.at(-1);
    tasks.push(await taskOf(before ? savedAs(before, last.as) : input, steps));
  }
  return tasks;
}
