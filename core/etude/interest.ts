/** What keeps an étude from being dull: laws of its music, tried by `laws.ts` beside those of playing. */
import { movePitch, type Pitch, pitchCents, signatureAlter } from '../pitch/pitch.ts';
import type { Bar, EtudeNote } from './bar.ts';
import { CLOSE_DEGREES, PAUSE_DEGREES } from './harmony.ts';
import { asIn, type Key, neighbourKeys, scaleBetween } from './key.ts';
import type { Level } from './levels.ts';
import { melodyFaults, repeatsIn } from './melody.ts';
import { FULL_LINE, lineStarts, phrasesOf } from './pageLines.ts';

/** Fewer bars than this are no room for a question and its answer, each with an echo. */
const ROOM_BARS = 12;
/** Nor fewer than this to go to another key and come home. */
const AWAY_BARS: ReadonlyMap<string, number> = new Map([
  ['scale', 8],
  ['phrase', ROOM_BARS],
]);
/** Bars of a phrase at least: two are a call, and no phrase. */
const SHORTEST_PHRASE = 3;
/** The tonic and the fifth of a key, on which a phrase rests. */
const REST_DEGREES = [0, 4];
/** Different notes in four bars at least. */
const FEWEST_NOTES: ReadonlyMap<string, number> = new Map([
  ['seal', 3],
  ['match', 3],
  ['change', 3],
]);

/** True when every four bars move over several notes. */
export function goesSomewhere(kind: string, bars: readonly Bar[]): boolean {
  const fewest = FEWEST_NOTES.get(kind) ?? 0;
  return phrasesOf(bars).every(([from, to]) => {
    const cents = notesOf(bars.slice(from, to)).map(({ written }) => pitchCents(written!));
    return to - from < 4 || new Set(cents).size >= fewest;
  });
}

/**
 * True when within a phrase no bar begins with the note that the one before has ended on; where nothing but the line is
 * practised no note at all is said twice.
 * @param isNatural true where pairs share their open notes, and only the closed ones count
 */
export function movesOn(bars: readonly Bar[], isLine: boolean, isNatural: boolean): boolean {
  return phrasesOf(bars).every(([from, to]) => {
    const phrase = bars.slice(from, to).map((bar) =>
      notesOf([bar])
        .filter(({ hand }) => isLine || !isNatural || hand !== 'open')
        .map(({ written }) => pitchCents(written!)),
    );
    return isLine
      ? repeatsIn(([] as number[]).concat(...phrase)) === 0
      : phrase.every((cents, i) => i === 0 || cents[0] !== phrase[i - 1]![phrase[i - 1]!.length - 1]);
  });
}

/** A tone of the third level lasts over so many bar lines, or so long, in seconds: what trains the breath. */
const HELD_LONG = { barLines: 2, seconds: 7.5 } as const;

/**
 * True when every phrase of long tones has one that is held over a bar line, swelling or fading as it goes, and the last
 * ends on a pause; at the third level one of the phrase takes as long as a breath.
 */
export function isHeldOver(bars: readonly Bar[], level: Level, quarterSeconds: number): boolean {
  const ends = notesOf(bars.slice(-1));
  return (
    ends[ends.length - 1]?.fermata === true &&
    phrasesOf(bars).every(([from, to]) => {
      const held = heldTones(bars.slice(from, to));
      const shaped = held.some((tone) => tone.some(({ hairpin }) => hairpin !== null));
      const isLong = held.some(
        (tone) =>
          tone.length > HELD_LONG.barLines ||
          tone.reduce((sum, { quarters }) => sum + quarters, 0) * quarterSeconds >= HELD_LONG.seconds - 1e-6,
      );
      return shaped && (level < 3 || isLong);
    })
  );
}

/** Tones that are tied over bar lines, as the notes of which they are made. */
function heldTones(bars: readonly Bar[]): readonly (readonly EtudeNote[])[] {
  const notes = notesOf(bars);
  const tones: EtudeNote[][] = [];
  notes.forEach((each, i) => {
    if (notes[i - 1]?.ties) tones[tones.length - 1]!.push(each);
    else tones.push([each]);
  });
  return tones.filter(({ length }) => length > 1);
}

/** True when every note is heard open before it is found again with the hand closed. */
export function isHeardOpen(bars: readonly Bar[]): boolean {
  const notes = notesOf(bars);
  return notes.every(({ written, hand }, i) => {
    const before = notes[i - 1];
    return hand === 'open' || (before !== undefined && pitchCents(before.written!) === pitchCents(written!));
  });
}

/** True when no phrase begins as another has begun; the same phrase open and then closed is one. */
export function goesOn(bars: readonly Bar[]): boolean {
  const starts = phrasesOf(bars)
    .filter(([from]) => notesOf(bars.slice(from, from + 1)).some(({ hand }) => hand !== 'open'))
    .map(([from]) =>
      notesOf(bars.slice(from, from + 1))
        .map(({ written, quarters }) => `${pitchCents(written!)}/${quarters}`)
        .join(' '),
    );
  return new Set(starts).size === starts.length;
}

/**
 * True when phrases are more than calls, and the last comes home; where there is room for two, the first asks, and the
 * second begins in its rhythm.
 * @param isMixed true where the question may be asked in a neighbouring key
 * @param isScant true on a horn that may have none of the notes on which a question pauses: it asks by not coming home
 */
export function asksAndAnswers(key: Key, bars: readonly Bar[], isMixed: boolean, isScant: boolean): boolean {
  const phrases = phrasesOf(bars);
  const barsOf = (at: number) => bars.slice(...phrases[at]!);
  const endsOn = (at: number, degrees: readonly number[]) =>
    degrees.indexOf(lastDegree(key, barsOf(at))) >= 0;
  // It may pause where it has gone to.
  const pausesIn = (other: Key) =>
    REST_DEGREES.indexOf(lastDegree(other, barsOf(0))) >= 0 &&
    notesOf(barsOf(0).slice(-2)).every(({ written }) => scaleBetween(other, written!, written!).length > 0);
  const asks = () =>
    endsOn(0, PAUSE_DEGREES) ||
    (isScant && !endsOn(0, CLOSE_DEGREES)) ||
    (isMixed && neighbourKeys(key).some(pausesIn));
  const begins = (at: number) => notesOf(barsOf(at).slice(0, 1)).map(({ quarters }) => quarters);
  return (
    phrases.every(([from, to]) => to - from >= SHORTEST_PHRASE) &&
    endsOn(phrases.length - 1, CLOSE_DEGREES) &&
    (bars.length < ROOM_BARS ||
      (phrases.length >= 4 && asks() && begins(0).join(' ') === begins(2).join(' ')))
  );
}

/**
 * True when every phrase has one high point, moves, leaps with measure, and comes to its end by step.
 * @param isGapped true where the notes at hand lie apart
 */
export function sings(key: Key, bars: readonly Bar[], isGapped: boolean): boolean {
  return phrasesOf(bars).every(([from, to]) => {
    const phrase = bars.slice(from, to);
    const notes = notesOf(phrase).map(({ written }) => ({ written: written!, degree: 0 }));
    const barLengths = phrase.map((bar) => notesOf([bar]).length);
    const last = lastDegree(key, phrase);
    return last >= 0 && melodyFaults({ notes, barLengths, ends: [0], isGapped }).length === 0;
  });
}

/** True when the last line is full enough to be printed in full width. */
export function endsOnFullLine(bars: readonly Bar[]): boolean {
  const last = bars.slice(lineStarts(bars).lastIndexOf(true));
  return last.reduce((sum, { notes }) => sum + notes.length, 0) >= FULL_LINE;
}

/** True when there is a note of another key on the way, and none of one in the last two bars. */
export function goesAwayAndComesHome(kind: string, key: Key, bars: readonly Bar[]): boolean {
  if (bars.length < (AWAY_BARS.get(kind) ?? Number.POSITIVE_INFINITY)) return true;
  const raised = movePitch(key.tonic, -2, -3);
  const isOwn = ({ step, alter }: Pitch) =>
    asIn(key, { step, alter, octave: 4 }).alter === alter || (step === raised.step && alter === raised.alter);
  const isNear = (pitch: Pitch) => isOwn(pitch) || signatureAlter(pitch.step, key.fifths) === pitch.alter;
  return (
    notesOf(bars).some(({ written }) => !isOwn(written!)) &&
    notesOf(bars.slice(-2)).every(({ written }) => isNear(written!))
  );
}

/** True when no bend is smaller than the one before. @param dropsCents of the closed notes in turn */
export function grows(dropsCents: readonly number[]): boolean {
  return dropsCents.every((drop, i) => i === 0 || drop >= dropsCents[i - 1]! - ROUNDING_CENTS);
}

/** Two tubes of the same step differ by their slides. */
const ROUNDING_CENTS = 5;

function notesOf(bars: readonly Bar[]): readonly EtudeNote[] {
  return ([] as EtudeNote[])
    .concat(...bars.map(({ notes }) => notes))
    .filter(({ written }) => written !== null);
}

/** The degree of the last note; −1 where it is none of the key. */
function lastDegree(key: Key, bars: readonly Bar[]): number {
  const notes = notesOf(bars);
  const last = notes[notes.length - 1]?.written;
  return last ? (scaleBetween(key, last, last)[0]?.degree ?? -1) : -1;
}
