/** A lesson: four to six exercises on one page, in the order in which one practises. */
import { checkInteger, checkObject, checkOneOf } from '../guards/allowed.ts';
import { checkSettings, type Settings } from '../part/settings.ts';
import type { Pitch } from '../pitch/pitch.ts';
import { examine } from '../rules/examine.ts';
import { headTexts, instrumentText, kindWords, lessonTitle } from '../words/etudes.ts';
import { ENGLISH_READER, type Reader } from '../words/language.ts';
import { barAsPlayed, type Meter } from './bar.ts';
import { composeEtude } from './compose.ts';
import type { Etude } from './etude.ts';
import { etudePassage } from './etudePassage.ts';
import type { Key } from './key.ts';
import { ETUDE_KINDS } from './kinds.ts';
import { keysOf, LEVELS, type Level, planFor } from './levels.ts';
import { countLines } from './pageLines.ts';
import { type PagePlan, pagesFor } from './pagePlans.ts';
import { drawFrom, HIGHEST_SEED, pick } from './random.ts';
import { meanDifficulty, type Sheet } from './sheet.ts';
import { tempoIn } from './tempo.ts';

/** What is asked for. */
export interface LessonRequest {
  readonly level: Level;
  /** The key of every exercise, or null for keys that suit the level. */
  readonly key: Key | null;
  readonly low: Pitch | null;
  readonly high: Pitch | null;
  /** An integer from 0 to HIGHEST_SEED. */
  readonly seed: number;
  readonly player: Settings;
  /** The meter of every exercise, one of the level's; null or absent for that of `kept`, or one drawn by chance. */
  readonly meter?: Meter | null;
  /** Exercises to begin with, in place of those of their kinds: what a course comes back to. */
  readonly kept?: readonly Etude[];
  /** Exercises of earlier sheets, which none of the others may be again. */
  readonly earlier?: readonly Etude[];
  /** The week of a course, from 1; null or absent for a lesson by itself. */
  readonly week?: number | null;
  /** How much quicker than usual, as a factor; 1 where absent. */
  readonly pace?: number;
  /** Whoever reads the page; English where absent. */
  readonly reader?: Reader;
}

/** A lesson, or why there can be none. */
export type LessonResult =
  | { readonly ok: true; readonly sheet: Sheet }
  | { readonly ok: false; readonly reason: string };

/** Lines of music that fit one page with their fingerings. */
export const PAGE_LINES = 10;

/** A page with a line less than that is full enough. */
const FULL_LINES = PAGE_LINES - 1;

/** Fewer exercises than this are no lesson. */
const FEWEST_EXERCISES = 4;
/** So often is an exercise composed anew when it says a bar that the sheet has said often enough. */
const ATTEMPTS = 12;

/**
 * Composes a lesson. A kind that the horn has nothing for is left out.
 * @throws {TypeError} or {RangeError} when key, range, seed, level or player are not what they may be
 */
export function composeLesson(request: LessonRequest): LessonResult {
  checkObject('request', request, 'what is asked for: { level, key, low, high, seed, player }');
  const { level, seed, player, kept = [], week = null, reader = ENGLISH_READER } = request;
  checkOneOf('level', level, LEVELS);
  checkInteger('seed', seed, 0, HIGHEST_SEED);
  checkSettings(player);
  const random = drawFrom(seed);
  const keys = request.key ? [request.key] : keysOf(level, player.horn.natural);
  const at = Math.floor(random() * keys.length);
  const pages = pagesFor(request, keys[at]!).filter((page) =>
    kept.every(({ kind }) => (page[kind] ?? 0) > 0),
  );
  const first = Math.floor(random() * (pages.length - 1));
  const isRelative = random() < 0.5;
  const drawn = pick(random, planFor(level, player.horn.natural).meters);
  const meter = request.meter ?? kept[0]?.bars[0]?.meter ?? drawn;
  let best: Exercises | null = null;
  let reason = '';
  // A horn that has no home in one key has it in another.
  for (let k = 0; k < keys.length && !best; k++) {
    const home = keys[(at + k) % keys.length]!;
    // The second half may go to the relative key: two are enough to think about, and the signs stay.
    const relative = keys.filter((each) => each.fifths === home.fifths && each !== home)[0];
    // A horn may have one of the two alone.
    const seconds = isRelative && relative ? [relative, home] : [home];
    for (let i = 0; i < seconds.length * pages.length && (!best || best.lines < FULL_LINES); i++) {
      const page = pages[(first + i) % pages.length]!;
      const made = exercisesOf(request, page, meter, home, seconds[Math.floor(i / pages.length)]!);
      reason = reason || made.reason;
      const isLesson = made.etudes.length >= FEWEST_EXERCISES && made.lines <= PAGE_LINES;
      if (isLesson && (!best || made.lines > best.lines)) best = made;
    }
  }
  if (!best) return { ok: false, reason };
  return { ok: true, sheet: sheetOf(best.etudes, player, lessonTitle(week, reader), seed, reader) };
}

/** The exercises of a page. */
interface Exercises {
  readonly etudes: readonly Etude[];
  /** Lines of music. */
  readonly lines: number;
  /** Why one or more of them are not there; empty where all are. */
  readonly reason: string;
}

function exercisesOf(
  {
    level,
    seed,
    player,
    low,
    high,
    kept = [],
    earlier = [],
    pace = 1,
    reader = ENGLISH_READER,
  }: LessonRequest,
  page: PagePlan,
  meter: Meter,
  home: Key,
  second: Key,
): Exercises {
  const etudes: Etude[] = [];
  let reason = '';
  ETUDE_KINDS.forEach((kind, i) => {
    const bars = page[kind.kind] ?? 0;
    if (bars === 0) return;
    const again = kept.filter((etude) => etude.kind === kind.kind)[0];
    if (again) {
      // One signature for the page.
      etudes.push({ ...again, key: home });
      return;
    }
    for (let attempt = 0; attempt < ATTEMPTS; attempt++) {
      const made = composeEtude({
        kind: kind.kind,
        key: i < 3 ? home : second,
        level,
        bars,
        meter,
        tempo: tempoIn(kind, level, meter, pace),
        low,
        high,
        seed: (seed + 104729 * i + 15485863 * attempt) % (HIGHEST_SEED + 1),
        player,
        reader,
      });
      if (!made.ok) {
        reason = made.reason;
        return;
      }
      const isOld =
        saysAgain([...etudes, made.etude]) || earlier.some((each) => isMuchAlike(each, made.etude));
      if (attempt < ATTEMPTS - 1 && isOld) continue;
      etudes.push(made.etude);
      return;
    }
  });
  return { etudes, lines: countLines(etudes), reason };
}

/** True when a bar comes a third time, in exercises where repeating it is not the point. */
function saysAgain(etudes: readonly Etude[]): boolean {
  const counts = new Map<string, number>();
  for (const { kind, bars } of etudes) {
    const isRepetition = ETUDE_KINDS.some((each) => each.kind === kind && each.isRepetition);
    if (isRepetition) continue;
    for (const text of bars.map(barAsPlayed)) counts.set(text, (counts.get(text) ?? 0) + 1);
  }
  return Math.max(0, ...counts.values()) > 2;
}

/** True when more than half of an étude's bars are those of another of its kind. */
function isMuchAlike(earlier: Etude, { kind, bars }: Etude): boolean {
  if (earlier.kind !== kind) return false;
  const heard = earlier.bars.map(barAsPlayed);
  return bars.filter((each) => heard.indexOf(barAsPlayed(each)) >= 0).length > bars.length / 2;
}

/**
 * A page of études.
 * @param seed what brings the page back
 */
export function sheetOf(
  etudes: readonly Etude[],
  player: Settings,
  title: string,
  seed: number,
  reader: Reader,
): Sheet {
  const { horn } = player;
  let risky = 0;
  for (const { bars, tempo, transposition } of etudes) {
    const { notes } = examine(etudePassage(bars, transposition, tempo), player);
    risky += notes.filter(({ verdict }) => verdict !== 'sure').length;
  }
  const { score, rangeSemitones, changesPerMinute } = meanDifficulty(etudes);
  const keys = etudes.map(({ key }) => key);
  const { level } = etudes[0]!;
  return {
    title,
    instrument: instrumentText(horn, reader),
    reader,
    lines: headTexts(
      { horn, level, seed, difficulty: score, keys, rangeSemitones, changesPerMinute, risky },
      reader,
    ),
    etudes,
    trains: etudes.map(({ kind }) => {
      const { trains, trainsOnNaturalHorn } = kindWords(kind, reader);
      return horn.natural ? trainsOnNaturalHorn : trains;
    }),
  };
}

/** A page of one étude, under its own title. */
export function etudeSheet(etude: Etude, reader: Reader = ENGLISH_READER): Sheet {
  return sheetOf([etude], etude.player, kindWords(etude.kind, reader).title, etude.seed, reader);
}
