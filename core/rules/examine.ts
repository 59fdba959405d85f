/** The main job: reads a passage as its player would, chooses fingerings and finds what cannot be played. */

import { checkPassage } from '../part/checkPassage.ts';
import { movesHand } from '../part/handMotion.ts';
import { closedness, type HandReading, isHandState, readHandStates } from '../part/handStates.ts';
import { type Line, linesOf } from '../part/lines.ts';
import type { Passage, PassageNote } from '../part/passage.ts';
import { checkSettings, DEFAULT_SETTINGS, type Settings } from '../part/settings.ts';
import { type Sounding, soundingOf } from '../part/sounding.ts';
import { joinBetween, type Step, stepsOf } from '../part/steps.ts';
import { onsetSecondsOf } from '../part/tempo.ts';
import {
  HORN_IN_F,
  movePitch,
  type Pitch,
  plainSpelling,
  soundingPitch,
  writtenPitch,
} from '../pitch/pitch.ts';
import type { ExaminedNote, OwnFingering } from '../plan/examinedNote.ts';
import { fingeringAt, fingeringsInWords, playedOn } from '../plan/ownFingerings.ts';
import { changesBetween, hangsOnBefore, hurryIn, type PlannedNote } from '../plan/pathCost.ts';
import { planLine } from '../plan/plan.ts';
import { PlannedNotes } from '../plan/plannedNotes.ts';
import { type Fingering, fingerings, nearestFingering, type Verdict } from '../stopping/fingering.ts';
import { playerAt, unmarkedHandState } from '../stopping/naturalHorn.ts';
import type { RuleContext } from './rule.ts';
import { type Finding, RULES } from './rules.ts';

/** A whole passage, examined. */
export interface Examination {
  readonly passage: Passage;
  readonly settings: Settings;
  /** By note index. */
  readonly notes: readonly ExaminedNote[];
  /** In the order of the music. */
  readonly findings: readonly Finding[];
}

/**
 * Examines a passage: hand states, fingerings, findings, verdicts. Open notes are examined too, since their neighbours
 * need them.
 * @param settings who plays, and how the part is read; a double horn by default
 * @returns every note in the order of the passage, and what was found, in the order of the music
 * @throws {TypeError} or {RangeError} when a field of the passage or the settings is not what it may be: the message
 * names it. Music that cannot be played is no error but a finding
 * @example
 * const { notes, findings } = examine(passageOf('C5+ E5 | G4o~ A4+'));
 * notes[0].fingering.printed // => '2'
 * findings[0].id // => 'closes-upward'
 */
export function examine(passage: Passage, settings: Settings = DEFAULT_SETTINGS): Examination {
  const pieces = examineInPieces(passage, settings);
  for (;;) {
    const { done, value } = pieces.next();
    if (done) return value;
  }
}

/**
 * The same in pieces of a few milliseconds, for a door whose user goes on working in between: nothing may change meanwhile.
 * @returns what hands the examination over when it is done
 */
export function* examineInPieces(passage: Passage, settings: Settings): Pieces<Examination> {
  checkPassage(passage);
  checkSettings(settings);
  const lines = linesOf(passage);
  const sounding = soundingOf(passage, lines, settings);
  const onsetSeconds = onsetSecondsOf(passage, settings.assumedQuartersPerMinute);
  const isLong = passage.notes.length > NOTES_IN_A_PIECE;
  if (isLong) yield;
  const notes = yield* readNotes(passage, sounding, settings);
  for (const line of lines) yield* planNotes(line, onsetSeconds, notes);
  const handStepsOf = (line: Line) =>
    stepsOf(line, passage.notes, onsetSeconds, (from, to) => movesHandAt(from, to, notes));
  const context: RuleContext = {
    passage,
    notes,
    settings,
    lines,
    sounding,
    handNotes: notes.filter(({ reading }) => reading.word !== null || isHandState(reading.state)),
    handSteps: ([] as Step[]).concat(...lines.map(handStepsOf)),
  };
  const findings: Finding[] = [];
  for (const rule of RULES) {
    if (isLong) yield;
    for (const found of rule.check(context)) findings.push(found);
  }
  findings.sort((a, b) => a.noteIndex - b.noteIndex);
  setVerdicts(notes, findings);
  return { passage, settings, notes, findings };
}

/** Work that pauses now and then; its last step has the result. */
export type Pieces<T> = Generator<void, T, void>;

/** So many notes are read at a time: one that was never asked for before takes up to a millisecond. Shorter passages are one piece. */
const NOTES_IN_A_PIECE = 24;

/** What a natural horn's hand does of itself, note by note, is its way of playing and no change that the part asks for. */
function movesHandAt(from: number, to: number, notes: readonly ExaminedNote[]): boolean {
  const a = notes[from]!.reading;
  const b = notes[to]!.reading;
  if (a.state === b.state) return false;
  const closer = closedness(a.state) > closedness(b.state) ? a : b;
  return movesHand(a.state, b.state) && closer.from !== 'nothing';
}

/** What every note asks for and how it can be played, each on its own: the standard fingering is chosen for now. */
function* readNotes(passage: Passage, sounding: Sounding, settings: Settings): Pieces<ExaminedNote[]> {
  const readings = readHandStates(passage);
  const notes = new Array<ExaminedNote>(passage.notes.length);
  for (let i = 0; i < notes.length; i++) {
    if (i % NOTES_IN_A_PIECE === NOTES_IN_A_PIECE - 1) yield;
    notes[i] = readNote(passage.notes[i]!, readings[i]!, sounding.cents[i]!, sounding, settings);
  }
  fingeringsInWords(passage, notes).forEach((own, index) => {
    if (!notes[index]!.own) notes[index] = withOwn(notes[index]!, own);
  });
  return notes;
}

function readNote(
  note: PassageNote,
  asPrinted: HandReading,
  soundingCents: number | null,
  sounding: Sounding,
  settings: Settings,
): ExaminedNote {
  const player = playerAt(settings, note.transposition);
  const reading = player.horn.natural ? naturalReading(asPrinted, soundingCents, player) : asPrinted;
  const { state } = reading;
  const candidates = soundingCents === null ? NO_FINGERINGS : fingerings(soundingCents, state, player);
  const fingering = candidates.length > 0 ? candidates[0]! : null;
  const isMissing = soundingCents !== null && !fingering;
  const read: ExaminedNote = {
    note,
    reading,
    namedFrom: settings.names === 'f-horn' ? onFHorn(note, sounding) : note.written,
    player,
    soundingCents,
    own: null,
    fingering,
    candidates,
    nearest: isMissing ? nearestFingering(soundingCents, state, player) : null,
    chosenBecause: null,
    verdict: fingering ? fingering.verdict : isMissing && isHandState(state) ? 'impossible' : 'sure',
  };
  return note.fingering === null ? read : withOwn(read, fingeringAt(read));
}

/** A note on the fingering that the part prints, where that gives it. */
function withOwn(examined: ExaminedNote, own: OwnFingering | null): ExaminedNote {
  return own?.fingering
    ? { ...examined, own, fingering: own.fingering, verdict: own.fingering.verdict }
    : { ...examined, own };
}

/** What a player of the F horn reads for this sound; old bass clef notes in the octave in which they sound. */
function onFHorn({ written, transposition, clef }: PassageNote, { bassClef }: Sounding): Pitch {
  if (!transposition) return written;
  const sounding = soundingPitch(written, transposition);
  const isOld = clef === 'bass' && bassClef === 'old';
  return plainSpelling(writtenPitch(isOld ? movePitch(sounding, 7, 12) : sounding, HORN_IN_F));
}

const NO_FINGERINGS: readonly Fingering[] = [];

/** Natural horn parts mark no hand: a note between the harmonics is the hand's by itself. */
function naturalReading(reading: HandReading, soundingCents: number | null, player: Settings): HandReading {
  if (reading.from !== 'nothing' || soundingCents === null) return reading;
  const state = unmarkedHandState(soundingCents, player);
  return state === 'open' ? reading : { ...reading, state };
}

/** Lets a player's line choose its fingerings together; puts what it chooses in place of the standard ones. */
function* planNotes(line: Line, onsetSeconds: readonly number[], notes: ExaminedNote[]): Pieces<void> {
  const known = new PlannedNotes();
  const planned = line.map((index, at): PlannedNote => {
    const examined = notes[index]!;
    const options = playedOn(examined);
    const { state } = examined.reading;
    if (at === 0) return known.of(options, state, null, 0);
    const before = line[at - 1]!;
    const joined = joinBetween(notes[before]!.note, index);
    return known.of(options, state, joined, hurryIn(onsetSeconds[index]! - onsetSeconds[before]!));
  });
  for (let at = 1; at < planned.length; at++) {
    if (at % NOTES_IN_A_PIECE === 0) yield;
    // What planning takes longest for where notes follow one another for the first time; it is kept.
    if (hangsOnBefore(planned[at]!)) changesBetween(planned[at - 1]!, planned[at]!);
  }
  if (planned.length > NOTES_IN_A_PIECE) yield;
  const choices = planLine(planned);
  choices.forEach(({ option, because }, at) => {
    if (!because) return;
    const examined = notes[line[at]!]!;
    const fingering = examined.candidates[option]!;
    const neighbourIndex = line[because.neighbour]!;
    notes[line[at]!] = {
      ...examined,
      fingering,
      verdict: fingering.verdict,
      chosenBecause: {
        kind: because.kind,
        insteadOf: examined.candidates[0]!,
        neighbourIndex,
        neighbour: notes[neighbourIndex]!.note.written,
      },
    };
  });
}

/** A note is as doubtful as the worst that was found at it; advice about the page does not count. */
function setVerdicts(notes: ExaminedNote[], findings: readonly Finding[]): void {
  const worst = new Map<number, Verdict>();
  for (const { noteIndex, severity } of findings) {
    if (severity === 'advice' || worst.get(noteIndex) === 'impossible') continue;
    worst.set(noteIndex, severity);
  }
  worst.forEach((verdict, i) => {
    const examined = notes[i]!;
    if (examined.verdict !== 'impossible' && examined.verdict !== verdict)
      notes[i] = { ...examined, verdict };
  });
}
