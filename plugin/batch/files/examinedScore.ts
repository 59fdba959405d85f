/** From a score in a file to its horn parts, examined. */

import {
  type Examination,
  examine,
  type Passage,
  type PassageNote,
  type Settings,
  type Transposition,
} from '../../../core/index.ts';
import { type HornPart, readScore, type Score } from '../../musicxml/index.ts';
import { Failure } from '../failure.ts';
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
  readonly remarks: readonly string[];
}

/**
 * Examines the horn parts of a MusicXML text.
 * @param name the file's name, for messages
 * @throws {Failure} when the text is no score, has no horn part, or no horn part with a known transposition
 */
export function examineText(text: string, name: string, reading: Reading): ExaminedScore {
  const score = named(name, () => readScore(text, reading.parts ? { parts: reading.parts } : {}));
  if (score.horns.length === 0) {
    const parts = score.parts.map((part) => `"${part.name}"`).join(', ');
    throw new Failure(
      parts === ''
        ? `${name}: the score has no parts: export it again`
        : `${name}: no part is a horn; there is ${parts}: choose with --part`,
    );
  }
  if (!reading.key && score.horns.every(isWithoutKey)) {
    const { transpositionNote } = score.horns[0]!;
    throw new Failure(
      `${name}: ${transpositionNote ?? 'no part states a transposition'}; or name its key with --key`,
    );
  }
  const remarks = score.horns
    .filter((horn) => horn.transpositionNote !== null && !(reading.key && isWithoutKey(horn)))
    .map((horn) => `${name}: ${horn.transpositionNote}`);
  const examinations = score.horns.map(({ passage }) =>
    examine(inKey(passage, reading.key), reading.settings),
  );
  return { score, examinations, remarks };
}

function isWithoutKey({ passage, transpositionFrom }: HornPart): boolean {
  if (passage.notes.length === 0) return transpositionFrom === 'nowhere';
  return passage.notes.every(({ transposition }) => transposition === null);
}

/** The passage with a key for the notes that have none. */
function inKey(passage: Passage, key: Transposition | null): Passage {
  if (!key) return passage;
  const keyed = (note: PassageNote) => (note.transposition ? note : { ...note, transposition: key });
  return { ...passage, notes: passage.notes.map(keyed) };
}
