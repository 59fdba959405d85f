/** A phrase and its stopped echo: first as a singer would play it, then from far away. */
import { type EtudeNote, FOUR_FOUR, type Meter, note, rest, SIX_EIGHT, THREE_FOUR } from './bar.ts';
import { CHORDS, type Chord, CLOSE_DEGREES, PAUSE_DEGREES, type PhrasePlan } from './harmony.ts';
import type { Degree } from './key.ts';
import type { Level } from './level.ts';
import { drawLine, type Place } from './line.ts';
import { pick, type Random } from './random.ts';
import type { Draft, KindOfEtude, Workshop } from './workshop.ts';

/** The kind, as the list of kinds has it. */
export const phrase = {
  kind: 'phrase',
  name: 'a phrase and its echo',
  title: 'Over the Valley',
  trains: 'Answer every phrase with the hand closed, softer, but with the same shape and the same pitch.',
  tempo: 76,
  needs: 'notes',
  onNaturalHorn: false,
  compose: composePhrase,
} as const satisfies KindOfEtude;

/** Lengths in quarters; a rest is negative. */
type Rhythm = readonly number[];

/** Moving bars and closing bars of each meter, the plainer first. */
const METERS: readonly {
  readonly meter: Meter;
  readonly moving: readonly Rhythm[];
  readonly closing: readonly Rhythm[];
}[] = [
  {
    meter: FOUR_FOUR,
    moving: [
      [2, 1, 1],
      [1, 1, 1, 1],
      [1.5, 0.5, 1, 1],
      [1, 0.5, 0.5, 1, 1],
      [1.5, 0.5, 1.5, 0.5],
    ],
    closing: [
      [3, -1],
      [1, 2, -1],
      [1, 1, 1, -1],
      [0.5, 0.5, 2, -1],
    ],
  },
  {
    meter: THREE_FOUR,
    moving: [
      [2, 1],
      [1, 1, 1],
      [1.5, 0.5, 1],
      [1, 0.5, 0.5, 1],
      [1, 1, 0.5, 0.5],
    ],
    closing: [
      [2, -1],
      [1, 1, -1],
      [1, 1, -1],
      [0.5, 0.5, 1, -1],
    ],
  },
  {
    meter: SIX_EIGHT,
    moving: [
      [1.5, 1.5],
      [1, 0.5, 1.5],
      [1, 0.5, 1, 0.5],
      [1.5, 0.5, 0.5, 0.5],
      [0.5, 0.5, 0.5, 1.5],
    ],
    closing: [
      [1.5, 0.5, -1],
      [1, 0.5, 0.5, -1],
      [1, 0.5, 0.5, -1],
      [0.5, 0.5, 0.5, 0.5, -1],
    ],
  },
];

/** How many of the rhythms, plainest first, each level draws from. */
const RHYTHMS_BY_LEVEL: { readonly [level in Level]: number } = { 1: 3, 2: 4, 3: 5 };

const { I, ii, IV, V, vi } = CHORDS;

/** The two bars of each short phrase in turn; the second answers the first, the last comes home. */
const OPENINGS: readonly (readonly Chord[])[] = [
  [I, V],
  [I, IV],
  [I, vi],
];
const MIDDLES: readonly (readonly Chord[])[] = [
  [IV, V],
  [ii, V],
  [vi, V],
];
const HOME: readonly Chord[] = [V, I];

/** A phrase. */
interface Phrase {
  /** One rhythm a bar. */
  readonly rhythms: readonly Rhythm[];
  readonly line: readonly Degree[];
}

/** What a phrase is to be like. */
interface Wish {
  readonly rhythms: readonly Rhythm[];
  readonly chords: readonly Chord[];
  readonly height: number;
  /** Degrees it may end on, or null for any of its last chord. */
  readonly ends: readonly number[] | null;
}

/** Composes phrases, each with its echo: of two bars, or of four where the level and the length allow. */
function composePhrase({ random, notes, level, phrases }: Workshop): Draft {
  const { meter, moving, closing } = pick(random, METERS);
  const choice = RHYTHMS_BY_LEVEL[level];
  const move = () => pick(random, moving.slice(0, choice));
  const close = () => pick(random, closing.slice(0, choice));
  const wishes =
    level === 3 && phrases.length % 2 === 0 && random() < 0.6
      ? longPhrases(phrases.slice(0, phrases.length / 2), move, close)
      : shortPhrases(random, phrases.length, move, close);
  const bars: (readonly EtudeNote[])[] = [];
  let before: Phrase | null = null;
  wishes.forEach((wish, i) => {
    const isAnswer = wish.chords.length === 2 && i % 4 === 1 && i < wishes.length - 1;
    const sequence: readonly Degree[] | null =
      before && isAnswer ? oneStepOn(random, notes, before.line) : null;
    const phrase: Phrase = { rhythms: wish.rhythms, line: sequence ?? lineOf(random, notes, wish, before) };
    bars.push(...played(phrase, 'open', 'mf', level), ...played(phrase, 'stopped', 'p', level));
    before = phrase;
  });
  return { meter, bars };
}

function shortPhrases(random: Random, count: number, move: () => Rhythm, close: () => Rhythm): Wish[] {
  const first = [move(), close()];
  const second = [move(), close()];
  return Array.from({ length: count }, (_, i): Wish => {
    const isLast = i === count - 1;
    const isMiddle = i % 4 === 2;
    return {
      rhythms: isMiddle ? second : first,
      chords: isLast || i === 1 ? HOME : pick(random, isMiddle ? MIDDLES : OPENINGS),
      height: isMiddle ? 0.65 : 0.45,
      ends: isLast ? CLOSE_DEGREES : null,
    };
  });
}

function longPhrases(plans: readonly PhrasePlan[], move: () => Rhythm, close: () => Rhythm): Wish[] {
  const [first, second] = [move(), move()];
  const end = close();
  return plans.map(
    ({ chords, closes }, i): Wish => ({
      rhythms: [first, second, first, end],
      chords: i === plans.length - 1 ? [...chords.slice(0, 2), ...HOME] : chords,
      height: i === plans.length - 1 ? 0.5 : 0.45 + 0.1 * (i % 2),
      ends: closes || i === plans.length - 1 ? CLOSE_DEGREES : PAUSE_DEGREES,
    }),
  );
}

function lineOf(
  random: Random,
  notes: readonly Degree[],
  { rhythms, chords, height, ends }: Wish,
  before: Phrase | null,
): readonly Degree[] {
  const places: Place[] = [];
  rhythms.forEach((rhythm, bar) => {
    const sounding = rhythm.filter((quarters) => quarters > 0);
    const arch = Math.sin((Math.PI * (bar + 0.5)) / rhythms.length);
    sounding.forEach((_, i) => {
      const isEnd = bar === rhythms.length - 1 && i === sounding.length - 1;
      places.push({
        chord: isEnd && ends ? ends : chords[bar]!,
        firm: i === 0 || isEnd,
        height: height - 0.15 + 0.25 * arch + (bar === 0 ? 0.06 * i : 0),
      });
    });
  });
  return drawLine(random, notes, places, before ? before.line[before.line.length - 1]! : null);
}

/** The same line a step higher or lower in the key, or null where the notes at hand do not allow it. */
function oneStepOn(
  random: Random,
  notes: readonly Degree[],
  line: readonly Degree[],
): readonly Degree[] | null {
  const step = random() < 0.5 ? 1 : -1;
  for (const by of [step, -step]) {
    const moved = line.map((each) => notes[notes.indexOf(each) + by]);
    const isWhole = moved.every(
      (each, i) => each && (each.degree - line[i]!.degree + 7) % 7 === (by + 7) % 7,
    );
    if (isWhole) return moved as readonly Degree[];
  }
  return null;
}

function played(
  { rhythms, line }: Phrase,
  sign: 'open' | 'stopped',
  dynamic: 'p' | 'mf',
  level: Level,
): readonly (readonly EtudeNote[])[] {
  let next = 0;
  return rhythms.map((rhythm, bar) => {
    const music = rhythm.map((quarters, i): EtudeNote => {
      if (quarters < 0) return rest(-quarters);
      const each = note(line[next++]!.written, quarters, sign);
      return bar === 0 && i === 0 ? { ...each, dynamic } : each;
    });
    return level === 1 ? music : slurred(music);
  });
}

/** Slurs each run of short notes with the note it leads to. */
function slurred(bar: readonly EtudeNote[]): readonly EtudeNote[] {
  const music = bar.slice();
  for (let i = 0; i + 1 < music.length; i++) {
    const here = music[i]!;
    const next = music[i + 1]!;
    if (
      !here.written ||
      !next.written ||
      here.slur ||
      next.quarters > here.quarters + 1 ||
      next.quarters >= 2
    )
      continue;
    if (here.quarters <= next.quarters && here.quarters > 0.5) continue;
    music[i] = { ...here, slur: 'start' };
    music[i + 1] = { ...next, slur: 'stop' };
    i += 1;
  }
  return music;
}
