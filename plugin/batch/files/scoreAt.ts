/** Scores by their path: opened from disk or standard input, their faults told under the file's name. */
import { openScoreFile, packedScore, type ScoreFile, unpackedScore } from '../../musicxml/bytes/files.ts';
import { ScoreError } from '../../musicxml/index.ts';
import { Failure } from '../failure.ts';
import type { Holding } from '../output/ending.ts';
import { readWhole } from './input.ts';

/**
 * Opens the score file at a path, plain or compressed, in whatever encoding; `-` is standard input.
 * @param holding how the score is to be held in what is made of it; as it is by default
 * @throws {Failure} when it cannot be read
 */
export function openScoreAt(path: string, holding: Holding | null = null): ScoreFile {
  const bytes = readWhole(path);
  return named(path, () => {
    if (holding === null) return openScoreFile(bytes);
    return openScoreFile(holding === 'plain' ? unpackedScore(bytes) : packedScore(bytes));
  });
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
