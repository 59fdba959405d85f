/** Many files through the built command: one at a time, and on every core. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { generatePart } from '../musicxml/generate.ts';
import type { BenchRow } from './benchRow.ts';
import { quickestMilliseconds } from './timing.ts';

/** A run of a few seconds, in which a second thread has hardly become quick when it ends, and one of half a minute. */
const SHORT = { files: 40, rounds: 3, limit: null };
/** With two cores, 1.7 times as quick. */
const LONG = { files: 200, rounds: 1, limit: 1 / 1.7 };
const NOTES_EACH = 5_000;
const COMMAND = fileURLToPath(new URL('../../dist/bellhand.js', import.meta.url));

/** As many parts of the usual length as show the rate of a catalogue. */
const CATALOGUE_FILES = 600;
const USUAL_NOTES = 400;

export function batchBench(): BenchRow[] {
  return [jobsRow(SHORT), jobsRow(LONG), catalogueRow()];
}

/** Files of very different size, the largest last, as a careless order has them. */
function jobsRow({ files, rounds, limit }: typeof SHORT | typeof LONG): BenchRow {
  const folder = mkdtempSync(join(tmpdir(), 'bellhand-bench-'));
  const parts = Array.from({ length: files }, (_, i) => join(folder, `part-${i + 1}.musicxml`));
  parts.forEach((part, i) => {
    const notes = i < files / 2 ? NOTES_EACH : Math.round((NOTES_EACH / 10) * (i - files / 2));
    writeFileSync(part, generatePart(notes, { seed: i + 1, stoppedPercent: 10 }));
  });
  const cores = availableParallelism();
  const run = (jobs: number) => () => {
    const args = [COMMAND, 'annotate', ...parts, '-o', join(folder, 'out/'), '--jobs', String(jobs)];
    const { status } = spawnSync(process.execPath, args);
    if (status !== 0) throw new Error(`annotate ended with ${status}`);
  };
  const [one, all] = quickestMilliseconds([run(1), run(cores)], rounds);
  const most = Math.round((NOTES_EACH / 10) * (files / 2 - 1));
  const ideal = bestRatio(
    parts.map((part) => statSync(part).size),
    cores,
  );
  rmSync(folder, { recursive: true });
  const ratio = all! / one!;
  return {
    name: `annotate ${files} files of 0 to ${most.toLocaleString('en')} notes, --jobs ${cores}`,
    value: all!,
    unit: 'ms',
    baseline: `--jobs 1, ${one!.toFixed(0)} ms; by the sizes of the files at best ${ideal.toFixed(2)}`,
    ratio,
    ...(limit !== null && cores > 1
      ? { limit: `ratio at most ${limit.toFixed(2)}`, ok: ratio <= limit }
      : { ok: true }),
  };
}

/** What the time of several cores may come to against that of one: no file is split, so none less than the largest takes. */
function bestRatio(sizes: readonly number[], cores: number): number {
  const all = sizes.reduce((sum, size) => sum + size, 0);
  return Math.max(1 / cores, Math.max(...sizes) / all);
}

function catalogueRow(): BenchRow {
  const folder = mkdtempSync(join(tmpdir(), 'bellhand-bench-'));
  const parts = Array.from({ length: CATALOGUE_FILES }, (_, i) => join(folder, `part-${i + 1}.musicxml`));
  for (const [i, part] of parts.entries())
    writeFileSync(part, generatePart(USUAL_NOTES, { seed: i + 1, stoppedPercent: 10 }));
  const run = () => {
    const args = [COMMAND, 'check', '--format', 'json-lines', ...parts];
    const { status } = spawnSync(process.execPath, args, { maxBuffer: 2 ** 30 });
    if (status === null || status > 1) throw new Error(`check ended with ${status}`);
  };
  const [milliseconds] = quickestMilliseconds([run], 3);
  rmSync(folder, { recursive: true });
  return {
    name: `catalogue: check ${CATALOGUE_FILES} parts of ${USUAL_NOTES} notes`,
    value: (1000 * CATALOGUE_FILES) / milliseconds!,
    unit: 'files/s',
    baseline: '',
    ok: true,
  };
}
