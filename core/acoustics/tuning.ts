/** Tuning a horn: the length of cylinder that puts its open notes where they belong. */
import { SOUND_SPEED } from './air.ts';
import { fixedLength, type HornBore, hornSections } from './hornShape.ts';
import { resonances } from './resonances.ts';

/** Harmonics whose median is tuned to the series; the 1st and 2nd of a brass instrument are not part of it. */
const LOWEST_TUNED = 3;
const HIGHEST_TUNED = 16;

/** The slide is set this close, in cents. */
const TOLERANCE_CENTS = 0.01;

/** Far more moves of the slide than it takes: each leaves about a tenth of the error. */
const MOST_MOVES = 40;

/** A horn in tune. */
export interface TunedHorn {
  readonly bore: HornBore;
  readonly fundamentalHz: number;
  /** Length of the cylindrical tubing. */
  readonly cylinderMetres: number;
}

/**
 * Pulls the slide until the open resonances 3–16 lie, in the median, on the harmonic series of a fundamental.
 * One length is all that is set: how well each harmonic fits is up to the shape of the horn.
 * @throws {RangeError} when the bore leaves no room for a tube that short
 */
export function tuneHorn(bore: HornBore, fundamentalHz: number): TunedHorn {
  const fixed = fixedLength(bore);
  let cylinderMetres = Math.max(0.05, SOUND_SPEED / (2 * fundamentalHz) - fixed);
  for (let move = 0; move < MOST_MOVES; move++) {
    const open = resonances(hornSections(bore, cylinderMetres, 0), fundamentalHz, HIGHEST_TUNED);
    const deviations = open
      .slice(LOWEST_TUNED - 1)
      .map((peakHz, i) => 1200 * Math.log2(peakHz / (fundamentalHz * (i + LOWEST_TUNED))));
    const error = median(deviations);
    if (Math.abs(error) < TOLERANCE_CENTS) return { bore, fundamentalHz, cylinderMetres };
    cylinderMetres += (fixed + cylinderMetres) * (2 ** (error / 1200) - 1);
    if (!(cylinderMetres > 0)) break;
  }
  throw new RangeError(
    `no length of cylinder tunes this bore to a fundamental of ${fundamentalHz.toFixed(1)} Hz: shorten its bell or leadpipe`,
  );
}

/** The middle of some numbers; NaN of none. */
function median(values: readonly number[]): number {
  const sorted = values.slice().sort((a, b) => a - b);
  const middle = sorted.length / 2;
  return sorted.length % 2 ? sorted[middle - 0.5]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}
