/**
 * In the script engines that the editor's versions are built on: what the build puts in the place of iterators against what
 * was written.
 */
import { transform } from 'esbuild';
import { quickly } from '../../build/quickScript.ts';
import { asList, gapless } from '../../plugin/editor/engineLists.ts';
import { skipLoudly } from '../editor/rig/programs.ts';
import { ENGINES, trialsIn } from '../editor/rig/standIn.ts';
import type { BenchRow } from './benchRow.ts';

/** One step of what is written, with lists of 2 and of 8 and an object of 8 at hand, and the most that the other may take of it. */
const JOBS: readonly { readonly name: string; readonly step: string; readonly most: number }[] = [
  { name: 'goes through a list of 8', step: 'for (const one of eight) sum += one;', most: 0.1 },
  { name: 'takes a list of 2 apart', step: 'const [a, b] = two; sum += a + b;', most: 0.2 },
  { name: 'calls with a list of 2', step: 'sum += added(...two);', most: 0.5 },
  { name: 'puts lists of 2 and 8 together', step: 'sum += [...two, ...eight].length;', most: 0.2 },
  { name: 'copies an object of 8', step: 'sum += { ...object, a: i }.a;', most: 0.4 },
];
const STEPS = 20_000;
const TURNS = 7;

/** A row for every pair in every engine that is installed. */
export async function enginesBench(): Promise<BenchRow[]> {
  const rows: BenchRow[] = [];
  for (const { name, program, install } of ENGINES) {
    if (program) rows.push(...(await jobRows(name, program)));
    else skipLoudly(`the bench of the script engine of ${name}, which is not installed`, install);
  }
  return rows;
}

/** Tells how long each of several things takes, turn about, in milliseconds: a script for the engine, which has no finer clock. */
const TIMED = `
var timed = (things, turns) => {
  const times = things.map(() => []);
  for (let turn = 0; turn < turns; turn++)
    for (let i = 0; i < things.length; i++) {
      const start = Date.now();
      things[i]();
      times[i].push(Date.now() - start);
    }
  return times;
};`;

async function jobRows(engine: string, program: string): Promise<BenchRow[]> {
  const jobs = JOBS.map(
    ({ step }) => `() => { let sum = 0; for (let i = 0; i < ${STEPS}; i++) { ${step} } return sum; }`,
  );
  const { code } = await transform(
    `${asList} ${gapless}
    const two = [1, 2], eight = [1, 2, 3, 4, 5, 6, 7, 8];
    const object = { a: 1, b: 2, c: 3, d: 4, e: 5, f: 6, g: 7, h: 8 };
    const added = (a, b) => a + b;
    const jobs = [${jobs.join()}];`,
    { target: 'es2016' },
  );
  const jobsOf = (script: string) => `(() => { ${script} return jobs; })()`;
  const times = (await trialsIn(
    program,
    `${TIMED} var Bellhand = { trials: () => timed(${jobsOf(code)}.concat(${jobsOf(quickly(code))}), ${TURNS}) };`,
  )) as number[][];
  const microseconds = times.map((turns) => (1000 * Math.min(...turns)) / STEPS);
  return JOBS.map(({ name, most }, i): BenchRow => {
    const written = microseconds[i]!;
    const value = microseconds[JOBS.length + i]!;
    const ratio = value / written;
    return {
      name: `${engine}: ${name}`,
      value,
      unit: 'µs',
      ratio,
      baseline: `as it is written, ${written.toFixed(1)} µs`,
      limit: `ratio at most ${most}`,
      ok: ratio <= most,
    };
  });
}
