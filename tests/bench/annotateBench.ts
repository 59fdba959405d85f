/** Whole annotate, bytes to bytes, against a bare parse of the same bytes; its growth and its memory. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { SaxesParser } from 'saxes';
import { marksFor } from '../../core/marks/marks.ts';
import { resultOf } from '../../core/marks/result.ts';
import { examine } from '../../core/rules/examine.ts';
import { openScoreFile } from '../../plugin/musicxml/bytes/files.ts';
import { markSplices, readScore } from '../../plugin/musicxml/index.ts';
import { generatePart } from '../musicxml/generate.ts';
import type { BenchRow } from './benchRow.ts';
import { medianRatio, quickestMilliseconds } from './timing.ts';

const SIZES = [1_000, 10_000, 100_000] as const;
const LARGEST = 100_000;
/** Of a hundred notes, how many are stopped; orchestral parts stay far below a tenth. */
const DENSE = 10;
const STUDY = 33;
/** By how many of a hundred notes are stopped, in parts of the largest size. */
const MOST_TIMES_THE_PARSE = new Map<number, number>([
  [DENSE, 1.7],
  [STUDY, 2],
]);
/** The tempos of 21 parts and the horns' marks come on top of the parse; what is written alike is left out of it. */
const MOST_TIMES_THE_PARSE_OF_AN_ORCHESTRA = 1.2;
const PARTS = 25;
const HORNS = 4;
/** Every finding's repairs are tried on the notes around it. */
const MOST_TIMES_ANNOTATE = 4.5;
const MOST_GROWTH = 11;
/** A part of 30 MB, and the most megabytes it may take. */
const PEAK_NOTES = 88_700;
const MOST_MEGABYTES = 250;
const MEASURED = fileURLToPath(new URL('./measuredCommand.mjs', import.meta.url));
/** For the largest part; odd. */
const ROUNDS = 11;

export function annotateBench(): BenchRow[] {
  return [
    ...SIZES.map((notes) => againstParse(notes, DENSE)),
    againstParse(LARGEST, STUDY),
    orchestra(),
    repairs(),
    growth(),
    ...[SIZES[0], SIZES[1], PEAK_NOTES].map(peakMemory),
  ];
}

/** A whole orchestra, in which horns are 4 of 25 parts: of the others only the tempos matter. */
function orchestra(): BenchRow {
  const bytes = orchestraOf(PARTS, LARGEST / PARTS);
  const [annotating, parsing] = quickestMilliseconds([() => annotate(bytes), () => parse(bytes)], ROUNDS);
  const ratio = annotating! / parsing!;
  return {
    name: `annotate an orchestra, horns ${HORNS} of ${PARTS} parts (${(bytes.length / 1e6).toFixed(1)} MB)`,
    value: annotating!,
    unit: 'ms',
    baseline: `bare saxes parse, ${parsing!.toFixed(0)} ms`,
    ratio,
    limit: `ratio at most ${MOST_TIMES_THE_PARSE_OF_AN_ORCHESTRA}`,
    ok: ratio <= MOST_TIMES_THE_PARSE_OF_AN_ORCHESTRA,
  };
}

/** What `check --format json` does, against annotate of the same part: the repairs of every finding are its greatest piece. */
function repairs(): BenchRow {
  const bytes = partOf(LARGEST, DENSE);
  const [repairing, annotating] = quickestMilliseconds([() => results(bytes), () => annotate(bytes)], 3);
  const ratio = repairing! / annotating!;
  return {
    name: `findings with their repairs, ${inThousands(LARGEST)}, ${DENSE} % stopped`,
    value: repairing!,
    unit: 'ms',
    baseline: `annotate, ${annotating!.toFixed(0)} ms`,
    ratio,
    limit: `ratio at most ${MOST_TIMES_ANNOTATE}`,
    ok: ratio <= MOST_TIMES_ANNOTATE,
  };
}

/** Ten small parts and one of ten times their size, turn about: as long as the work is linear they take as long. */
function growth(): BenchRow {
  const small = partOf(LARGEST / 10, DENSE);
  const large = partOf(LARGEST, DENSE);
  const tenSmall = () => {
    for (let i = 0; i < 10; i++) annotate(small);
  };
  const { ratio, other } = medianRatio(() => annotate(large), tenSmall, ROUNDS);
  const times = 10 * ratio;
  return {
    name: `growth of annotate from ${inThousands(LARGEST / 10)} to ${inThousands(LARGEST)}`,
    value: times,
    unit: 'times',
    baseline: `one of ${inThousands(LARGEST / 10)}, ${(other / 10).toFixed(0)} ms`,
    limit: `at most ${MOST_GROWTH}`,
    ok: times <= MOST_GROWTH,
  };
}

function againstParse(notes: number, stoppedPercent: number): BenchRow {
  const bytes = partOf(notes, stoppedPercent);
  const [annotating, parsing] = quickestMilliseconds(
    [() => annotate(bytes), () => parse(bytes)],
    // The smaller the part, the more rounds until the code is compiled and the clock can be trusted.
    ROUNDS * Math.ceil(LARGEST / notes / 7),
  );
  const ratio = annotating! / parsing!;
  const most = notes === LARGEST ? MOST_TIMES_THE_PARSE.get(stoppedPercent) : undefined;
  return {
    name: `annotate ${inThousands(notes)}, ${stoppedPercent} % stopped (${(bytes.length / 1e6).toFixed(1)} MB)`,
    value: annotating!,
    unit: 'ms',
    baseline: `bare saxes parse, ${parsing!.toFixed(0)} ms`,
    ratio,
    ...(most === undefined ? {} : { limit: `ratio at most ${most}` }),
    ok: most === undefined || ratio <= most,
  };
}

/** The main job without the disk: what a file's bytes are turned into. */
export function annotate(bytes: Uint8Array): readonly Uint8Array[] {
  const file = openScoreFile(bytes);
  const score = readScore(file.text);
  const parts = score.horns.map(({ id, passage }) => ({ partId: id, marks: marksFor(examine(passage)) }));
  return file.withSplices(markSplices(score, parts));
}

function results(bytes: Uint8Array): string {
  const { horns } = readScore(openScoreFile(bytes).text);
  return JSON.stringify(resultOf(horns.map(({ passage }) => examine(passage))));
}

function parse(bytes: Uint8Array): void {
  new SaxesParser().write(new TextDecoder().decode(bytes)).close();
}

/** Peak memory of the built command, from its start to the file it wrote. */
function peakMemory(notes: number): BenchRow {
  const folder = mkdtempSync(join(tmpdir(), 'bellhand-bench-'));
  const part = join(folder, 'part.musicxml');
  const bytes = partOf(notes, DENSE);
  writeFileSync(part, bytes);
  const args = [MEASURED, 'annotate', part, '-o', join(folder, 'marked.musicxml')];
  const child = spawnSync(process.execPath, args, { encoding: 'utf8' });
  rmSync(folder, { recursive: true });
  const peak = Number(/^peak (\d+)$/m.exec(child.stderr)?.[1]);
  const isLimited = notes === PEAK_NOTES;
  const ok = child.status === 0 && peak > 0;
  return {
    name: `peak memory of annotate, ${inThousands(notes)} (${(bytes.length / 1e6).toFixed(1)} MB)`,
    value: peak,
    unit: 'MB',
    baseline: '',
    ...(isLimited ? { limit: `at most ${MOST_MEGABYTES}` } : {}),
    ok: ok && (!isLimited || peak <= MOST_MEGABYTES),
  };
}

function partOf(notes: number, stoppedPercent: number): Uint8Array {
  return new TextEncoder().encode(generatePart(notes, { stoppedPercent }));
}

function orchestraOf(parts: number, notesEach: number): Uint8Array {
  const places = Array.from({ length: parts }, (_, i) => i);
  const list = places.map(
    (i) =>
      `<score-part id="P${i + 1}"><part-name>${i < HORNS ? 'Horn in F' : 'Viola'}</part-name></score-part>`,
  );
  const bodies = places.map((i) => {
    const text = generatePart(notesEach, { seed: i + 1, stoppedPercent: i < HORNS ? DENSE : 0 });
    const measures = text.slice(text.indexOf('<measure'), text.lastIndexOf('</part>'));
    return `<part id="P${i + 1}">${measures}</part>`;
  });
  return new TextEncoder().encode(
    `<score-partwise version="4.0"><part-list>${list.join('')}</part-list>${bodies.join('')}</score-partwise>`,
  );
}

function inThousands(notes: number): string {
  return `${notes.toLocaleString('en')} notes`;
}
