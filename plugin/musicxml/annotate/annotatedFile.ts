/** A score file with the marks of its examined horns, in bytes: what annotate writes, whoever asks for it. */
import {
  completionsFor,
  type Examination,
  examine,
  type Mark,
  marksFor,
  type Reader,
  type Repair,
  repaired,
  type Show,
} from '../../../core/index.ts';
import type { Finish, ScoreFile } from '../bytes/scoreFile.ts';
import type { Score } from '../read/score.ts';
import { markSplices } from '../write/writeMarks.ts';
import { completedMarks } from './completedMarks.ts';

/** What is written over the notes, and into the part. */
export interface Annotating {
  readonly show: Show;
  /** Write valves as fingerings of the notes besides. */
  readonly fingerings: boolean;
  /** Add the signs and cancelling words that the part lacks. */
  readonly complete: boolean;
  readonly reader: Reader;
  /** Seal the file as one of our own making. */
  readonly isSealed: boolean;
}

/** The file, and what went into it. */
export interface AnnotatedFile {
  /** One piece after the other. */
  readonly pieces: readonly Uint8Array[];
  /** As they are after completing. */
  readonly examinations: readonly Examination[];
  readonly completions: readonly Repair[];
}

/** @param found the examinations of the score's horns, in score order */
export function annotatedFile(
  file: ScoreFile,
  score: Score,
  found: readonly Examination[],
  { show, fingerings, complete, reader, isSealed }: Annotating,
): AnnotatedFile {
  const completions = found.map((examination) => (complete ? completionsFor(examination) : []));
  const examinations = found.map((examination, i) => {
    // A sign says what the word said already; a word changes how the notes after it are read.
    const words = completions[i]!.filter(({ kind }) => kind === 'opening-word');
    const passage = repaired(
      examination.passage,
      words.flatMap(({ steps }) => steps),
    );
    return passage === examination.passage ? examination : examine(passage, examination.settings);
  });
  const parts = examinations.map((examination, i) => ({
    partId: score.horns[i]!.id,
    ...completedMarks(marksOf(examination, show, fingerings, reader), completions[i]!),
  }));
  const isUntouched = score.ownSpans.length === 0 && file.sealedAs === null;
  const finish: Finish = {
    seal: isSealed ? 'annotate' : null,
    // What was unmarked is kept as it was packed, so that clearing gives back the very same archive.
    keep: isUntouched ? 'this' : 'earlier',
  };
  const pieces = file.withSplices(markSplices(score, parts, { fingerings }), finish);
  return { pieces, examinations, completions: completions.flat() };
}

/** With fingerings, notes that show nothing else are marked too, for their valves. */
function marksOf(examination: Examination, show: Show, fingerings: boolean, reader: Reader): readonly Mark[] {
  const marks = marksFor(examination, show, reader);
  if (!fingerings) return marks;
  const shown = new Map(marks.map((mark) => [mark.noteIndex, mark]));
  return marksFor(examination, { ...show, valves: true }, reader).map(
    (mark) => shown.get(mark.noteIndex) ?? { ...mark, lines: [] },
  );
}
