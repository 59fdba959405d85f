/** Many files through the built command: one at a time, and on every core. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { generatePart } from '../musicxml/generate.ts';
import type { BenchRow } from './benchRow.ts';
import { medianMilliseconds } from './timing.ts';

const FILES = 40;
const NOTES_EACH = 5_000;
const COMMAND = fileURLToPath(new URL('../../dist/bellhand.js', import.meta.url));

export function batchBench(): BenchRow[] {
  const folder = mkdtempSync(join(tmpdir(), 'bellhand-bench-'));
  const parts = Array.from({ length: FILES }, (_, i) => join(folder, `part-${i + 1}.musicxml`));
  parts.forEach((part, i) => {
    writeFileSync(part, generatePart(NOTES_EACH, { seed: i + 1, stoppedPercent: 10 }));
  });
  const cores = availableParallelism();
  const run = (jobs: number) => () => {
    const args = [COMMAND, 'annotate', ...parts, '-o', join(folder, 'out/'), '--jobs', String(jobs)];
    const { status } = spawnSync(process.execPath, args);
    if (status !== 0) throw new Error(`annotate ended with ${status}`);
  };
  const [one, all] = medianMilliseconds([run(1), run(cores)], 3);
  rmSync(folder, { recursive: true });
  return [
    {
      name: `annotate ${FILES} files of ${NOTES_EACH.toLocaleString('en')} notes, --jobs ${cores}`,
      value: all!,
      unit: 'ms',
      baseline: `--jobs 1, ${one!.toFixed(0)} ms`,
      ratio: all! / one!,
      ok: true,
    },
  ];
}
