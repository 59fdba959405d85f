/** What was found in a score, for people: a table of the notes, then every finding with its remedy. */

import {
  choiceText,
  countNotes,
  countText,
  ENGLISH_READER,
  type Examination,
  type ExaminedNote,
  type Finding,
  findingText,
  fingeredPitch,
  isHandState,
  naturalName,
  naturalPitch,
  printPitch,
  printPitchClass,
  signedCents,
  type Transposition,
} from '../../../core/index.ts';
import { textTable } from './textTable.ts';

/** The lines that tell about one part. */
export function checkTable(examination: Examination): string[] {
  const { passage, notes, findings } = examination;
  const found = new Set(findings.map(({ noteIndex }) => noteIndex));
  const shown = notes.filter(({ note, reading }) => isHandState(reading.state) || found.has(note.index));
  const lines = [
    `  ${passage.name}${keyText(examination)}: ${countText(countNotes([examination]), ENGLISH_READER)}`,
  ];
  if (shown.length > 0) lines.push('', ...noteTable(shown));
  findings.forEach((finding, i) => {
    const { id, severity, noteIndex } = finding;
    const { message, remedy } = findingText(finding, ENGLISH_READER);
    const { measure, beat, written } = passage.notes[noteIndex]!;
    if (!isMoreOf(finding, findings[i - 1])) lines.push('');
    lines.push(
      `    bar ${measure}, beat ${beatText(beat)}, ${printPitch(written)}: ${severity} (${id})`,
      `      ${message}`,
    );
    if (!isMoreOf(finding, findings[i + 1])) lines.push(`      ${remedy}`);
  });
  return lines;
}

/** True for findings of the same kind with the same remedy: they are told together. */
function isMoreOf(finding: Finding, other: Finding | undefined): boolean {
  return (
    other?.id === finding.id &&
    findingText(other, ENGLISH_READER).remedy === findingText(finding, ENGLISH_READER).remedy
  );
}

function noteTable(shown: readonly ExaminedNote[]): string[] {
  return textTable(
    [
      { heading: 'bar', align: 'right' },
      { heading: 'beat' },
      { heading: 'written' },
      { heading: 'hand' },
      { heading: 'finger' },
      { heading: 'valves' },
      { heading: 'natural' },
      { heading: 'drop', align: 'right' },
      { heading: 'off', align: 'right' },
      { heading: 'verdict' },
      { heading: 'why this fingering' },
    ],
    shown.map(({ note, reading, namedFrom, fingering, chosenBecause, verdict }) => [
      note.measure,
      beatText(note.beat),
      printPitch(note.written),
      reading.state,
      ...(fingering
        ? [
            printPitchClass(fingeredPitch(namedFrom, fingering)),
            fingering.printed,
            naturalName(naturalPitch(namedFrom, fingering), ENGLISH_READER),
            String(Math.round(fingering.dropCents)),
            signedCents(fingering.deviationCents),
          ]
        : ['–', '', '', '', '']),
      verdict,
      chosenBecause ? choiceText(chosenBecause, ENGLISH_READER) : '',
    ]),
    '    ',
  );
}

/** `, sounding 7 semitones lower`; nothing where it is not known. */
function keyText({ passage }: Examination): string {
  const first = passage.notes.find(({ transposition }) => transposition)?.transposition;
  if (!first) return '';
  const semitones = semitonesOf(first);
  if (semitones === 0) return ', sounding as written';
  return `, sounding ${Math.abs(semitones)} semitones ${semitones < 0 ? 'lower' : 'higher'}`;
}

function semitonesOf({ chromatic, octaveChange }: Transposition): number {
  return chromatic + 12 * octaveChange;
}

/** Beats as players count them, with at most two decimals. */
function beatText(beat: number): string {
  return String(Math.round(100 * beat) / 100);
}
