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

/** How likely a step of so many semitones is; anything wider than the list is not taken. */
const STEP_WEIGHTS = [0.05, 1, 1, 0.7, 0.6, 0.3, 0.03, 0.1] as const;

/** How much a note outside the harmony weighs against one in it. */
const PASSING_WEIGHT = 0.35;

/**
 * Draws a line. Every draw looks ahead to the end, so that a line never runs into a corner. Where the notes at hand
 * cannot serve the harmony (a horn that stops only a few), the harmony gives way.
 * @param notes the notes at hand, lowest first; at least one
 * @param from the note before the line, or null at a beginning
 * @returns a note for each place
 */
export function drawLine(
  random: Random,
  notes: readonly Degree[],
  places: readonly Place[],
  from: Degree | null,
): readonly Degree[] {
  const line = tryLine(random, notes, places, from);
  if (line.length > 0) return line;
  const loose = places.map((place) => ({ ...place, firm: false }));
  const looser = tryLine(random, notes, loose, from);
  return looser.length > 0 ? looser : tryLine(random, notes, loose, null);
}

function tryLine(
  random: Random,
  notes: readonly Degree[],
  places: readonly Place[],
  from: Degree | null,
): readonly Degree[] {
  // ahead[i][j]: how much all continuations weigh from note j at place i on.
  const ahead: number[][] = places.map(() => []);
  for (let i = places.length - 1; i >= 0; i--) {
    ahead[i] = notes.map((note, j) => {
      const here = noteWeight(places[i]!, note, notes.length > 1 ? j / (notes.length - 1) : 0.5);
      if (i === places.length - 1) return here;
      return here * notes.reduce((sum, next, k) => sum + stepWeight(note, next) * ahead[i + 1]![k]!, 0);
    });
  }
  const line: Degree[] = [];
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
  // The leading note goes home; what it does instead, it does within the usual steps too.
  const leads = from.degree !== 6 || to.degree === 0 || to.degree === 4 ? 1 : 0.04;
  return leads * (STEP_WEIGHTS[semitonesBetween(from.written, to.written)] ?? 0);
}

function noteWeight({ chord, firm, height }: Place, { degree }: Degree, atHeight: number): number {
  const inChord = chord.indexOf(degree) >= 0;
  if (firm && !inChord) return 0;
  return (inChord ? 1 : PASSING_WEIGHT) * Math.exp(-(((atHeight - height) / 0.3) ** 2));
}

function semitonesBetween(a: Pitch, b: Pitch): number {
  return Math.abs(Math.round((pitchCents(a) - pitchCents(b)) / 100));
}
