/** How many notes came out how, in numbers and in words. */

import { type Examination, isHandState, type Verdict } from '../../../core/index.ts';

type ByVerdict = { [verdict in Verdict]: number };

/** Notes by verdict: those that the hand makes, and the open ones around them. */
export interface Counts {
  readonly stopped: Readonly<ByVerdict>;
  readonly open: Readonly<ByVerdict>;
  /** Measures with an impossible note, as printed, in score order, each once. */
  readonly impossibleMeasures: readonly string[];
}

export function countNotes(examinations: readonly Examination[]): Counts {
  const stopped: ByVerdict = { sure: 0, risky: 0, impossible: 0 };
  const open: ByVerdict = { sure: 0, risky: 0, impossible: 0 };
  const measures = new Map<number, string>();
  for (const { notes } of examinations) {
    for (const { note, reading, verdict } of notes) {
      if (verdict === 'impossible') measures.set(note.measureIndex, note.measure);
      (isHandState(reading.state) ? stopped : open)[verdict] += 1;
    }
  }
  const inOrder = [...measures].sort(([a], [b]) => a - b).map(([, measure]) => measure);
  return { stopped, open, impossibleMeasures: inOrder };
}

/** Notes that cannot be played, stopped or open. */
export function impossibleCount({ stopped, open }: Counts): number {
  return stopped.impossible + open.impossible;
}

/** `12 stopped notes: 9 sure, 2 risky, 1 impossible; open notes: 1 risky`. */
export function countText({ stopped, open }: Counts): string {
  const total = stopped.sure + stopped.risky + stopped.impossible;
  const beside = verdictsText({ ...open, sure: 0 });
  const texts = [
    total === 0 ? 'no stopped notes' : `${amount(total, 'stopped note')}: ${verdictsText(stopped)}`,
  ];
  if (beside !== '') texts.push(`open notes: ${beside}`);
  return texts.join('; ');
}

function verdictsText(counts: ByVerdict): string {
  const verdicts: readonly Verdict[] = ['sure', 'risky', 'impossible'];
  return verdicts
    .filter((verdict) => counts[verdict] > 0)
    .map((verdict) => `${counts[verdict]} ${verdict}`)
    .join(', ');
}

/** `1 file`, `2 files`. */
export function amount(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`;
}

/** `bar 4`, `bars 4, 7 and 12`; long lists are cut. */
export function barsText(measures: readonly string[]): string {
  const shown = measures.slice(0, 12);
  const rest = measures.length - shown.length;
  if (rest > 0) return `bars ${shown.join(', ')} and ${rest} more`;
  if (shown.length < 2) return `bar ${shown.join('')}`;
  return `bars ${shown.slice(0, -1).join(', ')} and ${shown[shown.length - 1]}`;
}
