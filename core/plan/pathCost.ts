/** What it costs a player to finger a line one way rather than another: the sum that planning makes least. */

import { type HandWay, handWay, movesHand } from '../part/handMotion.ts';
import type { Step } from '../part/steps.ts';
import type { Fingering, HandState } from '../stopping/fingering.ts';

/** What is known of a note before its fingering is chosen. */
export interface PlannedNote {
  /** Every fingering, the standard one first; the same array for the same demand. Empty when there is none. */
  readonly options: readonly Fingering[];
  readonly state: HandState;
  /** What joins it to the note before; null for nothing, and for the first of the line. */
  readonly joined: Step['joined'];
  /** How pressed for time the player is after the note before: 0 not at all, as at the first of the line, to HURRY_STEPS. */
  readonly hurry: number;
}

/**
 * What a path through a line costs: its fingerings and the changes between them.
 * @param options the option taken for each note; every note has fingerings
 */
export function pathCost(line: readonly PlannedNote[], options: readonly number[]): number {
  let cost = 0;
  line.forEach((note, i) => {
    const option = options[i]!;
    cost += fingeringCosts(note.options)[option]!;
    if (i === 0) return;
    const { moves, broken } = changesBetween(line[i - 1]!, note);
    const at = options[i - 1]! * note.options.length + option;
    cost += note.hurry * moves[at]! + broken[at]!;
  });
  return cost;
}

/** What changes cost, on one scale. Choices, set so that a line is fingered as players do; each reason stands beside it. */
const COST = {
  /** Leaving the standard fingering needs more than one change of a single valve, and less than two of the thumb. */
  notStandard: 100,
  /** A fingering that is not sure: worse than any change. */
  risky: 600,
  /** A harmonic that stands badly, where the standard one does not: worse than all of the above and below together. */
  badHarmonic: 5_000,
  rarerValves: 60,
  /** A closed note on another side of the horn than its standard one: rather two open notes beside it leave theirs. */
  closedElsewhere: 200,
  /** For each step to a tube further from the open one. */
  longerTube: 10,
  unplayable: 100_000,
  /** A valve down or up, at the quickest. */
  valve: 10,
  /** The thumb: the whole horn changes under the player. */
  side: 90,
  /** Two notes that the hand should join, on tubes that it cannot. More than any fingering costs short of an unplayable one. */
  brokenJoin: 20_000,
  /** A join that the hand may miss, like a fingering that is not sure. */
  riskyJoin: 600,
} as const;

/** With this long between two notes the fingers change at no cost, in seconds. From memory. */
const UNHURRIED_SECONDS = 0.5;
const HURRY_STEPS = 10;

/** How pressed for time a player is who has so long from one note to the next: 0 not at all, to HURRY_STEPS. */
export function hurryIn(seconds: number): number {
  if (seconds >= UNHURRIED_SECONDS) return 0;
  return Math.round(HURRY_STEPS * (1 - Math.max(0, seconds) / UNHURRIED_SECONDS));
}

/** False where changing from the note before costs nothing: the player has time, and nothing joins the two. */
export function hangsOnBefore({ joined, hurry }: PlannedNote): boolean {
  return hurry > 0 || joined !== null;
}

/** What each of a note's fingerings costs on its own; by place in the options. */
export function fingeringCosts(options: readonly Fingering[]): readonly number[] {
  const known = FINGERING_COSTS.get(options);
  if (known) return known;
  const standard = options[0]!;
  const costs = options.map((fingering, i) =>
    i === 0
      ? 0
      : COST.notStandard +
        i +
        Math.max(0, shortcomings(fingering) - shortcomings(standard)) +
        (standard.standsWell && !fingering.standsWell ? COST.badHarmonic : 0) +
        (standard.dropCents > 0 && fingering.tube.side !== standard.tube.side ? COST.closedElsewhere : 0),
  );
  FINGERING_COSTS.set(options, costs);
  return costs;
}

const FINGERING_COSTS = new WeakMap<readonly Fingering[], readonly number[]>();

function shortcomings({ verdict, tube }: Fingering): number {
  return (
    (verdict === 'impossible' ? COST.unplayable : verdict === 'risky' ? COST.risky : 0) +
    (tube.combination.rarer ? COST.rarerValves : 0) +
    COST.longerTube * tube.order
  );
}

/** Costs between two notes, a row for each fingering of the first. */
export interface Changes {
  /** What the fingers have to move, for each step of hurry. */
  readonly moves: readonly number[];
  readonly broken: readonly number[];
}

/** A part has few different pairs of notes; each pair's costs are worked out once. */
const CHANGES = new WeakMap<readonly Fingering[], Map<readonly Fingering[], Map<string, Changes>>>();

/** The costs between two notes that follow one another. */
export function changesBetween(before: PlannedNote, after: PlannedNote): Changes {
  let followers = CHANGES.get(before.options);
  if (!followers) {
    followers = new Map();
    CHANGES.set(before.options, followers);
  }
  let pair = followers.get(after.options);
  if (!pair) {
    pair = new Map();
    followers.set(after.options, pair);
  }
  const kind = after.joined ?? 'apart';
  const changes = pair.get(kind) ?? workOutChanges(before, after);
  pair.set(kind, changes);
  return changes;
}

function workOutChanges(before: PlannedNote, after: PlannedNote): Changes {
  const moves: number[] = [];
  const broken: number[] = [];
  const isApart = after.joined === null;
  const valvesAfter = after.options.map(valvesDown);
  for (const a of before.options) {
    const valves = valvesDown(a);
    after.options.forEach((b, i) => {
      const thumb = a.tube.side === b.tube.side ? 0 : COST.side;
      moves.push((thumb + COST.valve * bitsIn(valves ^ valvesAfter[i]!)) / HURRY_STEPS);
      broken.push(isApart ? 0 : joinCost(before, a, after, b));
    });
  }
  return { moves, broken };
}

function joinCost(before: PlannedNote, a: Fingering, after: PlannedNote, b: Fingering): number {
  const { joined } = after;
  if (joined === 'tie') return before.state !== after.state || a === b ? 0 : COST.brokenJoin;
  if (!movesHand(before.state, after.state)) return 0;
  const way = handWay({ fingering: a, state: before.state }, { fingering: b, state: after.state });
  return way === null ? COST.brokenJoin : WAY_COSTS[way];
}

const WAY_COSTS: { readonly [way in HandWay]: number } = { bends: 0, slips: 0, 'may-slip': COST.riskyJoin };

/** The valves of a fingering, a bit for each: each is compared with dozens of others. */
function valvesDown({ tube: { combination } }: Fingering): number {
  let down = VALVES_DOWN.get(combination.valves);
  if (down === undefined) {
    down = VALVES.reduce((bits, valve, i) => bits | (combination.valves.indexOf(valve) >= 0 ? 1 << i : 0), 0);
    VALVES_DOWN.set(combination.valves, down);
  }
  return down;
}

const VALVES = ['1', '2', '3', '4', '5', '6'] as const;
const VALVES_DOWN = new Map<string, number>();

function bitsIn(bits: number): number {
  let count = 0;
  for (let left = bits; left > 0; left &= left - 1) count += 1;
  return count;
}
