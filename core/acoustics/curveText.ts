/** A closing curve as plain text: cents against closing, harmonic by harmonic. */
import { checkObject } from '../guards/allowed.ts';
import { curveWords } from '../words/curves.ts';
import { fixedText, signedCents } from '../words/fingerings.ts';
import { ENGLISH_READER, type Reader } from '../words/language.ts';
import type { ClosingCurve, HarmonicCurve } from './closingCurve.ts';

/** Columns of closing in the table of many harmonics, the ends included. */
const COLUMNS = 11;

/** Letters across the plot of one harmonic. */
const PLOT_WIDTH = 48;

/**
 * Lines of text for a terminal. One harmonic is plotted step by step, down the page as the hand closes; several make
 * a table, one line each.
 * @param reader in whose language it is written; English by default
 * @returns lines without line ends, none longer than 90 letters
 * @throws {TypeError} when there is no curve
 * @example
 * const lines = curveText(closingCurve({ fundamentalCents: 2900 }, { harmonics: [8], steps: 4 }));
 * lines[0] // => 'Harmonic 8, open at 348.1 Hz; cents from the open note as the hand closes'
 * lines[2] // => '    0 %       0  *'
 */
export function curveText(curve: ClosingCurve, reader: Reader = ENGLISH_READER): readonly string[] {
  checkObject('curve', curve, 'a curve, as closingCurve makes one');
  if (curve.harmonics.length === 0) return [curveWords(reader).none];
  return curve.harmonics.length === 1 ? plot(curve, curve.harmonics[0]!, reader) : table(curve, reader);
}

function plot(
  { closings }: ClosingCurve,
  { harmonicNumber, frequenciesHz, centsFromOpen }: HarmonicCurve,
  reader: Reader,
) {
  const words = curveWords(reader);
  const lowest = Math.min(...centsFromOpen);
  const highest = Math.max(...centsFromOpen);
  const scale = PLOT_WIDTH / Math.max(1, highest - lowest);
  return [
    words.plotted(harmonicNumber, fixedText(frequenciesHz[0]!, 1, reader)),
    `${right(words.closing, 7)} ${right(words.cents, 7)}`,
    ...centsFromOpen.map((cents, step) => {
      const indent = ' '.repeat(Math.round((highest - cents) * scale));
      return `${right(percent(closings[step]!), 7)} ${right(signedCents(cents), 7)}  ${indent}*`;
    }),
  ];
}

function table({ closings, harmonics }: ClosingCurve, reader: Reader) {
  const words = curveWords(reader);
  const steps = closings.length - 1;
  const columns = Math.min(COLUMNS, closings.length);
  const shown = Array.from({ length: columns }, (_, i) => Math.round((i * steps) / (columns - 1)));
  return [
    words.tabled,
    ` n ${right(words.openHz, 8)}  ${shown.map((step) => right(percent(closings[step]!), 6)).join('')}`,
    ...harmonics.map(({ harmonicNumber, frequenciesHz, centsFromOpen }) => {
      const cells = shown.map((step) => right(signedCents(centsFromOpen[step]!), 6)).join('');
      return `${right(String(harmonicNumber), 2)}  ${right(fixedText(frequenciesHz[0]!, 1, reader), 7)}  ${cells}`;
    }),
  ];
}

function percent(closing: number): string {
  return `${Math.round(100 * closing)} %`;
}

function right(text: string, width: number): string {
  return ' '.repeat(Math.max(0, width - text.length)) + text;
}
