/** How to read the chart of one horn: a sentence for each sign that it uses, and for none that it does not. */
import { chartWords, keyText, type Reader, type Settings } from '../../core/index.ts';
import { type ChartNote, clefOf } from './chartNotes.ts';
import { fingeredText, naturalText } from './fingeringTable.ts';

/** The sentences, the most needed first. */
export function chartLegend(
  { horn }: Settings,
  notes: readonly ChartNote[],
  reader: Reader,
): readonly string[] {
  const words = chartWords(reader);
  const example = (notes.find(({ examined }) => examined.verdict === 'sure') ?? notes[0]!).examined;
  const chosen = notes.map(({ examined }) => examined.fingering!);
  const used = horn.sides.filter(({ name }) => chosen.some(({ tube }) => tube.side.name === name));
  const hasArrow = notes.some(({ examined }) =>
    /[↑↓]/.test(naturalText(examined.namedFrom, examined.fingering!, reader)),
  );
  return [
    horn.natural
      ? words.naturalReading
      : words.fingeredReading(fingeredText(example.namedFrom, example.fingering!, reader)),
    ...used
      .filter(({ valvePrefix }) => valvePrefix !== '')
      .map(({ valvePrefix, name }) => words.prefix(valvePrefix, keyText(name, reader))),
    ...used
      .filter(({ stoppingValveCents }) => stoppingValveCents > 0)
      .map(({ name }) => words.stoppingValve(keyText(name, reader))),
    words.naturalPitchReading,
    ...(hasArrow ? [words.arrows.replace('↑ ↓', '↑\u00a0↓')] : []),
    ...(notes.some(({ examined }) => examined.verdict === 'risky') ? [words.withLuck] : []),
    ...(notes.some((note) => clefOf(note) === 'bass') ? [words.bassClef] : []),
  ];
}
