/**
 * The public door of the core: `import { examine } from 'bellhand'`. The editor's script, the command line and the pages
 * come in here too, and nowhere else.
 *
 * As programs get it (`build/guardedDoor.ts`), every function turns away an argument that is missing or of another kind
 * with a TypeError, and one that is none of a list with a RangeError. Comments say what else a function throws.
 */

export * from './acoustics/index.ts';
export { PAINTED_COLOURS, VERDICT_COLOURS } from './data/colours.ts';
export { CROOKS } from './data/crooks.ts';
export { SOURCES } from './data/sources.ts';
export type { Bar, Dynamic, EtudeNote, Meter } from './etude/bar.ts';
export { composeEtude } from './etude/compose.ts';
export * from './etude/course.ts';
export type { Difficulty } from './etude/difficulty.ts';
export * from './etude/etude.ts';
export { etudeMarks } from './etude/etudeMarks.ts';
export { type Key, parseKey, printKey } from './etude/key.ts';
export { ETUDE_KIND_NAMES } from './etude/kindNames.ts';
export type { KindOfEtude } from './etude/kinds/kind.ts';
export { ETUDE_KINDS, type EtudeKind } from './etude/kinds.ts';
export { composeLesson, etudeSheet, type LessonRequest, type LessonResult } from './etude/lesson.ts';
export { LEVELS, type Level } from './etude/levels.ts';
export { countLines, sheetLines } from './etude/pageLines.ts';
export { HIGHEST_SEED } from './etude/random.ts';
export type { Sheet } from './etude/sheet.ts';
export { transpositionOf } from './etude/transposition.ts';
export type { Draft, Workshop } from './etude/workshop.ts';
export { HornFileError, readHornFile } from './horn/file/hornFile.ts';
export {
  AVOIDED_HARMONICS,
  HIGHEST_HARMONIC,
  harmonicCents,
  harmonicDeviationCents,
} from './horn/harmonics.ts';
export {
  FROM_THE_BOTTOM,
  HARMONICS,
  type Horn,
  type LowRegisterLimit,
  openPitchCents,
  type Side,
  type Tube,
  tubesOf,
} from './horn/horn.ts';
export type { HornFileFault, WantedValue } from './horn/hornFileFault.ts';
export { naturalHorn } from './horn/horns/natural.ts';
export { HORNS } from './horn/horns.ts';
export * from './marks/annotation.ts';
export { isLowerVoice, linesBelow } from './marks/lowerVoice.ts';
export * from './marks/markedRepairs.ts';
export * from './marks/marks.ts';
export * from './marks/markup.ts';
export * from './marks/result.ts';
export * from './part/crookNames.ts';
export { closedness, type HandReading, isHandState, type WordInForce } from './part/handStates.ts';
export { isHornPart, isHornSound, type PartEvidence } from './part/hornNames.ts';
export { type Line, linesOf } from './part/lines.ts';
export {
  HAND_SIGNS,
  type HandSign,
  JOIN_KINDS,
  type Join,
  type JoinKind,
  type Passage,
  type PassageNote,
  type PassageRest,
  type PassageTempo,
  type PassageWord,
} from './part/passage.ts';
export { type PassageOptions, passageOf } from './part/passageOf.ts';
export {
  ASSUMED_TEMPO,
  BASS_CLEFS,
  type BassClef,
  DEFAULT_SETTINGS,
  HAND_SECONDS,
  NOTE_NAMES,
  type NoteNames,
  type Settings,
} from './part/settings.ts';
export type { ClefDoubt, Sounding } from './part/sounding.ts';
export {
  CONCERT_PITCH,
  fifthsOf,
  formatPitch,
  frequencyHz,
  HORN_IN_F,
  type Pitch,
  parsePitch,
  pitchAt,
  pitchCents,
  printPitch,
  printPitchClass,
  STEPS,
  type Step,
  signatureAlter,
  soundingCents,
  soundingPitch,
  spellCents,
  type Transposition,
  transpositionCents,
  writtenPitch,
} from './pitch/pitch.ts';
export * from './plan/examinedNote.ts';
export type { ChoiceReason } from './plan/plan.ts';
export { completionsFor } from './repairs/completions.ts';
export * from './repairs/repair.ts';
export { repaired } from './repairs/repaired.ts';
export { repairsFor } from './repairs/repairsFor.ts';
export { askNote, type NoteAnswer } from './rules/askNote.ts';
export * from './rules/counts.ts';
export * from './rules/examine.ts';
export { closesTo, opensTo, type Reach } from './rules/handJoin.ts';
export type { FoundBy, Rule, RuleContext, Severity } from './rules/rule.ts';
export { type Finding, RULES, type RuleId } from './rules/rules.ts';
export * from './stopping/fingering.ts';
export * from './stopping/names.ts';
export {
  CLOSING_BANDS,
  type ClosingBand,
  closingBand,
  ECHO_DROP_CENTS,
  HAND_OFFSET_CENTS,
  type Stop,
  stop,
  UNCHANGED_CENTS,
} from './stopping/stopping.ts';
export * from './words/answers.ts';
export * from './words/chart.ts';
export * from './words/commandLine.ts';
export * from './words/engraving.ts';
export * from './words/entries.ts';
export { keyInModeText, kindWords } from './words/etudes.ts';
export * from './words/findings.ts';
export {
  alternativeTexts,
  briefReasonText,
  choicesText,
  choiceText,
  closingText,
  decimalText,
  deviationText,
  fingeringText,
  hornText,
  keyText,
  reasonText,
  severityText,
  signedCents,
  stateText,
  valvesText,
  verdictText,
} from './words/fingerings.ts';
export type { HornFileWords } from './words/hornFiles.ts';
export * from './words/language.ts';
export { capital } from './words/listed.ts';
export { arrowOf, type NamedKey, naturalName, noteClassName, noteName } from './words/noteNames.ts';
export * from './words/noteNaming.ts';
export * from './words/panel.ts';
export * from './words/repairs.ts';
export * from './words/report.ts';
export * from './words/scores.ts';
export * from './words/stand.ts';
export {
  barsText,
  barText,
  completionText,
  countText,
  keptColourText,
  moreText,
  placeText,
} from './words/summary.ts';
