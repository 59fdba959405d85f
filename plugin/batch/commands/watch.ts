/** `bellhand watch FILE`: checks again whenever the file is saved, and says what changed. */
import { Command } from 'commander';
import {
  countNotes,
  countText,
  type Examination,
  type FindingResult,
  findingText,
  noteName,
  placeText,
  type Reader,
  severityText,
} from '../../../core/index.ts';
import { EXIT, Failure, faultLine } from '../failure.ts';
import { examineText, type Reading } from '../files/examinedScore.ts';
import { openScoreAt } from '../files/scoreAt.ts';
import { type PartOptions, readingOf, withPartOptions } from '../options/partOptions.ts';
import { type PlayerOptions, withPlayerOptions } from '../options/playerOptions.ts';
import { hasReaderLeft, printLines, STANDARD, warnLines } from '../output/streams.ts';
import { wordsFor } from '../reader.ts';
import { findingChanges } from '../watch/findingChanges.ts';
import { SavedFile } from '../watch/savedFile.ts';

interface WatchOptions extends PlayerOptions, PartOptions {}

export function watchCommand(reader: Reader): Command {
  const words = wordsFor(reader);
  const command = new Command('watch')
    .description(words.commands.watch)
    .argument('<file>', words.arguments.watched);
  return withPartOptions(withPlayerOptions(command, words), words).action(
    (file: string, options: WatchOptions) => watchFile(file, readingOf(options), reader),
  );
}

/** A save in progress may leave a file that cannot be read; it is given this many looks before anything is said. */
const LOOKS_BEFORE_FAULT = 6;

async function watchFile(file: string, reading: Reading, reader: Reader): Promise<void> {
  if (file === STANDARD) throw new Failure(({ faults }) => faults.inputWatched);
  const words = wordsFor(reader);
  let findings: readonly FindingResult[] = [];
  let faultTold: string | null = null;
  let looks = 0;
  const end = new AbortController();
  const tell = (lines: readonly string[]): void => {
    printLines(lines);
    if (hasReaderLeft()) end.abort();
  };
  const saved = new SavedFile(file, {
    gone: () => tell([words.told.fileGone(file)]),
    saved: () => {
      let examinations: readonly Examination[];
      try {
        examinations = examined(file, reading);
      } catch (fault) {
        looks += 1;
        if (looks < LOOKS_BEFORE_FAULT) return saved.lookAgain();
        looks = 0;
        const line = faultLine(fault, words);
        if (line !== faultTold) warnLines([line]);
        faultTold = line;
        return;
      }
      looks = 0;
      faultTold = null;
      const now = toldFindings(examinations, reader);
      tell(changeLines(file, findings, now, examinations, reader));
      findings = now;
    },
  });
  try {
    // Watched from before it is read, so that no save falls between.
    const examinations = examined(file, reading);
    findings = toldFindings(examinations, reader);
    tell([
      `${file}: ${countText(countNotes(examinations), reader)}`,
      ...findings.flatMap((finding) => findingLines('·', finding, reader)),
      words.told.watching,
    ]);
    await untilInterrupted(end.signal);
  } finally {
    saved.close();
  }
  process.exitCode = EXIT.fine;
}

function examined(file: string, reading: Reading): readonly Examination[] {
  return examineText(openScoreAt(file).text, file, reading).examinations;
}

function changeLines(
  file: string,
  before: readonly FindingResult[],
  now: readonly FindingResult[],
  examinations: readonly Examination[],
  reader: Reader,
): string[] {
  const { added, gone } = findingChanges(before, now);
  const counts = countText(countNotes(examinations), reader);
  if (added.length + gone.length === 0) return [`${file}: ${counts}; ${wordsFor(reader).told.nothingNew}`];
  return [
    `${file}: ${counts}`,
    ...gone.flatMap((finding) => findingLines('−', finding, reader)),
    ...added.flatMap((finding) => findingLines('+', finding, reader)),
  ];
}

/** What was found, in the reader's words. */
function toldFindings(examinations: readonly Examination[], reader: Reader): readonly FindingResult[] {
  return examinations.flatMap(({ passage, findings }) =>
    findings.map((finding) => {
      const { measure, beat, written } = passage.notes[finding.noteIndex]!;
      const { message, remedy } = findingText(finding, reader);
      const { id, severity } = finding;
      return {
        id,
        severity,
        part: passage.name,
        measure,
        beat,
        written: noteName(written, reader),
        message,
        remedy,
      };
    }),
  );
}

/** One finding: new ones with their reason and remedy, gone ones by name. */
function findingLines(sign: '+' | '−' | '·', finding: FindingResult, reader: Reader): string[] {
  const { id, severity, part, measure, beat, written, message, remedy } = finding;
  const place = `${part}, ${placeText(measure, beat, reader)}, ${written}`;
  const head = `${place}: ${severityText(severity, reader)} (${id})`;
  if (sign === '−') return [`  ${sign} ${wordsFor(reader).told.findingGone(head)}`];
  return [`  ${sign} ${head}`, `      ${message}`, `      ${remedy}`];
}

/** Resolves when the user or the system asks for an end, or nobody reads along any more. */
function untilInterrupted(end: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    if (end.aborted) resolve();
    end.addEventListener('abort', () => resolve());
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => resolve());
  });
}
