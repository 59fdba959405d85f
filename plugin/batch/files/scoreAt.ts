/** Scores by their path: opened from disk or standard input, their faults told under the file's name. */
import { openScoreFile, type ScoreFile } from '../../musicxml/bytes/files.ts';
import { ScoreError } from '../../musicxml/index.ts';
import { Failure } from '../failure.ts';
import { readWhole } from './input.ts';

/**
 * Opens the score file at a path, plain or compressed, in whatever encoding; `-` is standard input.
 * @throws {Failure} when it cannot be read
 */
export function openScoreAt(path: string): ScoreFile {
  const bytes = readWhole(path);
  return named(path, () => openScoreFile(bytes));
}

/**
 * Does some work on a score.
 * @throws {Failure} for a fault in the score, with its file's name
 */
export function named<T>(path: string, work: () => T): T {
  try {
    return work();
  } catch (fault) {
    if (fault instanceof ScoreError) throw new Failure(({ scores }) => `${path}: ${fault.in(scores)}`);
    throw fault;
  }
}
