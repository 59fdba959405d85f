/** Counts in words. */
import type { Counts, Verdict, VerdictCounts } from '../../../core/index.ts';

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

function verdictsText(counts: VerdictCounts): string {
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
