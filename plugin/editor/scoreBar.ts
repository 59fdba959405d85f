/**
 * What a horn part has in one measure, as it was read: plain data, asked of the host once. The host's own elements come
 * along where they are to be changed at once; they must not be kept from one moment to the next, since once what they stand
 * for is deleted, touching them ends the host.
 */
import type { HandSign } from '../../core/index.ts';
import type { HostInterval, HostMeasure, HostNote, HostText } from './hostApi.ts';

/** What a note looks like when nobody coloured it. */
export const BLACK = '#000000';

/** A note. Numbers as `HostNote` explains them. */
export interface ScoreNote {
  readonly pitch: number;
  readonly tpc: number;
  readonly tpc1: number;
  readonly tpc2: number;
  readonly line: number;
  /** Whether a tie leads on from it, and to it; false where the host does not tell, before 3.3. */
  readonly isTiedOn: boolean;
  readonly isTiedBack: boolean;
  /** Whether a glissando begins here; `null` where the host does not tell, before 4.6. */
  readonly startsGlissando: boolean | null;
  /** From written to sounding pitch with its octave, from 4.6. */
  readonly interval: HostInterval | null;
  /** The fingering that its user wrote at it, as it prints. */
  readonly fingering: string | null;
  /** As `#RRGGBB`; black in what is kept. */
  readonly colour: string;
  /** `null` in what is kept. */
  readonly element: HostNote | null;
}

/** A chord, or a single note, or one of a chord's grace chords. */
export interface ScoreChord {
  readonly measureIndex: number;
  /** Ticks from the start of the score; a grace chord has its main chord's. */
  readonly tick: number;
  readonly track: number;
  /** Place among the graces of its main chord as the host counts them, from 0; `null` for a chord of its own. */
  readonly graceIndex: number | null;
  /** As notated, in ticks. */
  readonly duration: number;
  /** Of the size of graces and cues. */
  readonly isSmall: boolean;
  /** The hand's sign over it; `undefined` where the host does not tell, before 4.6. */
  readonly sign: HandSign | null | undefined;
  /** Whether that sign stands below the staff, as far as the host tells. */
  readonly isSignBelow: boolean;
  /** Those that are the player's, from the top note down. */
  readonly notes: readonly ScoreNote[];
  /** Hidden ones and cues, which are nobody's to play here. */
  readonly others: readonly ScoreNote[];
}

export interface ScoreRest {
  readonly measureIndex: number;
  readonly tick: number;
  readonly track: number;
}

/** A text on the staff: words, a tempo, a mark of ours. */
export interface ScoreText {
  readonly measureIndex: number;
  readonly tick: number;
  readonly track: number;
  /** The host's number of its kind. */
  readonly type: number;
  /** As it prints. */
  readonly text: string;
  /** Of a tempo: quarters a second. */
  readonly tempo: number | null;
  readonly isOurs: boolean;
  /** `null` in what is kept. */
  readonly element: HostText | null;
}

export interface ScoreMeasure {
  readonly tick: number;
  /** Past the last tick of the measure. */
  readonly endTick: number;
  /** Of the time that is in force. */
  readonly numerator: number;
  readonly denominator: number;
  /** Not counted where measures are numbered. */
  readonly isIrregular: boolean;
  /** Added to the number of this measure and all later ones. */
  readonly numberOffset: number;
  /** `null` in what is kept. */
  readonly element: HostMeasure | null;
}

/** One part in one measure. */
export interface BarWalk {
  /**
   * Voice by voice, in a voice in the order of the music with the graces around their chord: graces before in order, the
   * chord, graces after from the last to the first, as the host exports them.
   */
  readonly chords: readonly ScoreChord[];
  readonly rests: readonly ScoreRest[];
  readonly texts: readonly ScoreText[];
}

/** True where a measure is as it was. */
export function isSameMeasure(one: ScoreMeasure, other: ScoreMeasure): boolean {
  return (
    one.tick === other.tick &&
    one.endTick === other.endTick &&
    one.numerator === other.numerator &&
    one.denominator === other.denominator &&
    one.isIrregular === other.isIrregular &&
    one.numberOffset === other.numberOffset
  );
}

/** True where the user has written nothing in a bar between two looks; our marks and all colours do not count. */
export function isSameBar(one: BarWalk, other: BarWalk): boolean {
  return (
    areSame(one.chords, other.chords, isSameChord) &&
    areSame(one.rests, other.rests, isSamePlace) &&
    hasSameWords(one.texts, other.texts)
  );
}

/** The same of the texts alone. */
export function hasSameWords(ones: readonly ScoreText[], others: readonly ScoreText[]): boolean {
  return areSame(ones.filter(isUsers), others.filter(isUsers), isSameText);
}

function areSame<T>(
  ones: readonly T[],
  others: readonly T[],
  isSame: (one: T, other: T) => boolean,
): boolean {
  if (ones.length !== others.length) return false;
  for (let i = 0; i < ones.length; i++) if (!isSame(ones[i]!, others[i]!)) return false;
  return true;
}

function isSamePlace(one: ScoreRest, other: ScoreRest): boolean {
  return one.tick === other.tick && one.track === other.track && one.measureIndex === other.measureIndex;
}

function isSameChord(one: ScoreChord, other: ScoreChord): boolean {
  return (
    isSamePlace(one, other) &&
    one.graceIndex === other.graceIndex &&
    one.duration === other.duration &&
    one.isSmall === other.isSmall &&
    one.sign === other.sign &&
    one.isSignBelow === other.isSignBelow &&
    areSame(one.notes, other.notes, isSameNote) &&
    areSame(one.others, other.others, isSameNote)
  );
}

function isSameNote(one: ScoreNote, other: ScoreNote): boolean {
  return (
    one.pitch === other.pitch &&
    one.tpc === other.tpc &&
    one.tpc1 === other.tpc1 &&
    one.tpc2 === other.tpc2 &&
    one.line === other.line &&
    one.isTiedOn === other.isTiedOn &&
    one.isTiedBack === other.isTiedBack &&
    one.startsGlissando === other.startsGlissando &&
    one.fingering === other.fingering &&
    isSameInterval(one.interval, other.interval)
  );
}

export function isSameInterval(one: HostInterval | null, other: HostInterval | null): boolean {
  if (one === other) return true;
  return (
    one !== null && other !== null && one.chromatic === other.chromatic && one.diatonic === other.diatonic
  );
}

function isUsers({ isOurs }: ScoreText): boolean {
  return !isOurs;
}

function isSameText(one: ScoreText, other: ScoreText): boolean {
  return (
    isSamePlace(one, other) && one.type === other.type && one.text === other.text && one.tempo === other.tempo
  );
}
