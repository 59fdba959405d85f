/** Counts in words. */
import type { Counts } from '../../../core/index.ts';

/** Notes that cannot be played, stopped or open. */
export function impossibleCount({ stopped, open }: Counts): number {
  return stopped.impossible + open.impossible;
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
