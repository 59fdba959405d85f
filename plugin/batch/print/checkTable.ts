/** What was found in a score, for people: a table of the notes, then every finding with its remedy. */

import {
  choiceText,
  countNotes,
  countText,
  decimalText,
  type Examination,
  type ExaminedNote,
  findingText,
  fingeredPitch,
  isHandState,
  naturalName,
  naturalPitch,
  noteClassName,
  noteName,
  placeText,
  type Reader,
  severityText,
  signedCents,
  stateText,
  verdictText,
} from '../../../core/index.ts';
import { wordsFor } from '../reader.ts';
import { textTable } from './textTable.ts';

/** The lines that tell about one part. */
export function checkTable(examination: Examination, reader: Reader): string[] {
  const { passage, notes, findings } = examination;
  const found = new Set(findings.map(({ noteIndex }) => noteIndex));
  const shown = notes.filter(
    ({ note, reading, verdict }) => isHandState(reading.state) || verdict !== 'sure' || found.has(note.index),
  );
  const counts = countText(countNotes([examination]), reader);
  const lines = [`  ${[passage.name, ...keyTexts(examination, reader)].join(', ')}: ${counts}`];
  if (shown.length > 0) lines.push('', ...noteTable(shown, reader));
  const told = findings.map((finding) => findingText(finding, reader));
  /** True for findings of the same kind with the same remedy: they are told together. */
  const isMoreOf = (i: number, other: number): boolean =>
    findings[other]?.id === findings[i]!.id && told[other]!.remedy === told[i]!.remedy;
  findings.forEach(({ id, severity, noteIndex }, i) => {
    const { measure, beat, written } = passage.notes[noteIndex]!;
    const { message, remedy } = told[i]!;
    if (!isMoreOf(i, i - 1)) lines.push('');
    lines.push(
      `    ${placeText(measure, beat, reader)}, ${noteName(written, reader)}: ${severityText(severity, reader)} (${id})`,
      `      ${message}`,
    );
    if (!isMoreOf(i, i + 1)) lines.push(`      ${remedy}`);
  });
  return lines;
}

function noteTable(shown: readonly ExaminedNote[], reader: Reader): string[] {
  const { table } = wordsFor(reader);
  return textTable(
    [
      { heading: table.bar, align: 'right' },
      { heading: table.beat },
      { heading: table.written },
      { heading: table.hand },
      { heading: table.finger },
      { heading: table.valves },
      { heading: table.natural },
      { heading: table.drop, align: 'right' },
      { heading: table.off, align: 'right' },
      { heading: table.verdict },
      { heading: table.why },
    ],
    shown.map(({ note, reading, namedFrom, own, fingering, chosenBecause, verdict }) => [
      note.measure,
      decimalText(note.beat, 2, reader),
      noteName(note.written, reader),
      stateText(reading.state, reader),
      ...(fingering
        ? [
            noteClassName(fingeredPitch(namedFrom, fingering), reader),
            fingering.printed,
            naturalName(naturalPitch(namedFrom, fingering), reader),
            String(Math.round(fingering.dropCents)),
            signedCents(fingering.deviationCents),
          ]
        : ['–', '', '', '', '']),
      verdictText(verdict, reader),
      own?.fingering ? table.asPrinted(own.text) : chosenBecause ? choiceText(chosenBecause, reader) : '',
    ]),
    '    ',
  );
}

/** `sounding 7 semitones lower`; nothing where it is not known. */
function keyTexts({ passage }: Examination, reader: Reader): readonly string[] {
  const first = passage.notes.find(({ transposition }) => transposition)?.transposition;
  return first ? [wordsFor(reader).table.sounding(first.chromatic + 12 * first.octaveChange)] : [];
}
