/** A melodic line: one note for each place, drawn so that it moves as a singer would and arrives where it must. */
import { type Pitch, pitchCents } from '../pitch/pitch.ts';
import type { Degree } from './key.ts';
import { pickWeighted, type Random } from './random.ts';

/** What is wanted at one place of a line. */
export interface Place {
  /** Scale degrees that belong to the harmony here; the line may pass through others unless the place is firm. */
  readonly chord: readonly number[];
  /** True where only a note of the chord will do: strong beats and ends. */
  readonly firm: boolean;
  /** How high the line should lie here, from 0 (bottom of the notes) to 1 (top). */
  readonly height: number;
}

/** How likely a step of so many semitones is. */
const STEP_WEIGHTS = [0.01, 1, 1, 0.6, 0.5, 0.3, 0.01, 0.12] as const;
/** Anything wider is taken only by a horn that has nothing nearer, and never more than an octave where there is a choice. */
const WIDER_WEIGHT = 1e-6;
const WIDEST_WEIGHT = 1e-15;

/** There and back and there again goes nowhere. */
const TRILL_WEIGHT = 0.01;

/** How much a note outside the harmony weighs against one in it. */
const PASSING_WEIGHT = 0.35;

/** Draws a line that comes from a note, or begins where that is null: a note for each place. */
export type LineDrawer<Note> = (random: Random, from: Note | null) => readonly Note[];

/**
 * What draws lines through some places, one like the other or not. Every draw looks ahead to the end, so that a line
 * never runs into a corner. Where the notes at hand cannot serve the harmony (a horn that stops only a few), the harmony
 * gives way.
 * @param notes the notes at hand, lowest first; at least one
 */
export function lineDrawer<Note extends Degree>(
  notes: readonly Note[],
  places: readonly Place[],
): LineDrawer<Note> {
  const steps = stepsBetween(notes);
  const firm = aheadOf(notes, places, steps);
  let loose: Ahead | null = null;
  return (random, from) => {
    const first = from && (steps[notes.indexOf(from)] ?? notes.map((note) => stepWeight(from, note)));
    const line = drawn(random, firm, steps, first);
    if (line) return line.map((at) => notes[at]!);
    if (!loose)
      loose = aheadOf(
        notes,
        places.map((place) => ({ ...place, firm: false })),
        steps,
      );
    return (drawn(random, loose, steps, first) ?? []).map((at) => notes[at]!);
  };
}

/** How likely each note follows each, by their places among the notes. */
type Steps = readonly (readonly number[])[];

function stepsBetween(notes: readonly Degree[]): Steps {
  const known = STEPS.get(notes);
  if (known) return known;
  const steps = notes.map((note) => notes.map((next) => stepWeight(note, next)));
  STEPS.set(notes, steps);
  return steps;
}

/** An étude draws line after line through the same notes. */
const STEPS = new WeakMap<readonly Degree[], Steps>();

/** Draws one line. @param from the note before it, or null at a beginning */
export function drawLine<Note extends Degree>(
  random: Random,
  notes: readonly Note[],
  places: readonly Place[],
  from: Note | null,
): readonly Note[] {
  return lineDrawer(notes, places)(random, from);
}

/** Lines drawn at most before one that moves too little is taken. */
const DRAWS = 16;

/** Draws a line that moves over several notes and from each to another, where it can. @param fewest different notes, at least */
export function drawMovingLine<Note extends Degree>(
  random: Random,
  notes: readonly Note[],
  places: readonly Place[],
  from: Note | null,
  fewest: number,
): readonly Note[] {
  const wanted = Math.min(fewest, notes.length);
  const draw = lineDrawer(notes, places);
  let best: readonly Note[] = [];
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < DRAWS && least > 0; i++) {
    const line = draw(random, from);
    const repeats = line.filter((note, k) => k > 0 && note === line[k - 1]).length;
    const lack = repeats + Math.max(0, wanted - new Set(line).size);
    if (lack < least) [best, least] = [line, lack];
  }
  return best;
}

/** How much all continuations weigh from each note on, place by place. */
type Ahead = readonly (readonly number[])[];

function aheadOf(notes: readonly Degree[], places: readonly Place[], steps: Steps): Ahead {
  const ahead: number[][] = places.map(() => []);
  for (let i = places.length - 1; i >= 0; i--) {
    const after = ahead[i + 1];
    for (let j = 0; j < notes.length; j++) {
      const here = noteWeight(places[i]!, notes[j]!, notes.length > 1 ? j / (notes.length - 1) : 0.5);
      let onward = after ? 0 : 1;
      if (after && here > 0) for (let k = 0; k < notes.length; k++) onward += steps[j]![k]! * after[k]!;
      ahead[i]!.push(here * onward);
    }
  }
  return ahead;
}

/**
 * One line by the places of its notes among those at hand, or null where nothing weighs anything. It is drawn again and
 * again until it sings, so it makes nothing but the line.
 * @param first how likely each note follows the one before the line; null where it begins
 */
function drawn(
  random: Random,
  ahead: Ahead,
  steps: Steps,
  first: readonly number[] | null,
): readonly number[] | null {
  const line: number[] = [];
  const weights: number[] = [];
  for (let i = 0; i < ahead.length; i++) {
    const onward = ahead[i]!;
    const step = i > 0 ? steps[line[i - 1]!]! : first;
    const back = i > 2 && line[i - 1] === line[i - 3] ? line[i - 2]! : -1;
    for (let j = 0; j < onward.length; j++)
      weights[j] = onward[j]! * (step ? step[j]! : 1) * (j === back ? TRILL_WEIGHT : 1);
    const at = pickWeighted(random, weights);
    if (at < 0) return null;
    line.push(at);
  }
  return line;
}

function stepWeight(from: Degree, to: Degree): number {
  const semitones = semitonesBetween(from.written, to.written);
  // The leading note goes home; what it does instead, it does within the usual steps too.
  const leads = from.degree !== 6 || to.degree === 0 || to.degree === 4 ? 1 : 0.04;
  // From the sixth to the raised seventh of a minor key nobody sings.
  const sings = semitones === 3 && Math.abs(from.degree - to.degree) === 1 ? 0.01 : 1;
  return leads * sings * (STEP_WEIGHTS[semitones] ?? (semitones <= 12 ? WIDER_WEIGHT : WIDEST_WEIGHT));
}

function noteWeight({ chord, firm, height }: Place, { degree }: Degree, atHeight: number): number {
  const inChord = chord.indexOf(degree) >= 0;
  if (firm && !inChord) return 0;
  return (inChord ? 1 : PASSING_WEIGHT) * Math.exp(-(((atHeight - height) / 0.3) ** 2));
}

function semitonesBetween(a: Pitch, b: Pitch): number {
  return Math.abs(Math.round((pitchCents(a) - pitchCents(b)) / 100));
}
