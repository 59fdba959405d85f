/** What études and lessons say, in every language. */
import { checkOneOf } from '../guards/allowed.ts';
import type { Horn } from '../horn/horn.ts';
import { sidesForStopping } from '../horn/horn.ts';
import type { Pitch } from '../pitch/pitch.ts';
import type { KindWords } from './areas/etudes.ts';
import { decimalText, hornText, keyText, listText } from './fingerings.ts';
import type { Reader } from './language.ts';
import { capital } from './listed.ts';
import { noteClassName, noteName } from './noteNames.ts';

/**
 * What a kind is called and trains.
 * @param kind its word, such as `bend`
 * @throws {RangeError} when the reader's language has no words for such a kind
 */
export function kindWords(kind: string, { words }: Reader): KindWords {
  const { kinds } = words.etudes;
  checkOneOf('kind', kind, Object.keys(kinds));
  return kinds[kind]!;
}

/** The title of a lesson. @param week from 1, or null outside a course */
export function lessonTitle(week: number | null, { words }: Reader): string {
  return week === null ? words.etudes.lesson : words.etudes.lessonOfWeek(week);
}

/** `Horn in F`, `Natural horn in E♭`: the name at the head of a part. */
export function instrumentText(horn: Horn, reader: Reader): string {
  const { hornIn, naturalHornIn } = reader.words.etudes;
  if (!horn.natural) return hornIn(keyText('F', reader));
  return naturalHornIn(keyText(horn.crookFollowsPart ? 'F' : horn.sides[0]!.name, reader));
}

/** A key of the written part: `B♭ major`. */
export function keyInModeText(
  { tonic, mode }: { readonly tonic: Pitch; readonly mode: 'major' | 'minor' },
  reader: Reader,
): string {
  return reader.words.etudes.key[mode](noteClassName(tonic, reader));
}

/** Why there is no étude, as data. */
export type EtudeObstacle =
  | {
      readonly is: 'no-time';
      readonly handSeconds: number;
      /** Beats a minute. */
      readonly tempo: number;
    }
  | {
      readonly is: 'too-few';
      readonly needs: 'notes' | 'bends';
      /** What there is of them, from 0. */
      readonly found: number;
      readonly low: Pitch;
      readonly high: Pitch;
      readonly horn: Horn;
    }
  | {
      readonly is: 'no-home';
      readonly tonic: Pitch;
      readonly low: Pitch;
      readonly high: Pitch;
      readonly horn: Horn;
    };

/** Why there is no étude, and what to choose instead, as one clause without a full stop. */
export function obstacleText(obstacle: EtudeObstacle, reader: Reader): string {
  const words = reader.words.etudes;
  if (obstacle.is === 'no-time')
    return words.noTime(decimalText(obstacle.handSeconds, 2, reader), obstacle.tempo);
  const [low, high] = [noteName(obstacle.low, reader), noteName(obstacle.high, reader)];
  const horn = hornText(obstacle.horn, reader);
  return obstacle.is === 'too-few'
    ? words.tooFew[obstacle.needs](low, high, horn, obstacle.found)
    : words.noHome(noteClassName(obstacle.tonic, reader), low, high, horn);
}

/** What the head of a page tells. */
export interface SheetFacts {
  readonly horn: Horn;
  /** 1, 2 or 3. */
  readonly level: number;
  /** What brings the page back. */
  readonly seed: number;
  /** The measure of difficulty, one number. */
  readonly difficulty: number;
  readonly keys: readonly { readonly tonic: Pitch; readonly mode: 'major' | 'minor' }[];
  readonly rangeSemitones: number;
  readonly changesPerMinute: number;
  /** How many of its notes are risky. */
  readonly risky: number;
}

/** Letters of a line at the head of a page at most; more would run off it. */
const LONGEST_LINE = 124;

/**
 * What stands at the head of a page, in two or three lines: the horn, how hard it is, and when to rest; how it is read,
 * what makes it hard, and what is risky in it.
 */
export function headTexts(facts: SheetFacts, reader: Reader): readonly string[] {
  const words = reader.words.etudes;
  const { horn, level, seed, difficulty, keys, rangeSemitones, changesPerMinute, risky } = facts;
  const keyTexts = keys
    .map((key) => keyInModeText(key, reader))
    .filter((each, i, all) => all.indexOf(each) === i);
  const legend = horn.natural
    ? words.naturalLegend
    : sidesForStopping(horn)[0]!.stoppingValveCents > 0
      ? words.valveLegend
      : `${capital(hornText(horn, reader))}.`;
  return inLines([
    `${instrumentText(horn, reader)}.`,
    words.level(level, seed, Math.round(difficulty)),
    ...words.advice,
    legend,
    capital(words.numbers(listText(keyTexts, reader), rangeSemitones, Math.round(changesPerMinute))),
    risky === 0 ? words.noRisk : words.risks(risky),
  ]);
}

/** Sentence after sentence, a new line where one would run off. */
function inLines(sentences: readonly string[]): readonly string[] {
  const lines: string[] = [];
  for (const sentence of sentences) {
    const longer = `${lines[lines.length - 1] ?? ''} ${sentence}`.trim();
    if (lines.length === 0 || longer.length > LONGEST_LINE) lines.push(sentence);
    else lines[lines.length - 1] = longer;
  }
  return lines;
}
