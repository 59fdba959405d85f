/**
 * Chooses one fingering for every note of a player's line: the path of least cost through the fingerings of all notes.
 *
 * Each fingering costs what it is worse than the note's standard one; each change between quick neighbours costs the
 * fingers it moves; two notes that the hand alone joins must share a tube. The path is exact (Viterbi's algorithm) and
 * linear in notes. Costs are whole numbers and ties go to the fingering ranked first, so that equal passages are
 * fingered alike on every machine. A figure that is repeated at once is planned by itself as a circle, so that every
 * repeat is fingered the same.
 */
import { movesHand } from '../part/handMotion.ts';
import { changesBetween, fingeringCosts, hangsOnBefore, type PlannedNote } from './pathCost.ts';
import { type Figure, figuresOf } from './repeatedFigures.ts';

/** Why a fingering other than the standard one was chosen. */
export interface ChoiceReason {
  readonly kind: 'one-tube' | 'one-side' | 'fewer-changes';
  /** Place in the line, from 0, of the note that gave the reason. */
  readonly neighbour: number;
}

/** The fingering chosen for a note of a line. */
export interface Choice {
  /** Place in the note's options; −1 when it has none. */
  readonly option: number;
  /** `null` for the standard fingering. */
  readonly because: ChoiceReason | null;
}

/** One choice for every note of a player's line. */
export function planLine(line: readonly PlannedNote[]): readonly Choice[] {
  const chosen = new Array<number>(line.length).fill(-1);
  for (const figure of figuresOf(line)) planFigure(line, figure, chosen);
  return chosen.map((option, i) =>
    option > 0 ? { option, because: reasonFor(line, chosen, i) } : PLAIN[option + 1]!,
  );
}

const PLAIN: readonly Choice[] = [
  { option: -1, because: null },
  { option: 0, because: null },
];

/** Finds the least path through a figure and writes its options into `chosen`. */
function planFigure(line: readonly PlannedNote[], figure: Figure, chosen: number[]): void {
  const { from, to, repeatHurry } = figure;
  if (repeatHurry === null) {
    planPath(line, from, to, chosen);
    return;
  }
  // A figure that runs into itself: its last note is followed by its first, so each first fingering is tried in turn.
  const firstCosts = fingeringCosts(line[from]!.options);
  let best: Walk | null = null;
  for (let first = 0; first < firstCosts.length; first++) {
    if (best && firstCosts[first]! >= best.cost) continue;
    const closed = walk(line, from, to, { first, hurry: repeatHurry });
    if (!best || closed.cost < best.cost) best = closed;
  }
  trace(best!, line, from, to, chosen);
}

/** A path falls into paths of their own where a note does not hang on the one before it. */
function planPath(line: readonly PlannedNote[], from: number, to: number, chosen: number[]): void {
  let start = from;
  for (let i = from + 1; i <= to; i++) {
    if (i < to && hangsOnBefore(line[i]!)) continue;
    // By itself a note has its standard fingering, which costs nothing.
    if (i === start + 1) chosen[start] = 0;
    else trace(walk(line, start, i, null), line, start, i, chosen);
    start = i;
  }
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
    const { hurry } = line[i]!;
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

/** Names the neighbour that made a note leave its standard fingering. */
function reasonFor(line: readonly PlannedNote[], chosen: readonly number[], i: number): ChoiceReason {
  const note = line[i]!;
  const own = note.options[chosen[i]!]!;
  const standard = note.options[0]!;
  const neighbours = [i - 1, i + 1].filter((at) => chosen[at] !== undefined && chosen[at]! >= 0);
  for (const at of neighbours) {
    const { joined } = line[Math.max(i, at)]!;
    if (joined && (joined === 'tie' || movesHand(note.state, line[at]!.state)))
      return { kind: 'one-tube', neighbour: at };
  }
  for (const at of neighbours) {
    const { side } = line[at]!.options[chosen[at]!]!.tube;
    if (side === own.tube.side && side !== standard.tube.side) return { kind: 'one-side', neighbour: at };
  }
  return { kind: 'fewer-changes', neighbour: neighbours[0] ?? i };
}
