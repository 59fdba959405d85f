/** What is done to one file, start to end, by whichever thread: read, examine, write, tell. */
import {
  barsText,
  type CommandLineWords,
  completionText,
  countNotes,
  countText,
  ENGLISH_READER,
  type Examination,
  findingResultsOf,
  keptColourText,
  type PlainReader,
  type Reader,
  readerOf,
  resultOf,
  type Show,
  transposeOf,
} from '../../../core/index.ts';
import { annotatedFile } from '../../musicxml/annotate/annotatedFile.ts';
import type { ScoreFile } from '../../musicxml/bytes/files.ts';
import { markSplices, readScore } from '../../musicxml/index.ts';
import { EXIT, type ExitCode, Failure, faultLine, type Say } from '../failure.ts';
import { type Holding, holdingOf } from '../output/ending.ts';
import { printableJson } from '../output/printable.ts';
import { writeInPlace, writeResult } from '../output/result.ts';
import { isStandardOutput, STANDARD } from '../output/streams.ts';
import { checkTable } from '../print/checkTable.ts';
import { wordsFor } from '../reader.ts';
import { examineText, type Reading } from './examinedScore.ts';
import type { FilePair } from './outputs.ts';
import { named, openScoreAt } from './scoreAt.ts';

/** The task of a run; plain data, the same for every file. */
export type FileTask = (AnnotateTask | ClearTask | CheckTask) & {
  /** Whoever reads what is told and written. */
  readonly reader: PlainReader;
};

interface AnnotateTask {
  readonly kind: 'annotate';
  readonly reading: Reading;
  readonly show: Show;
  /** Write valves as fingerings of the notes besides. */
  readonly fingerings: boolean;
  /** Add the signs and cancelling words that the part lacks. */
  readonly complete: boolean;
  /** Replace any file. */
  readonly force: boolean;
}

interface ClearTask {
  readonly kind: 'clear';
  /** Replace any file. */
  readonly force: boolean;
}

interface CheckTask {
  readonly kind: 'check';
  readonly reading: Reading;
  readonly format: 'table' | 'json' | 'json-lines';
  /** True when results of several files follow one another, so that each must name its file. */
  readonly isOneOfMany: boolean;
}

/** What one file leads to: lines for standard output, messages for standard error. */
export interface Outcome {
  readonly lines: readonly string[];
  readonly messages: readonly string[];
  readonly exit: ExitCode;
}

/** Does the task on a file. A fault becomes an outcome, so that one bad file does not stop the rest. */
export function runFileTask(task: FileTask, pair: FilePair): Outcome {
  try {
    const file = openScoreAt(pair.input, holdingFor(pair));
    const reader = readerOf(task.reader.language, task.reader.noteNaming);
    if (task.kind === 'annotate') return annotate(task, reader, pair, file);
    if (task.kind === 'clear') return clear(task, reader, pair, file);
    return check(task, reader, pair.input, file);
  } catch (fault) {
    const line = lineOf(fault, pair, wordsFor(task.reader));
    const isData =
      task.kind === 'check' && (task.format === 'json-lines' || (task.format === 'json' && task.isOneOfMany));
    return {
      lines: isData
        ? [printableJson({ file: pair.input, error: lineOf(fault, pair, wordsFor(ENGLISH_READER)) })]
        : [],
      messages: [line],
      exit: EXIT.failed,
    };
  }
}

function lineOf(fault: unknown, { input }: FilePair, words: CommandLineWords): string {
  return fault instanceof Failure ? fault.say(words) : `${input}: ${faultLine(fault, words)}`;
}

function annotate(
  { reading, show, fingerings, complete, force }: AnnotateTask,
  reader: Reader,
  pair: FilePair,
  file: ScoreFile,
): Outcome {
  const { score, examinations: found, remarks } = examineText(file.text, pair.input, reading);
  const { pieces, examinations, completions } = annotatedFile(file, score, found, {
    show,
    fingerings,
    complete,
    reader,
    isSealed: sealWanted(pair, file),
  });
  const written = write(pair, pieces, { kind: 'annotate', force });
  const words = wordsFor(reader);
  const counts = countNotes(examinations);
  const remarked = [...written, ...remarks].map((say) => say(words));
  const impossible = counts.stopped.impossible + counts.open.impossible;
  if (impossible > 0) {
    remarked.push(
      `${pair.input}: ${words.told.cannotBePlayed(impossible, barsText(counts.impossibleMeasures, reader))}`,
    );
  }
  const coloured = examinations
    .flatMap(({ notes }) => notes)
    .filter(({ note, verdict }) => note.userColour && verdict !== 'sure').length;
  if (show.colour && coloured > 0) {
    remarked.push(`${pair.input}: ${keptColourText(coloured, reader)}`);
  }
  const counted = countText(counts, reader);
  const told = complete ? `${counted}; ${completionText(completions, reader)}` : counted;
  return outcome(pair, told, remarked);
}

function clear({ force }: ClearTask, reader: Reader, pair: FilePair, file: ScoreFile): Outcome {
  const words = wordsFor(reader);
  const splices = named(pair.input, () => markSplices(readScore(file.text), []));
  const written = write(pair, file.withSplices(splices), { kind: 'clear', force });
  return outcome(
    pair,
    splices.length === 0 ? words.told.noMarks : words.told.marksOut,
    written.map((say) => say(words)),
  );
}

/** Writes a result: onto its input where that is its place, else where it loses nobody's file. */
function write(
  { input, output }: FilePair,
  pieces: readonly Uint8Array[],
  { kind, force }: { kind: 'annotate' | 'clear'; force: boolean },
): readonly Say[] {
  if (input === output && input !== STANDARD) return writeInPlace(output, pieces, force);
  return writeResult(output, pieces, { content: 'score', kind, force, inputs: [input] });
}

/** A result in a place of its own is held as its name says. */
function holdingFor({ input, output }: FilePair): Holding | null {
  return input === output || isStandardOutput(output) ? null : holdingOf(output);
}

/** A file of our own making is sealed; one that is the user's, or a stream, is not. */
function sealWanted({ input, output }: FilePair, file: ScoreFile): boolean {
  if (isStandardOutput(output)) return false;
  return input !== output || file.sealedAs === 'annotate';
}

function check(
  { reading, format, isOneOfMany }: CheckTask,
  reader: Reader,
  path: string,
  file: ScoreFile,
): Outcome {
  const { examinations, remarks } = examineText(file.text, path, reading);
  const lines =
    format === 'json-lines'
      ? [printableJson({ file: path, ...catalogueLine(examinations) })]
      : format === 'json'
        ? [printableJson({ ...(isOneOfMany ? { file: path } : {}), ...resultOf(examinations) })]
        : [path, ...examinations.flatMap((examination) => ['', ...checkTable(examination, reader)]), ''];
  const { stopped, open } = countNotes(examinations);
  return {
    lines,
    messages: remarks.map((say) => say(wordsFor(reader))),
    exit: stopped.impossible + open.impossible > 0 ? EXIT.impossible : EXIT.fine,
  };
}

/** What a catalogue holds of a file: its parts with their notes counted by verdict, and the findings. */
function catalogueLine(examinations: readonly Examination[]) {
  const counted = examinations.map((examination) => {
    const { stopped, open } = countNotes([examination]);
    return { name: examination.passage.name, transpose: transposeOf(examination), stopped, open };
  });
  return { parts: counted, findings: findingResultsOf(examinations) };
}

/** Tells where the result went; on standard error when the result itself went to standard output. */
function outcome({ input, output }: FilePair, text: string, notes: readonly string[]): Outcome {
  if (isStandardOutput(output))
    return { lines: [], messages: [`${input}: ${text}`, ...notes], exit: EXIT.fine };
  return { lines: [`${output}: ${text}`], messages: notes, exit: EXIT.fine };
}
