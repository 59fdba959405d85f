/** Inside the real editor: what annotating and looking for edits cost, against the editor's own export of the same score. */
import { HOST_3 } from '../editor/rig/host3.ts';
import { longPart } from '../editor/rig/music.ts';
import { skipLoudly } from '../editor/rig/programs.ts';
import type { BenchRow } from './benchRow.ts';

const NOTES = 2000;
const ANNOTATE_LIMIT_MS = 1500;
const LOOK_LIMIT_MS = 30;
/** The host's own writing of the score, reading it back, and a look at the notes. */
const COMPARE_RATIO = 3;

/** Rows for a part of 2,000 stopped notes; none where the editor is not installed. */
export async function hostBench(): Promise<BenchRow[]> {
  if (!HOST_3.isInstalled) {
    skipLoudly(
      'the bench in the real editor, which is not installed',
      'apt-get install --no-install-recommends musescore3',
    );
    return [];
  }
  const { results } = await HOST_3.run(longPart(NOTES), [
    { do: 'measure', what: 'export', times: 7 },
    { do: 'measure', what: 'annotate', times: 3 },
    { do: 'measure', what: 'tick', times: 15 },
    { do: 'measure', what: 'rare tick', times: 7 },
  ]);
  const [exported, annotated, looked, compared] = results.map((times) => median(times as number[]));
  const against = (name: string, value: number): Omit<BenchRow, 'limit' | 'ok'> => ({
    name,
    value,
    unit: 'ms',
    baseline: `the editor's own MusicXML export of it, ${exported} ms`,
    ratio: value / Math.max(1, exported!),
  });
  const within = (name: string, value: number, limitMs: number): BenchRow => ({
    ...against(name, value),
    limit: `under ${limitMs.toLocaleString('en')} ms`,
    ok: value < limitMs,
  });
  const comparing = against(
    'editor: the panel compares the score as written, while somebody works on it',
    compared!,
  );
  return [
    within(`editor: annotate ${NOTES.toLocaleString('en')} stopped notes`, annotated!, ANNOTATE_LIMIT_MS),
    within('editor: the panel looks for edits, every 0.3 s', looked!, LOOK_LIMIT_MS),
    { ...comparing, limit: `ratio at most ${COMPARE_RATIO}`, ok: comparing.ratio! <= COMPARE_RATIO },
  ];
}

function median(values: readonly number[]): number {
  return values.slice().sort((a, b) => a - b)[Math.floor(values.length / 2)]!;
}
