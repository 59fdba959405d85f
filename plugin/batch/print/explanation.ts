/** One note explained to a person: the fingering, what the hand does, what else there is. */

import {
  alternativeTexts,
  arrowOf,
  choiceText,
  closingText,
  deviationText,
  type ExaminedNote,
  type Finding,
  type Fingering,
  findingText,
  fingeredPitch,
  fingeringText,
  hornText,
  keyText,
  naturalName,
  naturalPitch,
  noteName,
  type Reader,
  signedCents,
  stateText,
  verdictText,
} from '../../../core/index.ts';
import { wordsFor } from '../reader.ts';
import { otherBand } from './closing.ts';
import { textTable } from './textTable.ts';

/** The lines that explain a note. */
export function explanation(examined: ExaminedNote, findings: readonly Finding[], reader: Reader): string[] {
  const { explain } = wordsFor(reader);
  const { note, reading, player, fingering, candidates, chosenBecause, verdict } = examined;
  const written = `${noteName(note.written, reader)} ${stateText(reading.state, reader)}`;
  const lines = [
    explain.heading(written, hornText(player.horn, reader), verdictText(verdict, reader)),
    '',
    ...(fingering ? facts(examined, fingering, reader) : [`  ${explain.noFingering}`]),
  ];
  if (chosenBecause) lines.push(fact(explain.chosenBecause, choiceText(chosenBecause, reader)));
  for (const finding of findings) {
    const { message, remedy } = findingText(finding, reader);
    lines.push('', `  ${message}`, `  ${remedy}`);
  }
  const others = candidates.filter((candidate) => candidate !== fingering);
  if (others.length > 0) lines.push('', `  ${explain.otherWays}`, ...alternatives(examined, others, reader));
  return lines;
}

function fact(name: string, value: string): string {
  return `  ${name.padEnd(16)} ${value}`;
}

function facts({ namedFrom }: ExaminedNote, fingering: Fingering, reader: Reader): string[] {
  const { explain, table } = wordsFor(reader);
  const { printed, tube, harmonic, band, dropCents, deviationCents } = fingering;
  const natural = naturalPitch(namedFrom, fingering);
  const fingered = `${noteName(fingeredPitch(namedFrom, fingering), reader)}, ${fingeringText(fingering, reader)}`;
  const lines = [
    fact(explain.finger, tube.side.valvePrefix === '' ? fingered : `${fingered} (${printed})`),
    fact(
      explain.naturalPitch,
      `${noteName(natural.pitch, reader)}${arrowOf(natural.deviationCents)}, ${table.harmonic} ${harmonic}`,
    ),
  ];
  if (band) {
    const other = otherBand(fingering);
    const byRule = closingText(band, reader);
    const closing = other ? explain.twoClosings(byRule, closingText(other, reader)) : byRule;
    lines.push(fact(explain.handCloses, closing));
  }
  const { stoppingValveCents } = tube.side;
  if (stoppingValveCents > 0 && dropCents >= 0.5)
    lines.push(fact(explain.stoppingValve, explain.stoppingValveDown(Math.round(stoppingValveCents))));
  if (dropCents >= 0.5) lines.push(fact(explain.drop, explain.cents(Math.round(dropCents))));
  lines.push(fact(explain.comesOut, deviationText(deviationCents, reader)));
  return lines;
}

function alternatives(
  { namedFrom, reading }: ExaminedNote,
  others: readonly Fingering[],
  reader: Reader,
): string[] {
  const { table } = wordsFor(reader);
  return textTable(
    [
      { heading: table.finger },
      { heading: table.valves },
      { heading: table.side },
      { heading: table.harmonic, align: 'right' },
      { heading: table.natural },
      { heading: table.hand },
      { heading: table.drop, align: 'right' },
      { heading: table.off, align: 'right' },
      { heading: table.verdict },
      { heading: '' },
    ],
    others.map((other) => [
      noteName(fingeredPitch(namedFrom, other), reader),
      other.printed,
      keyText(other.tube.side.name, reader),
      String(other.harmonic),
      naturalName(naturalPitch(namedFrom, other), reader),
      other.band ? closingText(other.band, reader) : '',
      String(Math.round(other.dropCents)),
      signedCents(other.deviationCents),
      verdictText(other.verdict, reader),
      alternativeTexts(other, reading.state, reader).join('; '),
    ]),
    '    ',
  );
}
