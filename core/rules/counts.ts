/** How many notes came out how: counted here, so that every door tells the same numbers. */
import { checkList } from '../guards/allowed.ts';
import { isHandState } from '../part/handStates.ts';
import type { Verdict } from '../stopping/fingering.ts';
import type { Examination } from './examine.ts';

/** Notes by verdict. */
export type VerdictCounts = { readonly [verdict in Verdict]: number };

/** Notes by verdict: those that the hand makes, and the open ones around them. */
export interface Counts {
  readonly stopped: VerdictCounts;
  readonly open: VerdictCounts;
  /** Measures with an impossible note, as printed, in score order, each once. */
  readonly impossibleMeasures: readonly string[];
}

/**
 * Counts the notes of some parts.
 * @param isCounted which notes of an examination count, by its place and theirs; all by default
 * @throws {TypeError} when there is no list of examinations
 */
export function countNotes(
  examinations: readonly Examination[],
  isCounted: (examinationIndex: number, noteIndex: number) => boolean = () => true,
): Counts {
  checkList('examinations', examinations, 'a list of examinations, as examine makes them');
  const stopped = { sure: 0, risky: 0, impossible: 0 };
  const open = { sure: 0, risky: 0, impossible: 0 };
  const measures = new Map<number, string>();
  examinations.forEach(({ notes }, at) => {
    for (const { note, reading, verdict } of notes) {
      if (!isCounted(at, note.index)) continue;
      if (verdict === 'impossible') measures.set(note.measureIndex, note.measure);
      (isHandState(reading.state) ? stopped : open)[verdict] += 1;
    }
  });
  const inOrder = Array.from(measures).sort(([a], [b]) => a - b);
  return { stopped, open, impossibleMeasures: inOrder.map(([, measure]) => measure) };
}

/** All notes of some verdicts. */
export function totalOf({ sure, risky, impossible }: VerdictCounts): number {
  return sure + risky + impossible;
}
