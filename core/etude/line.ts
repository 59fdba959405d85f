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
const STEP_WEIGHTS = [0.04, 1, 1, 0.6, 0.5, 0.3, 0.01, 0.12] as const;
/** Anything wider is taken only by a horn that has nothing nearer, and never more than an octave where there is a choice. */
const WIDER_WEIGHT = 1e-6;
const WIDEST_WEIGHT = 1e-15;

/** How much a note outside the harmony weighs against one in it. */
const PASSING_WEIGHT = 0.35;

/**
 * Draws a line. Every draw looks ahead to the end, so that a line never runs into a corner. Where the notes at hand
 * cannot serve the harmony (a horn that stops only a few), the harmony gives way.
 * @param notes the notes at hand, lowest first; at least one
 * @param from the note before the line, or null at a beginning
 * @returns a note for each place
 */
export function drawLine<Note extends Degree>(
  random: Random,
  notes: readonly Note[],
  places: readonly Place[],
  from: Note | null,
): readonly Note[] {
  const line = tryLine(random, notes, places, from);
  if (line.length > 0) return line;
  const loose = places.map((place) => ({ ...place, firm: false }));
  return tryLine(random, notes, loose, from);
}

/** Lines drawn at most before one with too few different notes is taken. */
const DRAWS = 16;

/** Draws a line that moves over several notes, where it can. @param fewest different notes, at least */
export function drawMovingLine<Note extends Degree>(
  random: Random,
  notes: readonly Note[],
  places: readonly Place[],
  from: Note | null,
  fewest: number,
): readonly Note[] {
  let best: readonly Note[] = [];
  for (let draw = 0; draw < DRAWS && new Set(best).size < Math.min(fewest, notes.length); draw++) {
    const line = drawLine(random, notes, places, from);
    if (draw === 0 || new Set(line).size > new Set(best).size) best = line;
  }
  return best;
}

function tryLine<Note extends Degree>(
  random: Random,
  notes: readonly Note[],
  places: readonly Place[],
  from: Note | null,
): readonly Note[] {
  const steps = notes.map((note) => notes.map((next) => stepWeight(note, next)));
  // ahead[i][j]: how much all continuations weigh from note j at place i on.
  const ahead: number[][] = places.map(() => []);
  for (let i = places.length - 1; i >= 0; i--) {
    ahead[i] = notes.map((note, j) => {
      const here = noteWeight(places[i]!, note, notes.length > 1 ? j / (notes.length - 1) : 0.5);
      if (i === places.length - 1 || here === 0) return here;
      return here * notes.reduce((sum, _, k) => sum + steps[j]![k]! * ahead[i + 1]![k]!, 0);
    });
  }
  const line: Note[] = [];
  for (const weights of ahead) {
    const before = line[line.length - 1] ?? from;
    const at = pickWeighted(
      random,
      weights.map((weight, j) => (before ? weight * stepWeight(before, notes[j]!) : weight)),
    );
    if (at < 0) return [];
    line.push(notes[at]!);
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
