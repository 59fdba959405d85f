/** How hard an étude is, as numbers a teacher can check, and as one. */
import { pitchCents, signatureAlter } from '../pitch/pitch.ts';
import type { Bar, EtudeNote } from './bar.ts';
import type { Key } from './key.ts';

/** What makes an étude hard. */
export interface Difficulty {
  /** Changes of the hand a minute. */
  readonly changesPerMinute: number;
  /** From the lowest to the highest written note, in semitones. */
  readonly rangeSemitones: number;
  /** Leaps wider than a major third, in a hundred steps from note to note; notes that repeat do not count. */
  readonly leapsInHundred: number;
  /** Sharps or flats of the key, and accidentals for each bar, together. */
  readonly signs: number;
  /** Risky notes, in a hundred. */
  readonly riskyInHundred: number;
  /** Notes a minute. */
  readonly notesPerMinute: number;
  /** How long the longest tone lasts without a breath, in seconds; a pause is not counted. */
  readonly longestToneSeconds: number;
  /** All of it in one number: about 10 for a beginner's first sheet, 60 for what an experienced player works at. */
  readonly score: number;
}

/**
 * What each counts in the score. A choice: a change of the hand a second weighs as much as two and a half octaves, and
 * as a tone held for eleven seconds and a half.
 */
const WEIGHTS = { changes: 0.5, range: 1, leaps: 0.15, signs: 1.5, risky: 1, notes: 0.06, held: 4 } as const;

/** A tone of so many seconds asks nothing of the breath. */
const EASY_TONE_SECONDS = 4;

/**
 * Measures some bars.
 * @param tempo beats a minute
 * @param isRisky by sounding note, in order
 */
export function difficultyOf(
  bars: readonly Bar[],
  key: Key,
  tempo: number,
  isRisky: readonly boolean[],
): Difficulty {
  const events = ([] as EtudeNote[]).concat(...bars.map(({ notes }) => notes));
  const sounding = events.filter(({ written }) => written !== null);
  // What is tied is one tone.
  const isTone = (i: number) => !sounding[i - 1]?.ties;
  const notes = sounding.filter((_, i) => isTone(i));
  const quarters = events.reduce((sum, each) => sum + each.quarters, 0);
  const minutes = quarters / (tempo * (bars[0]?.meter.beatQuarters ?? 1));
  let changes = 0;
  let moves = 0;
  let leaps = 0;
  let accidentals = 0;
  notes.forEach((each, i) => {
    const { step, alter } = each.written!;
    if (alter !== signatureAlter(step, key.fifths)) accidentals += 1;
    const before = notes[i - 1];
    if (!before) return;
    if (before.hand !== each.hand) changes += 1;
    const semitones = Math.abs(pitchCents(each.written!) - pitchCents(before.written!)) / 100;
    if (semitones > 0) moves += 1;
    if (semitones > 4) leaps += 1;
  });
  let longest = 0;
  let tone = 0;
  sounding.forEach(({ quarters: length }, i) => {
    tone = isTone(i) ? length : tone + length;
    longest = Math.max(longest, tone);
  });
  const longestToneSeconds = quarters > 0 ? (60 * minutes * longest) / quarters : 0;
  const cents = notes.map(({ written }) => pitchCents(written!));
  const parts = {
    changesPerMinute: changes / minutes,
    rangeSemitones: cents.length > 0 ? (Math.max(...cents) - Math.min(...cents)) / 100 : 0,
    leapsInHundred: moves > 0 ? (100 * leaps) / moves : 0,
    signs: Math.abs(key.fifths) + accidentals / Math.max(1, bars.length),
    riskyInHundred:
      notes.length > 0 ? (100 * isRisky.filter((risky, i) => risky && isTone(i)).length) / notes.length : 0,
    notesPerMinute: notes.length / minutes,
    longestToneSeconds,
  };
  return {
    ...parts,
    score:
      WEIGHTS.changes * parts.changesPerMinute +
      WEIGHTS.range * parts.rangeSemitones +
      WEIGHTS.leaps * parts.leapsInHundred +
      WEIGHTS.signs * parts.signs +
      WEIGHTS.risky * parts.riskyInHundred +
      WEIGHTS.notes * parts.notesPerMinute +
      WEIGHTS.held * Math.max(0, longestToneSeconds - EASY_TONE_SECONDS),
  };
}
