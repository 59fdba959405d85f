/**
 * The closing curve against the harmonic series and the stop rule, as a Markdown table.
 * Run alone it prints the table: `npx tsx tests/core/acoustics/accuracyTable.ts`.
 */
import { pathToFileURL } from 'node:url';
import { type ClosingCurve, closingCurve } from '../../../core/acoustics/index.ts';
import { type Side, tubesOf } from '../../../core/horn/horn.ts';
import { BFLAT_SIDE, F_SIDE } from '../../../core/horn/sides.ts';
import { stop } from '../../../core/stopping/stopping.ts';

/** One harmonic of one side, everything in cents. */
export interface AccuracyRow {
  readonly harmonic: number;
  /** Open resonance against the harmonic series. */
  readonly openDeviation: number;
  /** Sealed resonance above the open one below it; null for the first. */
  readonly closure: number | null;
  /** Open resonance minus sealed one. */
  readonly drop: number;
  /** The drop by the rule the fingerings follow; null for the first. */
  readonly ruleDrop: number | null;
}

/** Every harmonic of a side's open tube. */
export function accuracyRows(side: Side, curve: ClosingCurve = closingCurve(side)): readonly AccuracyRow[] {
  const tube = tubesOf(side)[0]!;
  return curve.harmonics.map(({ harmonicNumber, openDeviationCents, frequenciesHz, centsFromOpen }, i) => {
    const below = curve.harmonics[i - 1];
    const sealedHz = frequenciesHz[frequenciesHz.length - 1]!;
    return {
      harmonic: harmonicNumber,
      openDeviation: openDeviationCents,
      closure: below ? 1200 * Math.log2(sealedHz / below.frequenciesHz[0]!) : null,
      drop: -centsFromOpen[centsFromOpen.length - 1]!,
      ruleDrop: below ? stop(tube, harmonicNumber).dropCents : null,
    };
  });
}

/** The middle of some numbers. */
export function median(values: readonly number[]): number {
  const sorted = values.slice().sort((a, b) => a - b);
  return (sorted[Math.floor((sorted.length - 1) / 2)]! + sorted[Math.ceil((sorted.length - 1) / 2)]!) / 2;
}

/** The whole table: both sides by harmonic, from the 2nd up, and the medians of the closure. */
export function accuracyTable(): string {
  const sides = [accuracyRows(F_SIDE), accuracyRows(BFLAT_SIDE)];
  const lines = [
    '| harmonic | F open | F closure | F drop | by rule | B♭ open | B♭ closure | B♭ drop | by rule |',
    '|---:|---:|---:|---:|---:|---:|---:|---:|---:|',
  ];
  for (let i = 1; i < sides[0]!.length; i++) {
    const cells = sides.flatMap((rows) => {
      const { openDeviation, closure, drop, ruleDrop } = rows[i]!;
      return [signed(openDeviation), signed(closure!), signed(drop), signed(ruleDrop!)];
    });
    lines.push(`| ${[sides[0]![i]!.harmonic, ...cells].join(' | ')} |`);
  }
  const medians = sides.map((rows) => signed(median(rows.slice(4, 16).map(({ closure }) => closure!))));
  lines.push(`| median 5–16 | | ${medians[0]} | | | | ${medians[1]} | | |`);
  return lines.join('\n');
}

function signed(cents: number): string {
  const whole = Math.round(cents);
  return whole < 0 ? `−${-whole}` : String(whole + 0);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) console.log(accuracyTable());
