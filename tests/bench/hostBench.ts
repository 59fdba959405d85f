/** Inside the real editor: what annotating and looking for edits cost, against the editor's own export of the same score. */
import { HOSTS, type Host } from '../editor/rig/host.ts';
import { longPart } from '../editor/rig/music.ts';
import { skipLoudly } from '../editor/rig/programs.ts';
import type { BenchRow } from './benchRow.ts';

const NOTES = 2000;
const ANNOTATE_LIMIT_MS = 1500;
const LOOK_LIMIT_MS = 30;
const LOAD_LIMIT_MS = 200;
/** The host's own writing of the score, reading it back, and a look at the notes. */
const COMPARE_RATIO = 3;
/** Against reading and examining the part: looks must be much cheaper than what they save. */
const TO_READING = { annotate: 6, look: 0.15, compare: 0.5 };

/** Rows for a part of 2,000 stopped notes in every version of the editor that is installed. */
export async function hostBench(): Promise<BenchRow[]> {
  const rows: BenchRow[] = [];
  for (const host of HOSTS) {
    if (host.isInstalled) rows.push(...(await rowsIn(host)));
    else skipLoudly(`the bench in the real editor ${host.version}, which is not installed`, host.install);
  }
  return rows;
}

async function rowsIn(host: Host): Promise<BenchRow[]> {
  // Version 4 lets no plugin export: there the baseline is reading the part and examining it, once.
  const isExporting = host.major === 3;
  const { results } = await host.run(longPart(NOTES), [
    { do: 'measure', what: isExporting ? 'export' : 'read', times: 7 },
    { do: 'measure', what: 'annotate', times: 3 },
    { do: 'measure', what: 'tick', times: 15 },
    { do: 'measure', what: 'rare tick', times: 7 },
    { do: 'load', what: 'script', times: 7 },
    { do: 'load', what: 'line', times: 7 },
  ]);
  const [baseline, annotated, looked, compared, loaded, line] = results.map((times) =>
    median(times as number[]),
  );
  const inHost = `editor ${host.version}:`;
  const against = (name: string, value: number): Omit<BenchRow, 'limit' | 'ok'> => ({
    name: `${inHost} ${name}`,
    value,
    unit: 'ms',
    baseline: `${isExporting ? 'the editor’s own MusicXML export of it' : 'reading and examining it'}, ${baseline} ms`,
    ratio: value / Math.max(1, baseline!),
  });
  const within = (name: string, value: number, limitMs: number): BenchRow => ({
    ...against(name, value),
    limit: `under ${limitMs.toLocaleString('en')} ms`,
    ok: value < limitMs,
  });
  const atMost = (name: string, value: number, ratio: number): BenchRow => {
    const row = against(name, value);
    return { ...row, limit: `ratio at most ${ratio}`, ok: row.ratio! <= ratio };
  };
  const annotating = `annotate ${NOTES.toLocaleString('en')} stopped notes`;
  const looking = 'the panel looks for edits, every 0.3 s';
  const comparing = 'the panel compares the whole score, while somebody works on it';
  const loading: BenchRow = {
    ...within('takes in the plugin’s script', loaded!, LOAD_LIMIT_MS),
    baseline: `a script of one line, ${line} ms`,
    ratio: loaded! / Math.max(1, line!),
  };
  return isExporting
    ? [
        loading,
        within(annotating, annotated!, ANNOTATE_LIMIT_MS),
        within(looking, looked!, LOOK_LIMIT_MS),
        atMost(comparing, compared!, COMPARE_RATIO),
      ]
    : [
        loading,
        atMost(annotating, annotated!, TO_READING.annotate),
        atMost(looking, looked!, TO_READING.look),
        atMost(comparing, compared!, TO_READING.compare),
      ];
}

function median(values: readonly number[]): number {
  return values.slice().sort((a, b) => a - b)[Math.floor(values.length / 2)]!;
}
