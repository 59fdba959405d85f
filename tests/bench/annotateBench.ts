/** Whole annotate, bytes to bytes, against a bare parse of the same bytes; and its growth and memory. */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { SaxesParser } from 'saxes';
import { examine } from '../../core/examine.ts';
import { marksFor } from '../../core/marks.ts';
import { openScoreFile } from '../../plugin/musicxml/files.ts';
import { readScore, writeMarks } from '../../plugin/musicxml/index.ts';
import { generatePart } from '../musicxml/generate.ts';
import type { BenchRow } from './benchRow.ts';
import { medianMilliseconds } from './timing.ts';

const SIZES = [1_000, 10_000, 100_000] as const;
const MOST_TIMES_THE_PARSE = 3;
const MOST_GROWTH = 12;
const ROUNDS = 5;

export function annotateBench(): BenchRow[] {
  const rows: BenchRow[] = [];
  const millisecondsBySize = new Map<number, number>();
  for (const notes of SIZES) {
    const row = againstParse(
      signedPart(notes),
      `annotate ${inThousands(notes)}, a third stopped`,
      notes === 100_000,
    );
    millisecondsBySize.set(notes, row.value);
    rows.push(row);
  }
  rows.push(
    againstParse(
      new TextEncoder().encode(generatePart(100_000)),
      'annotate 100,000 notes, all stopped',
      false,
    ),
  );
  const growth = millisecondsBySize.get(100_000)! / millisecondsBySize.get(10_000)!;
  rows.push({
    name: 'growth of annotate for ten times the notes',
    value: growth,
    unit: 'times',
    baseline: '10,000 notes',
    limit: `at most ${MOST_GROWTH}`,
    ok: growth <= MOST_GROWTH,
  });
  return rows.concat(SIZES.map(peakMemory));
}

function againstParse(bytes: Uint8Array, name: string, isLimited: boolean): BenchRow {
  const [annotating, parsing] = medianMilliseconds([() => annotate(bytes), () => parse(bytes)], ROUNDS);
  const ratio = annotating! / parsing!;
  return {
    name: `${name} (${(bytes.length / 1e6).toFixed(1)} MB)`,
    value: annotating!,
    unit: 'ms',
    baseline: `bare saxes parse, ${parsing!.toFixed(0)} ms`,
    ratio,
    ...(isLimited ? { limit: `ratio at most ${MOST_TIMES_THE_PARSE}` } : {}),
    ok: !isLimited || ratio <= MOST_TIMES_THE_PARSE,
  };
}

/** A part whose stopped notes are those with a sign, a third of all, many times what music has; no word adds to them. */
export function signedPart(notes: number): Uint8Array {
  return new TextEncoder().encode(generatePart(notes).replace(/>gestopft</g, '>dolce<'));
}

function inThousands(notes: number): string {
  return `${notes.toLocaleString('en')} notes`;
}

/** The main job without the disk: what a file's bytes are turned into. */
export function annotate(bytes: Uint8Array): Uint8Array {
  const file = openScoreFile(bytes);
  const score = readScore(file.text);
  const parts = score.horns.map(({ id, passage }) => ({ partId: id, marks: marksFor(examine(passage)) }));
  return file.withText(writeMarks(score, parts));
}

function parse(bytes: Uint8Array): void {
  new SaxesParser().write(new TextDecoder().decode(bytes)).close();
}

/** Peak memory of a process that does nothing but annotate one part. */
function peakMemory(notes: number): BenchRow {
  const script = fileURLToPath(new URL('./peakMemory.ts', import.meta.url));
  const child = spawnSync(process.execPath, ['--import', 'tsx', script, String(notes)], { encoding: 'utf8' });
  const [before, peak] = child.stdout.trim().split(' ').map(Number);
  return {
    name: `peak memory, ${inThousands(notes)}`,
    value: peak ?? Number.NaN,
    unit: 'MB',
    baseline: `before annotating, ${before} MB`,
    ok: child.status === 0,
  };
}
