/** From a score in a file to its horn parts, examined. */

import {
  type CommandLineWords,
  type Examination,
  examine,
  type Settings,
  type Transposition,
} from '../../../core/index.ts';
import { readScore, type Score, type TranspositionRemark } from '../../musicxml/index.ts';
import { inKey, isWithoutKey } from '../../musicxml/read/keyed.ts';
import { Failure, type Say } from '../failure.ts';
import { named } from './scoreAt.ts';

/** Which parts to read, and how. */
export interface Reading {
  /** Parts to take for horns; `null` to find them. */
  readonly parts: readonly string[] | null;
  /** The key of horns whose part states none; `null` when the user named none. */
  readonly key: Transposition | null;
  readonly settings: Settings;
}

/** A score with its horn parts examined, in score order. */
export interface ExaminedScore {
  readonly score: Score;
  readonly examinations: readonly Examination[];
  /** What the user should know of how the score was read, one line each. */
  readonly remarks: readonly Say[];
}

/**
 * Examines the horn parts of a MusicXML text.
 * @param name the file's name, for messages
 * @throws {Failure} when the text is no score, has no horn part, or no horn part with a known transposition
 */
export function examineText(text: string, name: string, reading: Reading): ExaminedScore {
  const score = named(name, () => readScore(text, reading.parts ? { parts: reading.parts } : {}));
  if (score.horns.length === 0) {
    const parts = score.parts.map((part) => part.name);
    throw new Failure(({ faults }) => {
      if (parts.length === 0) return faults.noParts(name);
      return reading.parts ? faults.partWithoutMusic(name, reading.parts[0]!) : faults.noHorn(name, parts);
    });
  }
  if (!reading.key && score.horns.every(isWithoutKey)) {
    const { transpositionRemark } = score.horns[0]!;
    throw new Failure((words) =>
      words.faults.orNameKey(
        name,
        transpositionRemark ? remarkText(transpositionRemark, words) : words.faults.noTransposition,
      ),
    );
  }
  const remarks = score.horns
    .filter((horn) => !(reading.key && isWithoutKey(horn)))
    .flatMap(({ transpositionRemark }) => transpositionRemark ?? [])
    .map(
      (remark): Say =>
        (words) =>
          `${name}: ${remarkText(remark, words)}`,
    );
  const examinations = score.horns.map(({ passage }) =>
    examine(inKey(passage, reading.key), reading.settings),
  );
  return { score, examinations, remarks };
}

/** How the transposition of a part was found, in words. */
function remarkText({ from, partName, named }: TranspositionRemark, { readings }: CommandLineWords): string {
  if (from === 'name') return readings.fromName(partName);
  if (from === 'concert-score') return readings.concertScore(partName);
  return named === null ? readings.nowhere : readings[named](partName);
}
