/**
 * Measures what is promised about speed, each against a baseline of the same run. Prints a table; ends with 1 on a miss.
 * `npm run bench` runs everything, `npm run bench -- annotate plan` the named ones.
 */
import { textTable } from '../../plugin/batch/print/textTable.ts';
import buildFirst from '../batch/buildFirst.ts';
import type { BenchRow } from './benchRow.ts';

/**
 * Every bench: its file beside this one exports a function of the same name. What makes many small things comes before
 * what makes large texts: a heap that was once full slows whatever follows.
 */
const BENCHES = [
  'plan',
  'acoustics',
  'annotate',
  'batch',
  'report',
  'engines',
  'host',
  'typing',
  'wholeScore',
] as const;

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !(BENCHES as readonly string[]).includes(name));
if (unknown.length > 0) {
  console.error(`bench: there is no ${unknown.join(', ')}: choose from ${BENCHES.join(', ')}`);
  process.exit(2);
}

await buildFirst();
const rows: BenchRow[] = [];
for (const name of BENCHES) {
  if (asked.length > 0 && !asked.includes(name)) continue;
  const file = new URL(`./${name}Bench.ts`, import.meta.url);
  console.error(`bench: ${name} …`);
  const bench: Record<string, () => BenchRow[] | Promise<BenchRow[]>> = await import(file.href);
  rows.push(...(await bench[`${name}Bench`]!()));
}

const table = textTable(
  [
    { heading: 'what' },
    { heading: 'measured', align: 'right' },
    { heading: 'unit' },
    { heading: 'ratio', align: 'right' },
    { heading: 'against' },
    { heading: 'limit' },
    { heading: '' },
  ],
  rows.map(({ name, value, unit, ratio, baseline, limit, ok }) => [
    name,
    value.toLocaleString('en', { maximumFractionDigits: value < 100 ? 1 : 0 }),
    unit,
    ratio === undefined ? '' : ratio.toFixed(2),
    baseline,
    limit ?? '',
    ok ? (limit ? 'holds' : '') : 'MISSED',
  ]),
);
console.log(table.join('\n'));
const missed = rows.filter(({ ok }) => !ok).length;
console.log(missed === 0 ? '\nEvery limit holds.' : `\n${missed} missed.`);
process.exitCode = missed === 0 ? 0 : 1;
