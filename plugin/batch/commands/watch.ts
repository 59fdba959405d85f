/** `bellhand watch FILE`: checks again whenever the file is saved, and says what changed. */
import { Command } from 'commander';
import {
  countNotes,
  countText,
  ENGLISH_READER,
  type Examination,
  type FindingResult,
  resultOf,
} from '../../../core/index.ts';
import { EXIT, Failure, faultLine } from '../failure.ts';
import { examineText, type Reading } from '../files/examinedScore.ts';
import { openScoreAt } from '../files/scoreAt.ts';
import { type PartOptions, readingOf, withPartOptions } from '../options/partOptions.ts';
import { type PlayerOptions, withPlayerOptions } from '../options/playerOptions.ts';
import { hasReaderLeft, printLines, STANDARD, warnLines } from '../output/streams.ts';
import { findingChanges } from '../watch/findingChanges.ts';
import { SavedFile } from '../watch/savedFile.ts';

interface WatchOptions extends PlayerOptions, PartOptions {}

export function watchCommand(): Command {
  const command = new Command('watch')
    .description('check a file whenever it is saved and say what changed; Ctrl-C ends it')
    .argument('<file>', 'a MusicXML file that some program keeps saving');
  return withPartOptions(withPlayerOptions(command)).action((file: string, options: WatchOptions) =>
    watchFile(file, readingOf(options)),
  );
}

/** A save in progress may leave a file that cannot be read; it is given this many looks before anything is said. */
const LOOKS_BEFORE_FAULT = 6;

async function watchFile(file: string, reading: Reading): Promise<void> {
  if (file === STANDARD) throw new Failure('standard input cannot be watched: name a file');
  let findings: readonly FindingResult[] = [];
  let faultTold: string | null = null;
  let looks = 0;
  const end = new AbortController();
  const tell = (lines: readonly string[]): void => {
    printLines(lines);
    if (hasReaderLeft()) end.abort();
  };
  const saved = new SavedFile(file, {
    gone: () => tell([`${file} is gone; waiting for it to come back`]),
    saved: () => {
      let examinations: readonly Examination[];
      try {
        examinations = examined(file, reading);
      } catch (fault) {
        looks += 1;
        if (looks < LOOKS_BEFORE_FAULT) return saved.lookAgain();
        looks = 0;
        const line = faultLine(fault);
        if (line !== faultTold) warnLines([line]);
        faultTold = line;
        return;
      }
      looks = 0;
      faultTold = null;
      const now = resultOf(examinations).findings;
      tell(changeLines(file, findings, now, examinations));
      findings = now;
    },
  });
  try {
    // Watched from before it is read, so that no save falls between.
    const examinations = examined(file, reading);
    findings = resultOf(examinations).findings;
    tell([
      `${file}: ${countText(countNotes(examinations), ENGLISH_READER)}`,
      ...findings.flatMap((finding) => findingLines('·', finding)),
      'watching; Ctrl-C ends it',
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
): string[] {
  const { added, gone } = findingChanges(before, now);
  const counts = countText(countNotes(examinations), ENGLISH_READER);
  if (added.length + gone.length === 0) return [`${file}: ${counts}; nothing new`];
  return [
    `${file}: ${counts}`,
    ...gone.flatMap((finding) => findingLines('−', finding)),
    ...added.flatMap((finding) => findingLines('+', finding)),
  ];
}

/** One finding: new ones with their reason and remedy, gone ones by name. */
function findingLines(sign: '+' | '−' | '·', finding: FindingResult): string[] {
  const { id, severity, part, measure, beat, written, message, remedy } = finding;
  const head = `  ${sign} ${part}, bar ${measure}, beat ${beat}, ${written}: ${severity} (${id})`;
  return sign === '−' ? [`${head} is gone`] : [head, `      ${message}`, `      ${remedy}`];
}

/** Resolves when the user or the system asks for an end, or nobody reads along any more. */
function untilInterrupted(end: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    if (end.aborted) resolve();
    end.addEventListener('abort', () => resolve());
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => resolve());
  });
}
