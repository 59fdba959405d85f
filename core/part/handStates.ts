/**
 * From signs and words to what the hand does at each note. A sign rules its note (the doors repeat it on every note of
 * a chord), for as long as that is tied on; a word rules from where it stands until another cancels it, for every player of its staff, for the voice
 * it is tied to, or for the one player it names. Where an engraver set the word and the signs too, and never cancelled
 * the word, it lapses with the last sign.
 */
import type { WordEffect, WordLanguage } from '../data/words.ts';
import type { HandState } from '../stopping/fingering.ts';
import { type HandText, readHandText } from './handWords.ts';
import { fromTheTop, type Line, linesOf } from './lines.ts';
import type { HandSign, Passage, PassageNote, PassageWord } from './passage.ts';

/** A word that holds at a note. */
export interface WordInForce {
  /** Position in `Passage.words`, from 0. */
  readonly wordIndex: number;
  /** As printed. */
  readonly text: string;
  readonly state: HandState;
  /** `null` for a word that several languages share. */
  readonly language: WordLanguage | null;
}

/** What the hand does at one note, and what in the part says so. */
export interface HandReading {
  readonly state: HandState;
  readonly from: 'sign' | 'word' | 'nothing';
  /** The word for the hand (or, without one, for the mute) that holds here, even where a sign rules over it. */
  readonly word: WordInForce | null;
  /** The mute that is in the bell by the words, whatever the hand does. */
  readonly mute: 'straight' | 'stopping' | null;
  /** A word that would still hold here by the letter, but whose signs have ended. */
  readonly lapsed: WordInForce | null;
}

/** The hand state of every note of a passage, by note index. */
export function readHandStates(passage: Passage): readonly HandReading[] {
  const told = passage.words
    .map((word, wordIndex): ToldWord => ({ word, wordIndex, text: readHandText(word.text) }))
    .filter(({ text }) => text.effects.length > 0 || text.sign !== null);
  if (told.length === 0) {
    const readings = passage.notes.map(({ sign }) => (sign ? SIGN_ALONE[sign] : NOTHING));
    holdOverTies(passage.notes, readings, new Set());
    return readings;
  }
  // Stable, so that words printed at one place keep their order.
  told.sort((a, b) => a.word.onsetQuarters - b.word.onsetQuarters || a.wordIndex - b.wordIndex);
  return readWithWords(passage, told);
}

/** True for the states that are the hand's work, which are the ones Bellhand writes about. */
export function isHandState(state: HandState): boolean {
  return state !== 'open' && state !== 'straight-mute';
}

/** How far the hand is in, for telling which way it moves: 0 open (with or without a mute) to 3 stopped. */
export function closedness(state: HandState): number {
  return CLOSEDNESS[state];
}

const CLOSEDNESS: { readonly [state in HandState]: number } = {
  open: 0,
  'straight-mute': 0,
  'stopping-mute': 0,
  'half-stopped': 1,
  echo: 2,
  stopped: 3,
};

const NOTHING: HandReading = { state: 'open', from: 'nothing', word: null, mute: null, lapsed: null };
const SIGN_ALONE: { readonly [sign in HandSign]: HandReading } = {
  stopped: { ...NOTHING, state: 'stopped', from: 'sign' },
  open: { ...NOTHING, from: 'sign' },
  'half-stopped': { ...NOTHING, state: 'half-stopped', from: 'sign' },
};

interface ToldWord {
  readonly word: PassageWord;
  readonly wordIndex: number;
  readonly text: HandText;
}

/** What holds for one player just now. */
interface Bell {
  hand: WordInForce | null;
  mute: WordInForce | null;
  typedSign: { sign: HandSign; onsetQuarters: number } | null;
}

/** Onsets closer than this are the same place; doors may arrive at them by different sums. */
const SAME_PLACE_QUARTERS = 1e-4;

function readWithWords(passage: Passage, told: readonly ToldWord[]): HandReading[] {
  const { notes } = passage;
  const lines = linesOf(passage);
  const bells: Bell[] = new Array(notes.length);
  const players = lines.map((line) => {
    const bell: Bell = { hand: null, mute: null, typedSign: null };
    for (const index of line) bells[index] = bell;
    return { first: notes[line[0]!]!, bell };
  });
  let next = 0;
  const spoken = new Set<Bell>();
  const toldAnew = new Set<number>();
  const readings = notes.map((note, i) => {
    for (; next < told.length; next++) {
      const { word } = told[next]!;
      if (word.onsetQuarters > note.onsetQuarters + SAME_PLACE_QUARTERS) break;
      for (const { bell } of spokenTo(told[next]!, players, notes, i)) {
        apply(told[next]!, bell);
        spoken.add(bell);
      }
    }
    if (spoken.delete(bells[i]!)) toldAnew.add(i);
    return readingOf(note, bells[i]!);
  });
  holdOverTies(notes, readings, toldAnew);
  for (const line of lines) lapseWithSigns(line, readings);
  return readings;
}

/**
 * A sign is for the whole tone: what is tied to its note has none of its own, unless a word says so.
 * @param toldAnew the notes before which a word was told to their player
 */
function holdOverTies(
  notes: readonly PassageNote[],
  readings: HandReading[],
  toldAnew: ReadonlySet<number>,
): void {
  notes.forEach(({ joins }, i) => {
    if (readings[i]!.from !== 'sign') return;
    for (const { kind, to } of joins) {
      const tied = readings[to];
      if (kind === 'tie' && tied && tied.from !== 'sign' && !toldAnew.has(to)) readings[to] = readings[i]!;
    }
  });
}

type Player = { readonly first: PassageNote; readonly bell: Bell };

/** The players a word speaks to. One that names a player ("1. sourd.") speaks to one of those who play next, if several do. */
function spokenTo(
  { word, text }: ToldWord,
  players: readonly Player[],
  notes: readonly PassageNote[],
  nextNote: number,
): readonly Player[] {
  const onStaff = players.filter(({ first }) => first.staff === word.staff);
  const inVoice = onStaff.filter(({ first }) => first.voice === word.voice);
  // A voice that has no notes here (a door's default) means the staff.
  const audience = inVoice.length > 0 ? inVoice : onStaff;
  if (text.player === null) return audience;
  const together: PassageNote[] = [];
  const onset = notes[nextNote]!.onsetQuarters;
  for (let i = nextNote; i < notes.length && notes[i]!.onsetQuarters === onset; i++)
    if (!notes[i]!.grace && notes[i]!.staff === word.staff) together.push(notes[i]!);
  if (together.length < 2) return audience;
  together.sort(fromTheTop);
  const chosen = together[Math.min(together.length - 1, (text.player - 1) % 2)]!;
  return audience.filter(({ first }) => first.voice === chosen.voice && first.chordRank === chosen.chordRank);
}

function apply({ word, wordIndex, text }: ToldWord, bell: Bell): void {
  if (text.sign) bell.typedSign = { sign: text.sign, onsetQuarters: word.onsetQuarters };
  for (const { effect, language } of text.effects) {
    if (effect === 'open') {
      bell.hand = null;
      bell.mute = null;
    } else if (effect === 'mute-out') {
      bell.mute = null;
    } else {
      const inForce: WordInForce = { wordIndex, text: word.text, state: effect, language };
      if (isMute(effect)) {
        // Putting a mute in takes the hand out.
        bell.hand = null;
        bell.mute = inForce;
      } else bell.hand = inForce;
    }
  }
}

function isMute(effect: WordEffect): boolean {
  return effect === 'straight-mute' || effect === 'stopping-mute';
}

function readingOf(note: PassageNote, { hand, mute, typedSign }: Bell): HandReading {
  const word = hand ?? mute;
  const typed =
    typedSign && Math.abs(typedSign.onsetQuarters - note.onsetQuarters) <= SAME_PLACE_QUARTERS
      ? typedSign.sign
      : null;
  const sign = note.sign ?? typed;
  if (!word) return sign ? SIGN_ALONE[sign] : NOTHING;
  const muteKind = mute ? (mute.state === 'stopping-mute' ? 'stopping' : 'straight') : null;
  const state = sign ?? word.state;
  return {
    // A stopping mute does the hand's work: + over it asks for nothing more.
    state: state === 'stopped' && muteKind === 'stopping' ? 'stopping-mute' : state,
    from: sign ? 'sign' : 'word',
    word,
    mute: muteKind,
    lapsed: null,
  };
}

/** With this many signs in a row from its first note on, a word only names what the signs say. A choice: one may be a reminder. */
const TELLING_SIGNS = 2;

/** Lets words lapse in a line where their signs end, unless a word opens the hand later: then the letter holds. */
function lapseWithSigns(line: Line, readings: HandReading[]): void {
  for (let at = 0; at < line.length; ) {
    const { word } = readings[line[at]!]!;
    let end = at + 1;
    while (end < line.length && readings[line[end]!]!.word?.wordIndex === word?.wordIndex) end += 1;
    const isOpened = end < line.length && readings[line[end]!]!.word === null;
    if (word && isHandState(word.state) && !isOpened) {
      let signed = at;
      while (signed < end && isSignOf(readings[line[signed]!]!, word)) signed += 1;
      if (signed - at >= TELLING_SIGNS)
        for (const index of line.slice(signed, end)) readings[index] = lapsedReading(readings[index]!, word);
    }
    at = end;
  }
}

function isSignOf({ from, state }: HandReading, word: WordInForce): boolean {
  return from === 'sign' && state === word.state;
}

function lapsedReading(reading: HandReading, lapsed: WordInForce): HandReading {
  const { from, mute } = reading;
  const resting = mute === 'straight' ? 'straight-mute' : mute === 'stopping' ? 'stopping-mute' : 'open';
  return from === 'sign'
    ? { ...reading, word: null, lapsed }
    : { state: resting, from: mute ? 'word' : 'nothing', word: null, mute, lapsed };
}
