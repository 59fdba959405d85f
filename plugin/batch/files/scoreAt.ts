/** Scores by their path: opened from disk or standard input, their faults told under the file's name. */
import { openScoreFile, type ScoreFile } from '../../musicxml/bytes/files.ts';
import { LARGEST_ENTRY } from '../../musicxml/bytes/zip.ts';
import { ScoreError } from '../../musicxml/index.ts';
import { Failure } from '../failure.ts';
import { readWhole } from './wholeFile.ts';

/**
 * Opens the score file at a path, plain or compressed, in whatever encoding; `-` is standard input.
 * @throws {Failure} when it cannot be read
 */
export function openScoreAt(path: string): ScoreFile {
  const bytes = readWhole(path);
  if (bytes.length > LARGEST_ENTRY) {
    const megabytes = Math.round(bytes.length / 1048576);
    throw new Failure(
      `${path}: it has ${megabytes} MB, more than any score needs: check where it comes from`,
    );
  }
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
    if (fault instanceof ScoreError) throw new Failure(`${path}: ${fault.message}`);
    throw fault;
  }
}
