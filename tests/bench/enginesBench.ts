/**
 * In the script engines that the editor's versions are built on: what the build puts in the place of iterators against what
 * was written, and the room that the plugin takes for its script.
 */
import { fileURLToPath } from 'node:url';
import { transform } from 'esbuild';
import { editorScript } from '../../build/bundle.ts';
import { quickly } from '../../build/quickScript.ts';
import { asList } from '../../plugin/editor/engineLists.ts';
import { skipLoudly } from '../editor/rig/programs.ts';
import { ENGINES, trialsIn } from '../editor/rig/standIn.ts';
import type { BenchRow } from './benchRow.ts';

const ROOM = fileURLToPath(new URL('../../plugin/editor/engineRoom.ts', import.meta.url));

/** One step of each job as it is written, with lists of 2 and of 8 at hand; each has a limit of its own ratio. */
const JOBS: readonly { readonly name: string; readonly step: string; readonly most: number }[] = [
  { name: 'goes through a list of 8', step: 'for (const one of eight) sum += one;', most: 0.3 },
  { name: 'takes a list of 2 apart', step: 'const [a, b] = two; sum += a + b;', most: 0.4 },
  { name: 'calls with a list of 2', step: 'sum += added(...two);', most: 0.6 },
  { name: 'joins lists of 2 and 8', step: 'const both = [...two, ...eight]; sum += both.length;', most: 0.4 },
  { name: 'copies an object of 8', step: 'const copy = { ...object, a: i }; sum += copy.a;', most: 0.6 },
];
const STEPS = 4000;
const TURNS = 7;

export async function enginesBench(): Promise<BenchRow[]> {
  const rows: BenchRow[] = [];
  for (const { name, program, install } of ENGINES) {
    if (program) rows.push(...(await jobRows(name, program)), await roomRow(name, program));
    else skipLoudly(`the bench of the script engine of ${name}, which is not installed`, install);
  }
  return rows;
}

/** How long each thing of a list takes, turn about, in milliseconds; the engine runs it, which has no finer clock. */
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
    `return (() => {
      ${asList}
      const two = [1, 2], eight = [1, 2, 3, 4, 5, 6, 7, 8];
      const object = { a: 1, b: 2, c: 3, d: 4, e: 5, f: 6, g: 7, h: 8 };
      const added = (a, b) => a + b;
      return [${jobs.join()}];
    })();`.replace(/^return /, 'jobs = '),
    { target: 'es2016' },
  );
  const script = `${TIMED}
var jobs, written, rewritten;
${code}; written = jobs;
${quickly(code)}; rewritten = jobs;
var Bellhand = { trials: () => timed([].concat(written, rewritten), ${TURNS}) };`;
  const times = (await trialsIn(program, script)) as number[][];
  console.log(times);
  return JOBS.map(({ name, most }, i): BenchRow => {
    const written = Math.min(...times[i]!);
    const rewritten = Math.min(...times[JOBS.length + i]!);
    const ratio = rewritten / written;
    return {
      name: `${engine}: ${name}`,
      value: (rewritten * 1000) / STEPS,
      unit: 'µs',
      ratio,
      baseline: `as written, ${((written * 1000) / STEPS).toFixed(1)} µs`,
      limit: `ratio at most ${most}`,
      ok: ratio <= most,
    };
  });
}

/** Makes small lists, objects and texts as reading a score does, and keeps one in a hundred. */
const MAKING = `
var making = () => {
  const kept = [];
  for (let i = 0; i < 60000; i++) {
    const made = { list: [i, i + 1, i + 2], text: 'bar ' + i + ' note ' + (i % 7), next: null };
    if (i % 100 === 0) kept.push(made);
  }
  return kept.length;
};`;
const MOST_WITH_ROOM = 0.8;
const STARTS = 5;

async function roomRow(engine: string, program: string): Promise<BenchRow> {
  const room = await editorScript(ROOM);
  // An engine keeps its room: each turn is in an engine of its own.
  const turnWith = async (first: string): Promise<number> => {
    const script = `${room}${TIMED}${MAKING} Bellhand = { trials: (take => () => { ${first} return timed([making], 5); })(Bellhand.takeRoom) };`;
    const [times] = (await trialsIn(program, script)) as [number[]];
    console.log(first, times);
    return Math.min(...times);
  };
  const turns: { readonly without: number; readonly within: number }[] = [];
  for (let start = 0; start < STARTS; start++)
    turns.push({ without: await turnWith(''), within: await turnWith('take();') });
  const without = Math.min(...turns.map((turn) => turn.without));
  const within = Math.min(...turns.map((turn) => turn.within));
  const ratio = within / without;
  return {
    name: `${engine}: makes 60,000 small things with the plugin’s room`,
    value: within,
    unit: 'ms',
    ratio,
    baseline: `without it, ${without} ms`,
    limit: `ratio at most ${MOST_WITH_ROOM}`,
    ok: ratio <= MOST_WITH_ROOM,
  };
}
