/** What every étude owes its player. The composer keeps to these, and the tests try them on études that break them. */
import { pitchCents } from '../pitch/pitch.ts';
import type { Examination } from '../rules/examine.ts';
import type { Fingering } from '../stopping/fingering.ts';
import { type Bar, type EtudeNote, mostOfOneBar, quartersOf } from './bar.ts';
import {
  asksAndAnswers,
  endsOnFullLine,
  goesAwayAndComesHome,
  goesOn,
  goesSomewhere,
  grows,
  isHeardOpen,
  isHeldOver,
  movesOn,
  sings,
} from './interest.ts';
import type { Key } from './key.ts';
import { scaleBetween } from './key.ts';
import { BEND_TUBES } from './kinds/bend.ts';
import type { KindOfEtude } from './kinds/kind.ts';
import type { Level, LevelPlan } from './levels.ts';
import type { Bend } from './tone.ts';

/** What a law looks at. */
export interface Case {
  readonly kind: KindOfEtude;
  readonly key: Key;
  readonly level: Level;
  readonly plan: LevelPlan;
  readonly bars: readonly Bar[];
  /** How long a quarter lasts, in seconds. */
  readonly quarterSeconds: number;
  /** The least time for a change of the hand, in seconds. */
  readonly handSeconds: number;
  /** True on a horn whose hand makes so few notes that it has to leap, and to say them again. */
  readonly isScant: boolean;
  /** The bends at hand. */
  readonly bends: readonly Bend[];
  /** True on a horn without valves. */
  readonly isNatural: boolean;
  /** True where a range was asked for that has more risky notes than the level allows. */
  readonly isDaring: boolean;
  readonly examination: Examination;
}

/** A law: its name, and whether a case keeps it. */
export interface Law {
  readonly id: string;
  /** What breaking it makes of the étude. */
  readonly fault: 'unplayable' | 'wrong' | 'dull';
  /** True where a horn is forgiven that makes too few notes to keep it always. */
  readonly forgivesScant?: boolean;
  keeps(it: Case): boolean;
}

/** The longest a player can be asked to play on without a breath, in seconds. From memory: a dozen, less with the hand in. */
const LONGEST_BREATH_SECONDS = 12.001;
/** On a page no bar comes more often than this, unless repeating it is the exercise. */
const MOST_TIMES = 2;
/** Bars of an étude that make a page by themselves. */
const PAGE_BARS = 16;

export const LAWS: readonly Law[] = [
  {
    id: 'bars-are-full',
    fault: 'wrong',
    keeps: ({ bars }) => bars.every(({ notes, meter }) => Math.abs(sum(notes) - quartersOf(meter)) < 1e-6),
  },
  { id: 'the-hand-has-its-time', fault: 'wrong', keeps: handHasTime },
  {
    id: 'no-bar-thrice',
    fault: 'dull',
    keeps: ({ kind, bars, isNatural }) => {
      // On a natural horn the echo has the same notes under the same hand.
      const often = kind.kind === 'phrase' && isNatural ? 2 * MOST_TIMES : MOST_TIMES;
      return kind.isRepetition === true || mostOfOneBar(bars) <= often * Math.max(1, bars.length / PAGE_BARS);
    },
  },
  { id: 'every-change-is-signed', fault: 'wrong', keeps: isSigned },
  {
    id: 'room-below-the-staff',
    fault: 'wrong',
    // A fermata stands there too.
    keeps: ({ bars }) =>
      eventsOf(bars).every(({ fermata, dynamic, hairpin }) => !(fermata && dynamic && hairpin)),
  },
  { id: 'ties-hold-one-tone', fault: 'wrong', keeps: tiesHold },
  {
    id: 'long-tones-are-held',
    fault: 'dull',
    keeps: ({ kind, level, bars, quarterSeconds }) =>
      kind.kind !== 'seal' || level === 1 || isHeldOver(bars, level, quarterSeconds),
  },
  { id: 'slurs-keep-the-hand-still', fault: 'wrong', keeps: slursArePlain },
  {
    id: 'moves-as-a-singer',
    fault: 'dull',
    keeps: ({ bars }) =>
      neighbours(bars).every(
        ([a, b]) =>
          !a.written || !b.written || Math.abs(pitchCents(a.written) - pitchCents(b.written)) <= 1200,
      ),
  },
  {
    id: 'comes-home',
    fault: 'wrong',
    keeps: ({ kind, key, bars }) => {
      const notes = eventsOf(bars).filter(({ written }) => written !== null);
      const last = notes[notes.length - 1]?.written;
      return (
        kind.needs === 'bends' ||
        (last !== undefined && last !== null && scaleBetween(key, last, last)[0]?.degree === 0)
      );
    },
  },
  { id: 'breathes', fault: 'wrong', keeps: breathes },
  { id: 'goes-somewhere', fault: 'dull', keeps: ({ kind, bars }) => goesSomewhere(kind.kind, bars) },
  {
    id: 'moves-on',
    fault: 'dull',
    forgivesScant: true,
    keeps: ({ kind, bars, isNatural }) =>
      (kind.kind !== 'scale' && !kind.isByPairs) || movesOn(bars, !kind.isByPairs, isNatural),
  },
  {
    id: 'heard-open-first',
    fault: 'wrong',
    keeps: ({ kind, bars, isNatural }) => isNatural || kind.kind !== 'match' || isHeardOpen(bars),
  },
  {
    id: 'scales-go-on',
    fault: 'dull',
    keeps: ({ kind, bars }) => kind.kind !== 'scale' || goesOn(bars),
  },
  {
    id: 'asks-and-answers',
    fault: 'dull',
    forgivesScant: true,
    keeps: ({ kind, key, bars, plan, isScant }) =>
      kind.kind !== 'phrase' || asksAndAnswers(key, bars, plan.isMixed, isScant),
  },
  {
    id: 'ends-on-a-full-line',
    fault: 'dull',
    keeps: ({ kind, bars }) => kind.kind !== 'phrase' || endsOnFullLine(bars),
  },
  {
    id: 'sings',
    fault: 'dull',
    forgivesScant: true,
    keeps: ({ kind, key, bars, isScant }) => kind.kind !== 'phrase' || sings(key, bars, isScant),
  },
  {
    id: 'goes-away-and-comes-home',
    fault: 'dull',
    keeps: ({ kind, key, bars, plan, isNatural, isScant }) =>
      isNatural || isScant || !plan.isMixed || goesAwayAndComesHome(kind.kind, key, bars),
  },
  {
    id: 'nothing-impossible',
    fault: 'unplayable',
    keeps: ({ examination }) =>
      examination.findings.every(
        ({ severity, id }) => severity !== 'impossible' && id !== 'hand-too-quick',
      ) && examination.notes.every(({ verdict }) => verdict !== 'impossible'),
  },
  {
    id: 'sure-by-default',
    fault: 'unplayable',
    keeps: ({ examination: { notes }, plan, isDaring }) =>
      isDaring || notes.filter(({ verdict }) => verdict !== 'sure').length <= plan.riskyShare * notes.length,
  },
  { id: 'bends-grow', fault: 'wrong', keeps: bendsGrow },
  { id: 'bends-try-the-tubes', fault: 'dull', keeps: bendsTryTubes },
];

/** The laws that a case breaks. */
export function brokenLaws(it: Case): readonly Law[] {
  return LAWS.filter((law) => !(it.isScant && law.forgivesScant) && !law.keeps(it));
}

function eventsOf(bars: readonly Bar[]): readonly EtudeNote[] {
  return ([] as EtudeNote[]).concat(...bars.map(({ notes }) => notes));
}

function neighbours(bars: readonly Bar[]): readonly (readonly [EtudeNote, EtudeNote])[] {
  const events = eventsOf(bars);
  return events.slice(1).map((each, i) => [events[i]!, each] as const);
}

function sum(notes: readonly EtudeNote[]): number {
  return notes.reduce((all, { quarters }) => all + quarters, 0);
}

/** The hand changes where its level lets it: after a note that is long enough, or over a rest, and on the beat it may. */
function handHasTime({ bars, plan, quarterSeconds, handSeconds }: Case): boolean {
  let before: EtudeNote | null = null;
  let gone = 0;
  let hasRested = false;
  for (const bar of bars) {
    let at = 0;
    for (const each of bar.notes) {
      if (each.written) {
        if (before && before.hand !== each.hand) {
          const isLate = gone * quarterSeconds < handSeconds - 1e-6;
          const isShort = !hasRested && gone < plan.changeAfterQuarters - 1e-6;
          const beats = plan.changeGridBeats > 0 ? at / (plan.changeGridBeats * bar.meter.beatQuarters) : 0;
          if (isLate || isShort || Math.abs(beats - Math.round(beats)) > 1e-6) return false;
        }
        before = each;
        gone = 0;
        hasRested = false;
      } else hasRested = true;
      gone += each.quarters;
      at += each.quarters;
    }
  }
  return true;
}

function isSigned({ bars }: Case): boolean {
  let before: EtudeNote['hand'] = null;
  let isHeld = false;
  return eventsOf(bars).every(({ written, hand, sign, ties }) => {
    if (!written) return sign === null && hand === null;
    const isNeeded = !isHeld && (hand === 'stopped' || (hand === 'open' && before !== 'open'));
    before = hand;
    isHeld = ties;
    return sign === (isNeeded ? hand : null);
  });
}

/** What is tied is one note under one hand, without a rest, a breath, a sign or a new beginning within it. */
function tiesHold({ bars }: Case): boolean {
  return neighbours(bars).every(
    ([a, b]) =>
      !a.ties ||
      (a.written !== null &&
        b.written !== null &&
        pitchCents(a.written) === pitchCents(b.written) &&
        a.hand === b.hand &&
        !a.breath &&
        !a.fermata &&
        b.sign === null &&
        b.attack === null),
  );
}

function slursArePlain({ bars }: Case): boolean {
  let under: EtudeNote | null = null;
  for (const each of eventsOf(bars)) {
    if (under && (!each.written || each.hand !== under.hand)) return false;
    if (under && !under.ties && pitchCents(each.written!) === pitchCents(under.written!)) return false;
    if (each.slur && each.hand === 'half-stopped') return false;
    if (each.slur === 'start') under = each;
    else if (under) under = each.slur === 'stop' ? null : each;
    else if (each.slur === 'stop') return false;
  }
  return under === null;
}

/** The bends as they are fingered: at each closed note, once for each time it comes after another. */
function bendsOf({ examination }: Case): readonly Fingering[] {
  const bends: Fingering[] = [];
  for (const { fingering, reading } of examination.notes)
    if (reading.state !== 'open' && fingering && fingering !== bends[bends.length - 1]) bends.push(fingering);
  return bends;
}

function bendsGrow(it: Case): boolean {
  // The last two bars of every eight come back to one of them.
  return it.kind.needs !== 'bends' || it.isNatural || grows(bendsOf(it).map(({ dropCents }) => dropCents));
}

function bendsTryTubes(it: Case): boolean {
  if (it.kind.needs !== 'bends' || it.isNatural || it.bars.length < BEND_TUBES) return true;
  const tubes = new Set(it.bends.map(({ side, valves }) => `${side} ${valves}`)).size;
  return new Set(bendsOf(it).map(({ printed }) => printed)).size >= Math.min(BEND_TUBES, tubes);
}

function breathes({ bars, quarterSeconds }: Case): boolean {
  let seconds = 0;
  for (const { written, quarters, breath } of eventsOf(bars)) {
    seconds = written ? seconds + quarters * quarterSeconds : 0;
    if (seconds > LONGEST_BREATH_SECONDS) return false;
    if (breath) seconds = 0;
  }
  return true;
}
