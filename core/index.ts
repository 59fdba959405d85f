/**
 * The public door of the core: `import { examine } from 'bellhand'`. The editor's script, the command line and the pages
 * come in here too, and nowhere else.
 */

export * from './acoustics/index.ts';
export { VERDICT_COLOURS } from './data/colours.ts';
export { CROOKS } from './data/crooks.ts';
export { SOURCES } from './data/sources.ts';
export {
  type EtudeNote,
  FOUR_FOUR,
  type Meter,
  SIX_EIGHT,
  THREE_FOUR,
} from './etude/bar.ts';
export { composeEtude } from './etude/compose.ts';
export * from './etude/etude.ts';
export { etudeMarks } from './etude/etudeMarks.ts';
export { type Key, parseKey, printKey } from './etude/key.ts';
export { ETUDE_KINDS, type EtudeKind } from './etude/kinds.ts';
export * from './etude/level.ts';
export { HIGHEST_SEED } from './etude/random.ts';
export { transpositionOf } from './etude/transposition.ts';
export type { Draft, KindOfEtude, Workshop } from './etude/workshop.ts';
export * from './horn/harmonics.ts';
export * from './horn/horn.ts';
export * from './horn/hornFile.ts';
export { naturalHorn } from './horn/horns/natural.ts';
export { HORNS } from './horn/horns.ts';
export * from './marks/annotation.ts';
export * from './marks/completions.ts';
export * from './marks/marks.ts';
export * from './marks/result.ts';
export { checkPassage } from './part/checkPassage.ts';
export * from './part/crookNames.ts';
export * from './part/handMotion.ts';
export * from './part/handStates.ts';
export * from './part/handWords.ts';
export * from './part/hornNames.ts';
export * from './part/lines.ts';
export * from './part/passage.ts';
export { type PassageOptions, passageOf } from './part/passageOf.ts';
export * from './part/settings.ts';
export * from './part/sounding.ts';
export * from './part/tempo.ts';
export * from './pitch/pitch.ts';
export * from './plan/examinedNote.ts';
export type { ChoiceReason } from './plan/plan.ts';
export * from './rules/counts.ts';
export * from './rules/examine.ts';
export { closesTo, opensTo, type Reach } from './rules/handJoin.ts';
export * from './rules/rule.ts';
export { type Finding, RULES, type RuleId } from './rules/rules.ts';
export * from './stopping/fingering.ts';
export * from './stopping/names.ts';
export * from './stopping/naturalHorn.ts';
export * from './stopping/stopping.ts';
export * from './words/findings.ts';
export * from './words/fingerings.ts';
export * from './words/language.ts';
export * from './words/noteNames.ts';
export * from './words/report.ts';
export * from './words/summary.ts';
