/** One line of the bench: a measurement, and what it is held against. */
export interface BenchRow {
  /** What was measured, e.g. `annotate 10,000 notes`. */
  readonly name: string;
  readonly value: number;
  /** Unit of the value: `ms`, `MB`, `notes/s`, … */
  readonly unit: string;
  /** In words, what the value is compared with, measured in the same run; empty for none. */
  readonly baseline: string;
  /** The value against its baseline. */
  readonly ratio?: number;
  /** The most (or, for rates, the least) that ratio or value may be, in words with its number: `ratio at most 3`. */
  readonly limit?: string;
  readonly ok: boolean;
}
