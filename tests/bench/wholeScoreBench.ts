/**
 * What the panel costs in a whole score, in the processor's time of the thread that draws and takes keys, against the
 * same thing in one of its horn parts alone, against as many plain texts, which is the editor's own laying out, and
 * against its writing of the score.
 */
import { HOSTS, type Host } from '../editor/rig/host.ts';
import { skipLoudly } from '../editor/rig/programs.ts';
import { type WholeScore, wholeScores } from '../editor/rig/wholeScores.ts';
import type { BenchRow } from './benchRow.ts';

/** What a writer feels as quick. The editor's own part in a row, where it is large, is a row of its own. */
const LIMITS_MS = {
  open: 1500,
  annotate: 6000,
  selection: 500,
  clear: 3000,
  slice: 100,
  click: 100,
} as const;
/** Of a core. */
const REST_LIMIT_PERCENT = 3;
const LOOK_EVERY_MS = 300;
const SELECTED = 16;
/** On a busy machine too. */
const MOST_MS = 900_000;

/** Rows for every whole score in every version of the editor that is installed. */
export async function wholeScoreBench(): Promise<BenchRow[]> {
  const rows: BenchRow[] = [];
  const scores = wholeScores();
  if (scores.length < 2)
    skipLoudly(
      'the bench in a whole score by others',
      'put the collection of real scores into ../shared/corpus',
    );
  for (const host of HOSTS) {
    if (!host.isInstalled) skipLoudly(`the bench in ${host.version}, which is not installed`, host.install);
    else for (const score of scores) rows.push(...(await rowsOf(host, score)));
  }
  return rows;
}

async function rowsOf(host: Host, score: WholeScore): Promise<BenchRow[]> {
  const whole = await costs(host, score.text, score.hornStaff);
  const part = await costs(host, score.part, 0);
  const row = (name: string, value: number, inPart: number, limit: number, unit = 'ms'): BenchRow => ({
    name: `editor ${host.version}, ${score.name}: ${name}`,
    value,
    unit,
    baseline: `one horn part alone, ${inPart.toFixed(unit === '%' ? 1 : 0)} ${unit}`,
    ratio: value / Math.max(0.1, inPart),
    limit: `under ${limit.toLocaleString('en')} ${unit}`,
    ok: value < limit,
  });
  const against = (name: string, value: number, floor: number, limit: number): BenchRow => ({
    ...row(name, value, floor, limit),
    baseline: `as many plain texts${name === 'annotate' && whole.piece !== null ? ' and listing all of it once' : ''}, ${floor.toFixed(0)} ms`,
  });
  const rows = [
    row('open the panel', whole.open, part.open, LIMITS_MS.open),
    row('open it while a note is selected', whole.openSelected, part.openSelected, LIMITS_MS.open),
    row(
      whole.piece === null
        ? 'the longest slice of it'
        : 'the longest slice of it, besides the one in which the editor tells signs and lines',
      whole.slice,
      part.slice,
      LIMITS_MS.slice,
    ),
    row('looks while nobody works', whole.rest, part.rest, REST_LIMIT_PERCENT, '%'),
    row(
      'the longest look after a click on something that is no note',
      whole.click,
      part.click,
      LIMITS_MS.click,
    ),
    against('annotate', whole.annotate, whole.addPlain + (whole.piece ?? 0), LIMITS_MS.annotate),
    against('clear', whole.clear, whole.removePlain, LIMITS_MS.clear),
    row(`annotate ${SELECTED} selected notes`, whole.selection, part.selection, LIMITS_MS.selection),
    {
      name: `editor ${host.version}, ${score.name}: the editor takes annotating back`,
      value: whole.undo,
      unit: 'ms',
      baseline: `one text more, ${whole.text.toFixed(0)} ms`,
      ratio: whole.undo / whole.text,
      ok: true,
    },
  ];
  if (whole.piece !== null && whole.write !== null)
    rows.push({
      name: `editor ${host.version}, ${score.name}: the editor tells signs and lines, in one piece`,
      value: whole.piece,
      unit: 'ms',
      baseline: `writing the score once, ${whole.write.toFixed(0)} ms`,
      ratio: whole.piece / whole.write,
      ok: true,
    });
  return rows;
}

interface Costs {
  readonly open: number;
  /** The same while a note is selected. */
  readonly openSelected: number;
  readonly slice: number;
  /** In percent of a core. */
  readonly rest: number;
  /** The longest look after it. */
  readonly click: number;
  readonly annotate: number;
  /** The editor's own undo of annotating. */
  readonly undo: number;
  readonly clear: number;
  readonly selection: number;
  /** Adding as many plain texts as there were marks, and taking them away. */
  readonly addPlain: number;
  readonly removePlain: number;
  /** The editor's laying out anew when one text is added. */
  readonly text: number;
  /** Version 3: the part of opening that cannot be cut, in which the editor lists or writes the score. */
  readonly piece: number | null;
  /** Version 4 lets no plugin write. */
  readonly write: number | null;
}

async function costs(host: Host, score: string, staff: number): Promise<Costs> {
  const isWriting = host.major === 3;
  const { results } = await host.run(
    score,
    [
      { do: 'cost', what: 'open' },
      { do: 'cost', what: 'rest' },
      { do: 'cost', what: 'click' },
      { do: 'deselect' },
      { do: 'cost', what: 'annotate' },
      { do: 'cost', what: 'undo' },
      { do: 'redo' },
      { do: 'deselect' },
      { do: 'cost', what: 'clear' },
      { do: 'plain' },
      { do: 'select-stretch', staff, length: SELECTED },
      { do: 'cost', what: 'annotate' },
      { do: 'cost', what: 'text' },
      ...(isWriting ? ([{ do: 'cost', what: 'write' }] as const) : []),
    ],
    MOST_MS,
  );
  const [slices, looks, clicked] = results as [number[], number[], number[]];
  const [annotate, undo, , , clear, plain, selected, selection, text, write = null] = results.slice(4) as [
    number,
    number,
    null,
    null,
    number,
    Plain,
    number,
    number,
    number,
    number?,
  ];
  if (selected !== SELECTED) throw new Error(`${selected} notes selected instead of ${SELECTED}`);
  // In an editor that has just started, as the other.
  const again = await host.run(
    score,
    [
      { do: 'select-stretch', staff, length: 1 },
      { do: 'cost', what: 'open' },
    ],
    MOST_MS,
  );
  const besideSelected = again.results[1] as number[];
  const ours = isWriting ? withoutLargest(slices) : slices;
  return {
    open: sum(slices),
    openSelected: sum(besideSelected),
    slice: Math.max(...ours),
    click: Math.max(...clicked),
    rest: (100 * sum(looks)) / (LOOK_EVERY_MS * looks.length),
    annotate,
    undo,
    clear,
    selection,
    addPlain: plain.add,
    removePlain: plain.remove,
    text,
    piece: isWriting ? Math.max(...slices) : null,
    write,
  };
}

interface Plain {
  readonly add: number;
  readonly remove: number;
}

function withoutLargest(values: readonly number[]): number[] {
  return values
    .slice()
    .sort((a, b) => a - b)
    .slice(0, -1);
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
