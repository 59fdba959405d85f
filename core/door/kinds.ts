/** What the functions of the door are given: every type that stands in their parameters, as it can be told at run time. */
import type { ClosingCurve, HandMoment, HornBore, ToneCurve } from '../acoustics/index.ts';
import type { CourseRequest } from '../etude/course.ts';
import type { Etude, EtudeRequest } from '../etude/etude.ts';
import type { Key } from '../etude/key.ts';
import type { LessonRequest } from '../etude/lesson.ts';
import type { Horn, Side, Tube } from '../horn/horn.ts';
import type { Mark, MarkSetting } from '../marks/annotation.ts';
import type { Show } from '../marks/show.ts';
import type { PartEvidence } from '../part/hornNames.ts';
import type { Passage, PassageNote } from '../part/passage.ts';
import type { Settings } from '../part/settings.ts';
import { type Pitch, STEPS, type Transposition } from '../pitch/pitch.ts';
import type { ChosenBecause, ExaminedNote } from '../plan/examinedNote.ts';
import type { Repair, RepairStep } from '../repairs/repair.ts';
import type { NoteAnswer } from '../rules/askNote.ts';
import type { Counts, VerdictCounts } from '../rules/counts.ts';
import type { Examination } from '../rules/examine.ts';
import type { Severity } from '../rules/rule.ts';
import type { Finding } from '../rules/rules.ts';
import type { Fingering, Verdict } from '../stopping/fingering.ts';
import type { NamedPitch } from '../stopping/names.ts';
import { FINGERING_REASONS, HAND_STATES, type Player } from '../stopping/player.ts';
import { CLOSING_BANDS } from '../stopping/stopping.ts';
import { LANGUAGES, type Reader, type Words } from '../words/language.ts';
import { NOTE_NAMINGS } from '../words/noteNaming.ts';

/** A kind of argument; `wanted` says it in words. */
export type Kind = { readonly wanted: string } & (
  | { readonly is: 'number' | 'text' | 'function' }
  | { readonly is: 'one of'; readonly allowed: readonly unknown[] }
  /** Of an object, the fields that it cannot do without. */
  | { readonly is: 'object'; readonly fields: readonly string[] }
);

/** By the type as the declarations have it; `build/guardedDoor.ts` asks for what is missing here. */
export const KINDS: ReadonlyMap<string, Kind> = new Map<string, Kind>([
  ['number', { is: 'number', wanted: 'a number' }],
  ['string', { is: 'text', wanted: 'a text' }],
  ['=>', { is: 'function', wanted: 'a function' }],

  ['ClosingBand', oneOf(CLOSING_BANDS)],
  ['FingeringReason', oneOf(FINGERING_REASONS)],
  ['HandState', oneOf(HAND_STATES)],
  ['Language', oneOf(LANGUAGES)],
  ['NoteNaming', oneOf(NOTE_NAMINGS)],
  ['Severity', oneOf<Severity>(['impossible', 'risky', 'advice'])],
  ['Step', oneOf(STEPS)],
  ['Verdict', oneOf<Verdict>(['sure', 'risky', 'impossible'])],
  ["'sharp' | 'flat'", oneOf(['sharp', 'flat'])],

  ['ChosenBecause', object<ChosenBecause>('the `chosenBecause` of an examined note', 'kind', 'insteadOf')],
  ['ClosingCurve', object<ClosingCurve>('a curve, as closingCurve makes one', 'closings', 'harmonics')],
  ['Counts', object<Counts>('counts, as countNotes makes them', 'stopped', 'open')],
  ['CourseRequest', object<CourseRequest>('what is asked for', 'weeks', 'low', 'high', 'seed', 'player')],
  ['Crook', object<{ id: string; name: string; semitones: number }>('one of CROOKS', 'name', 'semitones')],
  ['Etude', object<Etude>('an étude, as composeEtude makes one', 'kind', 'key', 'level', 'bars', 'player')],
  [
    'EtudeRequest',
    object<EtudeRequest>(
      'what is asked for',
      'kind',
      'key',
      'level',
      'bars',
      'tempo',
      'low',
      'high',
      'seed',
      'player',
    ),
  ],
  ['ExaminedNote', object<ExaminedNote>('a note of an examination', 'note', 'reading', 'candidates')],
  [
    'Examination',
    object<Examination>('an examination, as examine makes one', 'passage', 'settings', 'notes', 'findings'),
  ],
  ['Finding', object<Finding>('a finding of an examination', 'id', 'cause')],
  [
    'Fingering',
    object<Fingering>('a fingering, as fingerings makes them', 'tube', 'printed', 'harmonic', 'reasons'),
  ],
  ['HandMoment', object<HandMoment>('{ seconds, closing }', 'seconds', 'closing')],
  ['Horn', object<Horn>('a horn: one of HORNS, or what readHornFile makes', 'id', 'label', 'sides')],
  ['HornBore', object<HornBore>('a bore such as USUAL_BORE', 'mouthpiece', 'leadpipe', 'bell', 'hand')],
  ['Key', object<Key>('a key, as parseKey reads it', 'tonic', 'mode')],
  [
    'LessonRequest',
    object<LessonRequest>('what is asked for', 'level', 'key', 'low', 'high', 'seed', 'player'),
  ],
  ['Mark', object<Mark>('a mark, as marksFor makes them', 'noteIndex', 'lines')],
  ['MarkSetting', object<MarkSetting>('how a mark is set, such as UNSET', 'row', 'widens')],
  ['NamedPitch', object<NamedPitch>('a pitch by name, as naturalPitch makes one', 'pitch', 'deviationCents')],
  [
    'NoteAnswer',
    object<NoteAnswer>('an answer, as askNote gives one', 'stopped', 'findings', 'closesTo', 'opensTo'),
  ],
  [
    'PartEvidence',
    object<PartEvidence>('what a score says of a part', 'names', 'instrumentNames', 'sounds', 'programs'),
  ],
  ['Passage', object<Passage>('a passage, as passageOf makes one', 'notes', 'words', 'tempos', 'rests')],
  ['PassageNote', object<PassageNote>('a note of a passage', 'measure', 'measureIndex')],
  ['Pitch', object<Pitch>('a pitch, as parsePitch reads one', 'step', 'alter', 'octave')],
  [
    'Player',
    object<Player>('a player such as DEFAULT_SETTINGS', 'horn', 'toleranceCents', 'handOffsetCents'),
  ],
  ['Reader', object<Reader>('a reader, as readerOf makes one', 'language', 'noteNaming', 'words')],
  ['Repair', object<Repair>('a repair, as repairsFor makes them', 'kind', 'steps')],
  ['RepairStep', object<RepairStep>('a step of a repair', 'change', 'noteIndex')],
  [
    'Settings',
    object<Settings>(
      'settings such as { ...DEFAULT_SETTINGS, toleranceCents: 30 }',
      'horn',
      'names',
      'bassClef',
    ),
  ],
  [
    'Show',
    object<Show>('what is shown, such as SHOW_ALL', 'fingered', 'valves', 'natural', 'repeat', 'quick'),
  ],
  ['Side', object<Side>('a side of a horn, such as HORNS[0].sides[0]', 'fundamentalCents', 'valves')],
  ['ToneCurve', object<ToneCurve>('tones, as toneCurve makes them', 'tones')],
  ['Tone', object<ToneCurve['tones'][number]>('one of the tones of toneCurve', 'frequencyHz', 'partials')],
  [
    'Transposition',
    object<Transposition>('a transposition such as HORN_IN_F', 'diatonic', 'chromatic', 'octaveChange'),
  ],
  ['Tube', object<Tube>('a tube, as tubesOf makes them', 'side', 'combination', 'fundamentalCents')],
  ['VerdictCounts', object<VerdictCounts>('counts by verdict', 'sure', 'risky', 'impossible')],
  ['Words', object<Words>('the words of a language', 'fingerings', 'usualNaming')],
  ['Float32Array', object<Float32Array>('samples, a Float32Array', 'length', 'buffer')],
  [
    '{ fundamentalCents }',
    object<Tube>('a tube, as tubesOf makes them, or { fundamentalCents }', 'fundamentalCents'),
  ],
  ['{ tonic, mode }', object<Key>('a key, as parseKey reads it', 'tonic', 'mode')],
  ['{ bars }', object<Etude>('an étude, as composeEtude makes one', 'bars')],
  ['{ kind }', object<Repair>('a completion, as completionsFor makes them', 'kind')],
  ['options', object<object>('an object with options')],
]);

function oneOf<T>(allowed: readonly T[]): Kind {
  return { is: 'one of', allowed, wanted: `one of ${allowed.join(', ')}` };
}

function object<T extends object>(wanted: string, ...fields: readonly (keyof T & string)[]): Kind {
  return { is: 'object', wanted, fields };
}
