/** How many notes came out how, in numbers and in words. */
import type { Examination } from '../../core/examine.ts';
import type { Verdict } from '../../core/fingering.ts';
import { isHandState } from '../../core/handStates.ts';

/** Notes that the hand has to do with, and those found impossible among all. */
export interface Counts {
  readonly hand: number;
  readonly sure: number;
  readonly risky: number;
  readonly impossible: number;
  /** Measures with an impossible note, as printed, each once. */
  readonly impossibleMeasures: readonly string[];
}

export function countNotes(examinations: readonly Examination[]): Counts {
  const byVerdict: { [verdict in Verdict]: number } = { sure: 0, risky: 0, impossible: 0 };
  const measures = new Set<string>();
  let hand = 0;
  for (const { notes } of examinations) {
    for (const { note, reading, verdict } of notes) {
      if (verdict === 'impossible') measures.add(note.measure);
      if (isHandState(reading.state)) hand += 1;
      else if (verdict === 'sure') continue;
      byVerdict[verdict] += 1;
    }
  }
  return { hand, ...byVerdict, impossibleMeasures: [...measures] };
}

/** `12 notes by the hand: 9 sure, 2 risky, 1 impossible`. */
export function countText({ hand, sure, risky, impossible }: Counts): string {
  if (hand + risky + impossible === 0) return 'no stopped notes';
  const verdicts = [
    [sure, 'sure'],
    [risky, 'risky'],
    [impossible, 'impossible'],
  ].filter(([count]) => count !== 0);
  return `${amount(hand, 'stopped note')}: ${verdicts.map(([count, word]) => `${count} ${word}`).join(', ')}`;
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
