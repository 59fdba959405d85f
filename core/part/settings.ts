/** What a user can set, and what holds until they do. */
import { checkNumber, checkObject, checkOneOf } from '../guards/allowed.ts';
import { DOUBLE } from '../horn/horns/double.ts';
import { checkPlayer, DEFAULT_TOLERANCE_CENTS, type Player } from '../stopping/fingering.ts';

/** How notes are named over the part: in the part's own written pitch, or as a player of the F horn reads them. */
export const NOTE_NAMES = ['as-written', 'f-horn'] as const;
/** One of NOTE_NAMES. */
export type NoteNames = (typeof NOTE_NAMES)[number];

/**
 * How notes in the bass clef are meant: `new` as they stand, `old` an octave low (the habit until about 1900),
 * `auto` to decide from the notes and say so.
 * @source grove1879, p. 750
 */
export const BASS_CLEFS = ['auto', 'old', 'new'] as const;
/** One of BASS_CLEFS. */
export type BassClef = (typeof BASS_CLEFS)[number];

/** What a user can set. Every field has a default in DEFAULT_SETTINGS. */
export interface Settings extends Player {
  /** Less time than this, in seconds, for the hand to go in or out is too quick; 0–10. */
  readonly handSeconds: number;
  /** For the fingered and the natural note; the written note always stays as written. */
  readonly names: NoteNames;
  readonly bassClef: BassClef;
  /** The speed of a part that states none, in quarter notes a minute; 1–1000. */
  readonly assumedQuartersPerMinute: number;
}

/** The time for the hand that can be set, in seconds. */
export const HAND_SECONDS: readonly [lowest: number, highest: number] = [0, 10];

/** The speed that can be assumed of a part, in quarter notes a minute. */
export const ASSUMED_TEMPO: readonly [lowest: number, highest: number] = [1, 1000];

/**
 * Lets settings pass whose every field is within what it says.
 * @throws {TypeError} or {RangeError} naming the first field that is wrong, and what is allowed
 */
export function checkSettings(settings: Settings): void {
  checkObject('settings', settings, 'settings such as { ...DEFAULT_SETTINGS, toleranceCents: 30 }');
  checkPlayer(settings);
  checkNumber('handSeconds', settings.handSeconds, ...HAND_SECONDS);
  checkOneOf('names', settings.names, NOTE_NAMES);
  checkOneOf('bassClef', settings.bassClef, BASS_CLEFS);
  checkNumber('assumedQuartersPerMinute', settings.assumedQuartersPerMinute, ...ASSUMED_TEMPO);
}

/**
 * A quarter of a second for the hand is from memory; the assumed tempo is the one of midi10; the horn and the tolerance
 * are as their own constants say.
 * @source midi10
 */
export const DEFAULT_SETTINGS: Settings = {
  horn: DOUBLE,
  toleranceCents: DEFAULT_TOLERANCE_CENTS,
  handOffsetCents: 0,
  handSeconds: 0.25,
  names: 'as-written',
  bassClef: 'auto',
  assumedQuartersPerMinute: 120,
};
