/**
 * Chooses one fingering for every note of a player's line: the path of least cost through the fingerings of all notes.
 *
 * Each fingering costs what it is worse than the note's standard one; each change between quick neighbours costs the
 * fingers it moves; two notes that the hand alone joins must share a tube. The path is exact (Viterbi's algorithm) and
 * linear in notes. Costs are whole numbers and ties go to the fingering ranked first, so that equal passages are
 * fingered alike on every machine. A figure that is repeated at once is planned by itself as a circle, so that every
 * repeat is fingered the same.
 */
import type { Fingering, HandState } from './fingering.ts';
import { joinsByHand, movesHand } from './handMotion.ts';
import { AVOIDED_HARMONICS } from './harmonics.ts';
import type { Step } from './steps.ts';

/** What is known of a note before its fingering is chosen. */
export interface PlannedNote {
  /** Every fingering, the standard one first; the same array for the same demand. Empty when there is none. */
  readonly options: readonly Fingering[];
  readonly state: HandState;
  /** How the player comes to it from the note before; null for the first of the line. */
  readonly step: Pick<Step, 'seconds' | 'joined'> | null;
}

/** Why a fingering other than the standard one was chosen. */
export type ChoiceReason =
  | { readonly kind: 'one-tube'; readonly neighbour: number }
  | { readonly kind: 'one-side'; readonly neighbour: number }
  | { readonly kind: 'fewer-changes'; readonly neighbour: number };

/** The fingering chosen for a note of a line. */
export interface Choice {
  /** Place in the note's options; −1 when it has none. */
  readonly option: number;
  /** `null` for the standard fingering. `neighbour` is a place in the line, from 0. */
  readonly because: ChoiceReason | null;
}

/** One choice for every note of a player's line. */
export function planLine(line: readonly PlannedNote[]): readonly Choice[] {
  const hurries = line.map(hurryOf);
  const chosen = new Array<number>(line.length).fill(-1);
  for (const figure of figuresOf(line, hurries)) planFigure(line, hurries, figure, chosen);
  return chosen.map((option, i) =>
    option > 0 ? { option, because: reasonFor(line, chosen, i) } : PLAIN[option + 1]!,
  );
}

/**
 * What a path through a line costs: the sum that `planLine` makes least, figure by figure.
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
    cost += hurryOf(note) * moves[at]! + broken[at]!;
  });
  return cost;
}

const PLAIN: readonly Choice[] = [
  { option: -1, because: null },
  { option: 0, because: null },
];

/** What changes cost, on one scale. Choices, set so that a line is fingered as players do; each reason stands beside it. */
const COST = {
  /** Leaving the standard fingering needs more than one change of a single valve, and less than two of the thumb. */
  notStandard: 100,
  /** A harmonic that stands badly, or a fingering that is not sure: worse than any change. */
  badHarmonic: 400,
  risky: 600,
  rarerValves: 60,
  /** For each step to a longer tube. */
  longerTube: 10,
  unplayable: 100_000,
  /** A valve down or up, at the quickest. */
  valve: 10,
  /** The thumb: the whole horn changes under the player. */
  side: 90,
  /** Two notes that the hand should join, on tubes that it cannot. More than any fingering costs short of an unplayable one. */
  brokenJoin: 20_000,
} as const;

/** With this long between two notes the fingers change at no cost, in seconds. From memory. */
const UNHURRIED_SECONDS = 0.5;
const HURRY_STEPS = 10;

/** How pressed for time a note is after the one before it: 0 not at all, to HURRY_STEPS. */
function hurryOf({ step }: PlannedNote): number {
  if (!step || step.seconds >= UNHURRIED_SECONDS) return 0;
  return Math.round(HURRY_STEPS * (1 - Math.max(0, step.seconds) / UNHURRIED_SECONDS));
}

function joinedTo(note: PlannedNote): Step['joined'] {
  return note.step ? note.step.joined : null;
}

/** Finds the least path through a figure and writes its options into `chosen`. */
function planFigure(
  line: readonly PlannedNote[],
  hurries: readonly number[],
  figure: Figure,
  chosen: number[],
): void {
  const { from, to, repeatHurry } = figure;
  if (repeatHurry === null) {
    trace(walk(line, hurries, from, to, null), line, from, to, chosen);
    return;
  }
  // A figure that runs into itself: its last note is followed by its first, so each first fingering is tried in turn.
  const firstCosts = fingeringCosts(line[from]!.options);
  let best: Walk | null = null;
  for (let first = 0; first < firstCosts.length; first++) {
    if (best && firstCosts[first]! >= best.cost) continue;
    const closed = walk(line, hurries, from, to, { first, hurry: repeatHurry });
    if (!best || closed.cost < best.cost) best = closed;
  }
  trace(best!, line, from, to, chosen);
}

/** A least path, to be read from its end. */
interface Walk {
  readonly cost: number;
  /** The last note's option. */
  readonly last: number;
  /** For every option of every note, in order, the option of the note before that leads there. */
  readonly whence: Uint16Array;
}

/**
 * Viterbi's algorithm over the notes `from` to `to` (excluded), all with fingerings.
 * @param circle the first note's fixed option, and the hurry with which the figure begins again; null for a plain path
 */
function walk(
  line: readonly PlannedNote[],
  hurries: readonly number[],
  from: number,
  to: number,
  circle: { readonly first: number; readonly hurry: number } | null,
): Walk {
  let places = 0;
  for (let i = from; i < to; i++) places += line[i]!.options.length;
  const whence = new Uint16Array(places);
  let costs = fingeringCosts(line[from]!.options).slice();
  let next: number[] = [];
  if (circle)
    for (let a = 0; a < costs.length; a++) if (a !== circle.first) costs[a] = Number.POSITIVE_INFINITY;
  let place = costs.length;
  for (let i = from + 1; i < to; i++) {
    const own = fingeringCosts(line[i]!.options);
    const { moves, broken } = changesBetween(line[i - 1]!, line[i]!);
    const width = own.length;
    const before = line[i - 1]!.options.length;
    const hurry = hurries[i]!;
    for (let b = 0; b < width; b++) {
      let best = Number.POSITIVE_INFINITY;
      let came = 0;
      for (let a = 0, at = b; a < before; a++, at += width) {
        const cost = costs[a]! + hurry * moves[at]! + broken[at]!;
        if (cost < best) {
          best = cost;
          came = a;
        }
      }
      next[b] = best + own[b]!;
      whence[place++] = came;
    }
    const done = costs;
    costs = next;
    next = done;
  }
  const width = line[to - 1]!.options.length;
  if (circle) {
    const { moves } = changesBetween(line[to - 1]!, line[from]!);
    const firsts = line[from]!.options.length;
    for (let a = 0; a < width; a++) costs[a] = costs[a]! + circle.hurry * moves[a * firsts + circle.first]!;
  }
  let last = 0;
  for (let a = 1; a < width; a++) if (costs[a]! < costs[last]!) last = a;
  return { cost: costs[last]!, last, whence };
}

function trace(
  { last, whence }: Walk,
  line: readonly PlannedNote[],
  from: number,
  to: number,
  chosen: number[],
): void {
  let option = last;
  let place = whence.length;
  for (let i = to - 1; i >= from; i--) {
    chosen[i] = option;
    place -= line[i]!.options.length;
    option = whence[place + option]!;
  }
}

/** What each of a note's fingerings costs on its own; by place in the options. */
function fingeringCosts(options: readonly Fingering[]): readonly number[] {
  const known = FINGERING_COSTS.get(options);
  if (known) return known;
  const standard = shortcomings(options[0]!);
  const costs = options.map((fingering, i) =>
    i === 0 ? 0 : COST.notStandard + i + Math.max(0, shortcomings(fingering) - standard),
  );
  FINGERING_COSTS.set(options, costs);
  return costs;
}

const FINGERING_COSTS = new WeakMap<readonly Fingering[], readonly number[]>();

function shortcomings({ verdict, harmonic, dropCents, tube }: Fingering): number {
  const carrier = dropCents > 0 && tube.side.fingeredNote === 'lower-harmonic' ? harmonic - 1 : harmonic;
  return (
    (verdict === 'impossible' ? COST.unplayable : verdict === 'risky' ? COST.risky : 0) +
    (AVOIDED_HARMONICS.indexOf(carrier) >= 0 ? COST.badHarmonic : 0) +
    (tube.combination.rarer ? COST.rarerValves : 0) +
    COST.longerTube * tube.order
  );
}

/** Costs between two notes, a row for each fingering of the first. */
interface Changes {
  /** What the fingers have to move, for each step of hurry. */
  readonly moves: readonly number[];
  readonly broken: readonly number[];
}

/** A part has few different pairs of notes; each pair's costs are worked out once. */
const CHANGES = new WeakMap<readonly Fingering[], Map<readonly Fingering[], { [joined: string]: Changes }>>();

function changesBetween(before: PlannedNote, after: PlannedNote): Changes {
  let followers = CHANGES.get(before.options);
  if (!followers) {
    followers = new Map();
    CHANGES.set(before.options, followers);
  }
  let pair = followers.get(after.options);
  if (!pair) {
    pair = {};
    followers.set(after.options, pair);
  }
  const kind = joinedTo(after) ?? 'apart';
  const changes = pair[kind] ?? workOutChanges(before, after);
  pair[kind] = changes;
  return changes;
}

function workOutChanges(before: PlannedNote, after: PlannedNote): Changes {
  const moves: number[] = [];
  const broken: number[] = [];
  for (const a of before.options) {
    for (const b of after.options) {
      moves.push(movesBetween(a, b));
      broken.push(holdsTogether(before, a, after, b) ? 0 : COST.brokenJoin);
    }
  }
  return { moves, broken };
}

function holdsTogether(before: PlannedNote, a: Fingering, after: PlannedNote, b: Fingering): boolean {
  const joined = joinedTo(after);
  if (joined === 'tie') return before.state !== after.state || a === b;
  if (joined === null || !movesHand(before.state, after.state)) return true;
  return joinsByHand({ fingering: a, state: before.state }, { fingering: b, state: after.state });
}

function movesBetween(a: Fingering, b: Fingering): number {
  const thumb = a.tube.side === b.tube.side ? 0 : COST.side;
  return (
    (thumb + COST.valve * valvesChanged(a.tube.combination.valves, b.tube.combination.valves)) / HURRY_STEPS
  );
}

function valvesChanged(a: string, b: string): number {
  let changed = 0;
  for (const valve of VALVES) if (a.indexOf(valve) >= 0 !== b.indexOf(valve) >= 0) changed += 1;
  return changed;
}

const VALVES = ['1', '2', '3', '4'] as const;

/** Notes planned together. */
interface Figure {
  readonly from: number;
  /** The first note after it. */
  readonly to: number;
  /** For a figure that is repeated at once, how pressed for time its first note is when it begins again; else null. */
  readonly repeatHurry: number | null;
}

/** Figures of up to this many notes are heard as repeats. A choice: two beats of quick notes and a half again. */
const LONGEST_FIGURE = 12;

/** Cuts a line where a note has no fingering, and around every figure that is repeated at once. */
function figuresOf(line: readonly PlannedNote[], hurries: readonly number[]): Figure[] {
  const figures: Figure[] = [];
  let start = 0;
  for (let i = 0; i <= line.length; i++) {
    if (i < line.length && line[i]!.options.length > 0) continue;
    if (i > start) cutRepeats(line, hurries, start, i, figures);
    start = i + 1;
  }
  return figures;
}

function cutRepeats(
  line: readonly PlannedNote[],
  hurries: readonly number[],
  from: number,
  to: number,
  figures: Figure[],
): void {
  let start = from;
  let i = from;
  while (i < to) {
    const repeated = repeatAt(line, hurries, i, to);
    if (!repeated) {
      i += 1;
      continue;
    }
    if (i > start) figures.push({ from: start, to: i, repeatHurry: null });
    const repeatHurry = hurries[i + repeated.length]!;
    for (let repeat = 0; repeat < repeated.times; repeat++, i += repeated.length)
      figures.push({ from: i, to: i + repeated.length, repeatHurry });
    start = i;
  }
  if (to > start) figures.push({ from: start, to, repeatHurry: null });
}

/** The shortest figure that begins at a note and is repeated at once, or null. One note repeated is no figure. */
function repeatAt(
  line: readonly PlannedNote[],
  hurries: readonly number[],
  start: number,
  end: number,
): { length: number; times: number } | null {
  if (joinedTo(line[start]!)) return null;
  for (let length = 2; length <= LONGEST_FIGURE && start + 2 * length <= end; length++) {
    if (isOneNote(line, start, length)) continue;
    let same = 0;
    while (start + same + length < end && isRepeat(line, hurries, start + same, length, same === 0))
      same += 1;
    let times = Math.floor(same / length) + 1;
    // What hangs on the last repeat is planned with it.
    if (start + times * length < end && joinedTo(line[start + times * length]!)) times -= 1;
    if (times > 1) return { length, times };
  }
  return null;
}

/** True when the note `length` later is the same demand, and hangs the same on the note before it. */
function isRepeat(
  line: readonly PlannedNote[],
  hurries: readonly number[],
  i: number,
  length: number,
  isFirst: boolean,
): boolean {
  const a = line[i]!;
  const b = line[i + length]!;
  if (a.options !== b.options || a.state !== b.state) return false;
  return isFirst ? joinedTo(b) === null : hurries[i] === hurries[i + length] && joinedTo(a) === joinedTo(b);
}

function isOneNote(line: readonly PlannedNote[], start: number, length: number): boolean {
  for (let i = start + 1; i < start + length; i++)
    if (line[i]!.options !== line[start]!.options) return false;
  return true;
}

/** Names the neighbour that made a note leave its standard fingering. */
function reasonFor(line: readonly PlannedNote[], chosen: readonly number[], i: number): ChoiceReason {
  const note = line[i]!;
  const own = note.options[chosen[i]!]!;
  const standard = note.options[0]!;
  const neighbours = [i - 1, i + 1].filter((at) => chosen[at] !== undefined && chosen[at]! >= 0);
  for (const at of neighbours) {
    const joined = joinedTo(line[Math.max(i, at)]!);
    if (joined && (joined === 'tie' || movesHand(note.state, line[at]!.state)))
      return { kind: 'one-tube', neighbour: at };
  }
  for (const at of neighbours) {
    const { side } = line[at]!.options[chosen[at]!]!.tube;
    if (side === own.tube.side && side !== standard.tube.side) return { kind: 'one-side', neighbour: at };
  }
  return { kind: 'fewer-changes', neighbour: neighbours[0] ?? i };
}
