/** A closing curve as plain text: cents against closing, harmonic by harmonic. */
import { signedCents } from '../words/fingerings.ts';
import type { ClosingCurve, HarmonicCurve } from './closingCurve.ts';

/** Columns of closing in the table of many harmonics, the ends included. */
const COLUMNS = 11;

/** Letters across the plot of one harmonic. */
const PLOT_WIDTH = 48;

/**
 * Lines of text for a terminal. One harmonic is plotted step by step, down the page as the hand closes; several make
 * a table, one line each.
 * @returns lines without line ends, none longer than 90 letters
 * @example
 * const lines = curveText(closingCurve({ fundamentalCents: 2900 }, { harmonics: [8], steps: 4 }));
 * lines[0] // => 'Harmonic 8, open at 348.1 Hz; cents from the open note as the hand closes'
 * lines[2] // => '    0 %       0  *'
 */
export function curveText(curve: ClosingCurve): readonly string[] {
  if (curve.harmonics.length === 0) return ['The bell holds none of these harmonics'];
  return curve.harmonics.length === 1 ? plot(curve, curve.harmonics[0]!) : table(curve);
}

function plot({ closings }: ClosingCurve, { harmonicNumber, frequenciesHz, centsFromOpen }: HarmonicCurve) {
  const lowest = Math.min(...centsFromOpen);
  const highest = Math.max(...centsFromOpen);
  const scale = PLOT_WIDTH / Math.max(1, highest - lowest);
  return [
    `Harmonic ${harmonicNumber}, open at ${frequenciesHz[0]!.toFixed(1)} Hz; cents from the open note as the hand closes`,
    'closing   cents',
    ...centsFromOpen.map((cents, step) => {
      const indent = ' '.repeat(Math.round((highest - cents) * scale));
      return `${right(percent(closings[step]!), 7)} ${right(signedCents(cents), 7)}  ${indent}*`;
    }),
  ];
}

function table({ closings, harmonics }: ClosingCurve) {
  const steps = closings.length - 1;
  const columns = Math.min(COLUMNS, closings.length);
  const shown = Array.from({ length: columns }, (_, i) => Math.round((i * steps) / (columns - 1)));
  return [
    'Cents from the open note as the hand closes',
    ` n  open Hz  ${shown.map((step) => right(percent(closings[step]!), 6)).join('')}`,
    ...harmonics.map(({ harmonicNumber, frequenciesHz, centsFromOpen }) => {
      const cells = shown.map((step) => right(signedCents(centsFromOpen[step]!), 6)).join('');
      return `${right(String(harmonicNumber), 2)}  ${right(frequenciesHz[0]!.toFixed(1), 7)}  ${cells}`;
    }),
  ];
}

function percent(closing: number): string {
  return `${Math.round(100 * closing)} %`;
}

function right(text: string, width: number): string {
  return ' '.repeat(Math.max(0, width - text.length)) + text;
}
