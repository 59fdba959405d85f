/** A course: a sheet a week, each harder than the one before, and each coming back to one thing from it. */

import { checkInteger, checkObject } from '../guards/allowed.ts';
import { checkSettings, type Settings } from '../part/settings.ts';
import { type Pitch, signatureAlter } from '../pitch/pitch.ts';
import { ENGLISH_READER, type Reader } from '../words/language.ts';
import type { Meter } from './bar.ts';
import type { Etude } from './etude.ts';
import type { Key } from './key.ts';
import type { EtudeKind } from './kinds.ts';
import { composeLesson } from './lesson.ts';
import { keysOf, LEVEL_PLANS, LEVELS, type Level } from './levels.ts';
import { HIGHEST_SEED } from './random.ts';
import { setOver } from './setOver.ts';
import { meanDifficulty, type Sheet } from './sheet.ts';

/** What is asked for. */
export interface CourseRequest {
  /** Sheets, one a week; 1 to MOST_WEEKS. */
  readonly weeks: number;
  readonly low: Pitch | null;
  readonly high: Pitch | null;
  /** An integer from 0 to HIGHEST_SEED. */
  readonly seed: number;
  readonly player: Settings;
  /** Whoever reads the pages; English where absent. */
  readonly reader?: Reader;
}

/** A course, or why there can be none. */
export type CourseResult =
  | { readonly ok: true; readonly sheets: readonly Sheet[] }
  | { readonly ok: false; readonly reason: string };

/** The longest course. */
export const MOST_WEEKS = 52;

/** How quick the first and the last week of a level are, as factors of its usual tempo. */
const SLOWEST_PACE = 0.9;
const QUICKEST_PACE = 1.1;
/** So many sheets are made for a week at most; of those harder than last week's the easiest is taken. */
const ATTEMPTS = 24;
/** So many of them keep the key whose turn it is. */
const OWN_KEY_ATTEMPTS = 16;
/** One that is harder by no more than this will do at once. */
const SMALL_STEP = 1.5;

/**
 * Composes a course from the first level to the third: range, keys, tempo and changes grow with the weeks.
 * @throws {TypeError} or {RangeError} when weeks, range, seed or player are not what they may be
 */
export function composeCourse(request: CourseRequest): CourseResult {
  checkObject('request', request, 'what is asked for: { weeks, low, high, seed, player }');
  const { weeks, low, high, seed, player, reader = ENGLISH_READER } = request;
  checkInteger('weeks', weeks, 1, MOST_WEEKS);
  checkInteger('seed', seed, 0, HIGHEST_SEED);
  checkSettings(player);
  const sheets: Sheet[] = [];
  for (let week = 0; week < weeks; week++) {
    const way = (LEVELS.length * week) / weeks;
    const level = LEVELS[Math.floor(way)] as Level;
    const within = way - Math.floor(way);
    const last = sheets[week - 1];
    const keys = keysInTurn(
      keysOf(level, player.horn.natural),
      [within, within + LEVELS.length / weeks],
      last ? last.etudes[0]!.key : null,
      seed,
    );
    const lastScore = last ? meanDifficulty(last.etudes).score : 0;
    const earlier = ([] as Etude[]).concat(...sheets.map(({ etudes }) => etudes));
    const meter = meterOf(week, weeks);
    const isOld = ({ kind, seed: its }: Etude) =>
      (sheets[week - 2]?.etudes ?? []).some((each) => each.kind === kind && each.seed === its);
    const fresh = (last?.etudes ?? []).filter((each) => !isOld(each));
    let best: { readonly sheet: Sheet; readonly score: number } | null = null;
    let strayed = 0;
    for (let attempt = 0; attempt < ATTEMPTS; attempt++) {
      if (attempt >= OWN_KEY_ATTEMPTS && !(best && best.score > lastScore)) strayed += 1;
      const key = keys[strayed % keys.length]!;
      const made = composeLesson({
        level,
        key,
        low,
        high,
        seed: (seed + 1299709 * week + 32452843 * attempt) % (HIGHEST_SEED + 1),
        player,
        reader,
        meter,
        kept: comingBack(fresh, key, meter, week, meterOf(week + 1, weeks)),
        earlier,
        week: week + 1,
        pace: SLOWEST_PACE + (QUICKEST_PACE - SLOWEST_PACE) * within,
      });
      if (!made.ok) {
        strayed += 1;
        if (best || attempt < ATTEMPTS - 1) continue;
        return made;
      }
      const { score } = meanDifficulty(made.sheet.etudes);
      const isHarder = score > lastScore;
      const isBest = !best || (isHarder && best.score > lastScore ? score < best.score : score > best.score);
      if (isBest) best = { sheet: made.sheet, score };
      if (isHarder && score <= lastScore + SMALL_STEP) break;
    }
    sheets.push(best!.sheet);
  }
  return { ok: true, sheets };
}

/** Kinds that are of a key, and come back under its signature alone. */
const IN_A_KEY: readonly EtudeKind[] = ['scale', 'phrase'];

/**
 * Keys for a week, the first choice first: those whose turn it is, then the rest, for a horn that has none of them; each
 * time the nearest to last week's that is another comes first.
 * @param turn the part of its level that the week is, each end from 0 to 1
 * @param seed an odd one goes towards the sharps, an even one towards the flats
 */
function keysInTurn(
  keys: readonly Key[],
  [from, to]: readonly [number, number],
  last: Key | null,
  seed: number,
): readonly Key[] {
  const first = Math.floor(from * keys.length);
  const due = keys.slice(first, Math.max(first + 1, Math.ceil(to * keys.length - 1e-9)));
  if (!last) return [...due, ...keys.filter((each) => due.indexOf(each) < 0)];
  const wanted = Math.abs(last.fifths) * (seed % 2 === 1 ? 1 : -1);
  const distance = (each: Key) =>
    Math.abs(each.fifths - wanted) +
    (each.mode === last.mode ? 0.5 : 0) +
    (each.fifths === last.fifths && each.mode === last.mode ? 100 : 0);
  const nearest = (some: readonly Key[]) => some.slice().sort((a, b) => distance(a) - distance(b));
  return [...nearest(due), ...nearest(keys.filter((each) => due.indexOf(each) < 0))];
}

/** The kind that comes back in another meter. */
const SET_OVER: EtudeKind = 'seal';

/** The meter of a week: from the second level on another every second week. */
function meterOf(week: number, weeks: number): Meter {
  const { meters } = LEVEL_PLANS[2];
  const first = Math.ceil(weeks / LEVELS.length);
  return week < first
    ? LEVEL_PLANS[1].meters[0]!
    : meters[Math.floor((week - first + 1) / 2) % meters.length]!;
}

/**
 * From week to week another of the things practised comes back, and none a third time: one that reads well under the new
 * signature. Where the meter is new the long tones come back in it, and a week before they wait for that.
 */
function comingBack(
  fresh: readonly Etude[],
  key: Key,
  meter: Meter,
  week: number,
  next: Meter,
): readonly Etude[] {
  if (fresh.length > 0 && fresh[0]!.bars[0]!.meter !== meter)
    return fresh.filter(({ kind }) => kind === SET_OVER).map((each) => setOver(each, meter));
  const fitting = fresh.filter(
    (each) =>
      (each.key.fifths === key.fifths || IN_A_KEY.indexOf(each.kind) < 0) &&
      (next === meter || each.kind !== SET_OVER),
  );
  const foreign = fitting.map((each) => foreignNotes(each, key));
  const least = Math.min(...foreign);
  const readable = fitting.filter((_, i) => foreign[i] === least);
  return readable.length > 0 ? [readable[week % readable.length]!] : [];
}

/** Notes of an étude, in a hundred, that a signature does not give; bends have theirs in any key. */
function foreignNotes({ kind, bars }: Etude, { fifths }: Key): number {
  if (kind === 'bend') return 0;
  const written = ([] as (Pitch | null)[])
    .concat(...bars.map(({ notes }) => notes.map((each) => each.written)))
    .filter((each): each is Pitch => each !== null);
  const foreign = written.filter(({ step, alter }) => alter !== signatureAlter(step, fifths));
  return (100 * foreign.length) / Math.max(1, written.length);
}
