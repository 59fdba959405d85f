/** One note explained to a person: the fingering, what the hand does, what else there is. */

import {
  alternativeTexts,
  arrowOf,
  choiceText,
  deviationText,
  ENGLISH_READER,
  type ExaminedNote,
  type Finding,
  type Fingering,
  findingText,
  fingeredPitch,
  fingeringText,
  keyText,
  naturalName,
  naturalPitch,
  printPitch,
  type Settings,
  signedCents,
} from '../../../core/index.ts';
import { otherBand } from './closing.ts';
import { textTable } from './textTable.ts';

/** The lines that explain a note. */
export function explanation(
  examined: ExaminedNote,
  findings: readonly Finding[],
  settings: Settings,
): string[] {
  const { note, reading, fingering, candidates, verdict } = examined;
  const written = printPitch(note.written);
  const lines = [`${written} ${reading.state}, on a ${settings.horn.label}: ${verdict}`, ''];
  if (fingering) {
    lines.push(...facts(examined, fingering));
    if (examined.chosenBecause)
      lines.push(`  chosen because   ${choiceText(examined.chosenBecause, ENGLISH_READER)}`);
  } else {
    lines.push('  no fingering');
  }
  for (const finding of findings) {
    const { message, remedy } = findingText(finding, ENGLISH_READER);
    lines.push('', `  ${message}`, `  ${remedy}`);
  }
  const others = candidates.filter((candidate) => candidate !== fingering);
  if (others.length > 0) lines.push('', '  Other ways, best first', ...alternatives(examined, others));
  return lines;
}

function facts({ namedFrom }: ExaminedNote, fingering: Fingering): string[] {
  const natural = naturalPitch(namedFrom, fingering);
  const rows: [string, string][] = [
    [
      'finger',
      `${printPitch(fingeredPitch(namedFrom, fingering))}, ${fingeringText(fingering, ENGLISH_READER)}${fingering.tube.side.valvePrefix === '' ? '' : ` (${fingering.printed})`}`,
    ],
    [
      'natural pitch',
      `${printPitch(natural.pitch)}${arrowOf(natural.deviationCents)}, harmonic ${fingering.harmonic}`,
    ],
  ];
  if (fingering.band) {
    const other = otherBand(fingering);
    rows.push([
      'hand closes',
      other ? `${fingering.band} by the rule, ${other} by the acoustics` : fingering.band,
    ]);
  }
  if (fingering.dropCents >= 0.5) rows.push(['drop', `${Math.round(fingering.dropCents)} cents`]);
  rows.push(['comes out', deviationText(fingering.deviationCents, ENGLISH_READER)]);
  return rows.map(([name, value]) => `  ${name.padEnd(16)} ${value}`);
}

function alternatives({ namedFrom, reading }: ExaminedNote, others: readonly Fingering[]): string[] {
  return textTable(
    [
      { heading: 'finger' },
      { heading: 'valves' },
      { heading: 'side' },
      { heading: 'harmonic', align: 'right' },
      { heading: 'natural' },
      { heading: 'hand' },
      { heading: 'drop', align: 'right' },
      { heading: 'off', align: 'right' },
      { heading: 'verdict' },
      { heading: '' },
    ],
    others.map((other) => [
      printPitch(fingeredPitch(namedFrom, other)),
      other.printed,
      keyText(other.tube.side.name, ENGLISH_READER),
      String(other.harmonic),
      naturalName(naturalPitch(namedFrom, other), ENGLISH_READER),
      other.band ?? '',
      String(Math.round(other.dropCents)),
      signedCents(other.deviationCents),
      other.verdict,
      alternativeTexts(other, reading.state, ENGLISH_READER).join('; '),
    ]),
    '    ',
  );
}
