/** An examination as plain data for other programs, in English whoever reads: what `check --format json` prints, from either door. */

import { SIGN_TEXTS } from '../data/signs.ts';
import { checkList } from '../guards/allowed.ts';
import { isHandState } from '../part/handStates.ts';
import type { JoinKind, Passage } from '../part/passage.ts';
import { formatPitch, type Pitch, type Transposition } from '../pitch/pitch.ts';
import type { ExaminedNote } from '../plan/examinedNote.ts';
import type { Repair, RepairKind, RepairStep } from '../repairs/repair.ts';
import { repairsFor } from '../repairs/repairsFor.ts';
import type { Examination } from '../rules/examine.ts';
import type { Severity } from '../rules/rule.ts';
import type { Finding } from '../rules/rules.ts';
import type { Fingering } from '../stopping/fingering.ts';
import { fingeredPitch, naturalPitch } from '../stopping/names.ts';
import { findingText } from '../words/findings.ts';
import { alternativeTexts, choiceText, reasonText } from '../words/fingerings.ts';
import { ENGLISH_READER } from '../words/language.ts';
import { repairText } from '../words/repairs.ts';

/** One way to play a note. Pitches like `C#5`, `Bb4`, in the part's own written pitch, or as the F horn reads them. */
export interface FingeringResult {
  readonly fingered: string;
  /** `F`, `Bb`, `high F` or a crook. */
  readonly side: string;
  /** `0`, `12`, … without the side's prefix. */
  readonly valves: string;
  readonly harmonic: number;
  readonly natural: string;
  readonly dropCents: number;
  readonly deviationCents: number;
  /** How far the hand closes, on a natural horn or half-stopped: `¼`, `½`, `¾`, `full`; absent where the state says it. */
  readonly closing?: string;
  readonly verdict: string;
  readonly reasons: readonly string[];
}

/** One note as it was examined. Pitches like `C#5`, cents as numbers; null where the note has no fingering or no pitch. */
export interface NoteResult {
  readonly measure: string;
  /** From 1, in beats of the time signature's lower number; to three decimals. */
  readonly beat: number;
  readonly written: string;
  readonly state: string;
  readonly verdict: string;
  readonly fingered: string | null;
  readonly side: string | null;
  readonly valves: string | null;
  readonly harmonic: number | null;
  readonly natural: string | null;
  readonly dropCents: number | null;
  readonly deviationCents: number | null;
  readonly closing?: string;
  /** The fingering that the part prints over the note, as it stands there; null where it leaves that open. */
  readonly chosen: string | null;
  readonly reasons: readonly string[];
  readonly alternatives: readonly FingeringResult[];
}

/** One finding with its place in the part, in words. */
export interface FindingResult {
  readonly id: string;
  readonly severity: Severity;
  readonly part: string;
  readonly measure: string;
  /** From 1, in beats of the time signature's lower number; to three decimals. */
  readonly beat: number;
  readonly written: string;
  readonly message: string;
  readonly remedy: string;
}

/** A finding with what can be done about it by changing the part; each repair makes the finding go away. */
export interface RepairableResult extends FindingResult {
  readonly repairs: readonly RepairResult[];
}

/** One repair: all its changes belong together. */
export interface RepairResult {
  readonly kind: RepairKind;
  readonly label: string;
  readonly changes: readonly ChangeResult[];
}

/** One change, at one note. */
export interface ChangeResult {
  /** `note`: another note is written; `sign`, `fingering` and `word`: written over it; `join`: what leads on from it is taken out. */
  readonly change: RepairStep['change'];
  readonly measure: string;
  /** From 1, in beats of the time signature's lower number; to three decimals. */
  readonly beat: number;
  /** The note that stands there. */
  readonly written: string;
  /** The note (`F3`), sign (`+`, `o`, `⊕`), fingering (`T12`) or word to be written; null where something is taken away. */
  readonly becomes: string | null;
  /** What is taken out: `glissando`, `slur`, …; null where something is written, or a sign or a fingering taken away. */
  readonly takenOut: JoinKind | null;
}

/** One part: its stopped notes, and open ones that are not sure or at which something was found. */
export interface PartResult {
  readonly name: string;
  /** Written to sounding at the part's first note, in semitones; null when not stated. */
  readonly transpose: number | null;
  readonly notes: readonly NoteResult[];
}

/** What was found in a score. */
export interface Result {
  readonly parts: readonly PartResult[];
  readonly findings: readonly RepairableResult[];
}

/**
 * The result of one or more parts, repairs included. Notes played open are left out unless they are not sure, or
 * something was found at them.
 * @throws {TypeError} when there is no list of examinations
 */
export function resultOf(examinations: readonly Examination[]): Result {
  checkList('examinations', examinations, 'a list of examinations, as examine makes them');
  return {
    parts: examinations.map(partResult),
    findings: ([] as RepairableResult[]).concat(...examinations.map(repairableResults)),
  };
}

function partResult({ passage, notes, findings }: Examination): PartResult {
  const found = new Set(findings.map(({ noteIndex }) => noteIndex));
  return {
    name: passage.name,
    transpose: transposeOf({ passage }),
    notes: notes
      .filter(
        ({ note, reading, verdict }) =>
          isHandState(reading.state) || verdict !== 'sure' || found.has(note.index),
      )
      .map(noteResult),
  };
}

/** Written to sounding at the part's first note that says so, in semitones; null when none does. */
export function transposeOf({ passage }: Pick<Examination, 'passage'>): number | null {
  const first = passage.notes.filter(({ transposition }) => transposition)[0];
  return first?.transposition ? semitones(first.transposition) : null;
}

/** One note with its chosen fingering and every other. */
export function noteResult(examined: ExaminedNote): NoteResult {
  const { note, reading, namedFrom, verdict, own, fingering, candidates, chosenBecause } = examined;
  const played = fingering ? fingeringResult(namedFrom, fingering) : null;
  return {
    measure: note.measure,
    beat: round(note.beat, 3),
    written: formatPitch(note.written),
    state: reading.state,
    verdict,
    fingered: played?.fingered ?? null,
    side: played?.side ?? null,
    valves: played?.valves ?? null,
    harmonic: played?.harmonic ?? null,
    natural: played?.natural ?? null,
    dropCents: played?.dropCents ?? null,
    deviationCents: played?.deviationCents ?? null,
    ...(played?.closing === undefined ? {} : { closing: played.closing }),
    chosen: own?.text ?? null,
    reasons: (played ? played.reasons : []).concat(
      chosenBecause ? choiceText(chosenBecause, ENGLISH_READER) : [],
    ),
    alternatives: candidates
      .filter((candidate) => candidate !== fingering)
      .map((candidate) => ({
        ...fingeringResult(namedFrom, candidate),
        reasons: alternativeTexts(candidate, reading.state, ENGLISH_READER),
      })),
  };
}

function fingeringResult(namedFrom: Pitch, fingering: Fingering): FingeringResult {
  return {
    fingered: formatPitch(fingeredPitch(namedFrom, fingering)),
    side: fingering.tube.side.name,
    valves: fingering.tube.combination.valves,
    harmonic: fingering.harmonic,
    natural: formatPitch(naturalPitch(namedFrom, fingering).pitch),
    dropCents: round(fingering.dropCents, 1),
    deviationCents: round(fingering.deviationCents, 1),
    ...(fingering.band === null ? {} : { closing: fingering.band }),
    verdict: fingering.verdict,
    reasons: fingering.reasons.map((reason) => reasonText(reason, ENGLISH_READER)),
  };
}

/** The findings of one or more parts without their repairs, which take longer to find. */
export function findingResultsOf(examinations: readonly Examination[]): readonly FindingResult[] {
  return ([] as FindingResult[]).concat(
    ...examinations.map(({ passage, findings }) =>
      findings.map((finding) => findingResult(passage, finding)),
    ),
  );
}

function repairableResults(examination: Examination): RepairableResult[] {
  const { passage, findings } = examination;
  return findings.map((finding) => ({
    ...findingResult(passage, finding),
    repairs: repairsFor(examination, finding).map((repair) => repairResult(passage, repair)),
  }));
}

function findingResult({ name, notes }: Passage, finding: Finding): FindingResult {
  const { id, severity, noteIndex } = finding;
  const { message, remedy } = findingText(finding, ENGLISH_READER);
  const note = notes[noteIndex]!;
  return {
    id,
    severity,
    part: name,
    measure: note.measure,
    beat: round(note.beat, 3),
    written: formatPitch(note.written),
    message,
    remedy,
  };
}

function repairResult({ notes }: Passage, repair: Repair): RepairResult {
  return {
    kind: repair.kind,
    label: repairText(repair, ENGLISH_READER),
    changes: repair.steps.map((step) => {
      const { measure, beat, written } = notes[step.noteIndex]!;
      return {
        change: step.change,
        measure,
        beat: round(beat, 3),
        written: formatPitch(written),
        becomes: becomes(step),
        takenOut: step.change === 'join' ? step.kind : null,
      };
    }),
  };
}

function becomes(step: RepairStep): string | null {
  switch (step.change) {
    case 'note':
      return formatPitch(step.written);
    case 'sign':
      return step.sign && SIGN_TEXTS[step.sign];
    case 'fingering':
      return step.fingering?.printed ?? null;
    case 'word':
      return step.text;
    case 'join':
      return null;
  }
}

function semitones({ chromatic, octaveChange }: Transposition): number {
  return chromatic + 12 * octaveChange;
}

function round(value: number, digits: number): number {
  const scale = 10 ** digits;
  // Adding 0 turns −0 into 0.
  return Math.round(value * scale) / scale + 0;
}
