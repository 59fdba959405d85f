/** A loud wave on its way down the tube: its crests run faster than its troughs, so its front grows steep. */
import { AIR_DENSITY, SOUND_SPEED, type Wave, waveIn } from './air.ts';

/** Coefficient of nonlinearity of air, (γ + 1) / 2. @source hamiltonBlackstock, Burgers' equation */
const NONLINEARITY = 1.2;

/** Pieces the way is cut into. Twice as many move no partial above a thousandth of the strongest by 1 % (tested). */
const STEPS = 160;

/** Partials of a periodic wave as amplitudes of sine and cosine, by number from 1 at index 0. */
export interface Partials {
  readonly re: readonly number[];
  readonly im: readonly number[];
}

/** A wave of sines in step with one another. @param amplitudesPa of each partial, the 1st at index 0, in pascals */
export function sines(amplitudesPa: readonly number[]): Partials {
  return { re: amplitudesPa.map(() => 0), im: amplitudesPa.map((amplitude) => -amplitude) };
}

/**
 * Carries a wave that runs one way down a cylinder: Burgers' equation with the losses at the wall, partial by partial.
 * @param wave pressures in pascals; partials beyond the last one given are taken as gone
 * @param frequencyHz of the 1st partial, above 0
 * @param lengthMetres 0 or more
 * @param radiusMetres above 0
 * @param lossy false leaves the wall losses out, which holds only before a shock forms
 * @source hamiltonBlackstock, Burgers' equation by harmonics; menguyGilbert for brass instruments
 */
export function steepen(
  wave: Partials,
  frequencyHz: number,
  lengthMetres: number,
  radiusMetres: number,
  lossy = true,
  steps = STEPS,
): Partials {
  const count = wave.re.length;
  const step = lengthMetres / steps;
  const rate =
    (NONLINEARITY * 2 * Math.PI * frequencyHz) / (2 * AIR_DENSITY * SOUND_SPEED * SOUND_SPEED * SOUND_SPEED);
  const kept = wave.re.map((_, i) =>
    lossy ? Math.exp(-damping(radiusMetres, (i + 1) * frequencyHz) * step) : 1,
  );
  const re = wave.re.slice();
  const im = wave.im.slice();
  for (let done = 0; done < steps; done++) {
    // The middle of each piece speaks for the whole of it.
    const first = growth(re, im, rate);
    const halfRe = re.map((value, i) => value + (step / 2) * first.re[i]!);
    const halfIm = im.map((value, i) => value + (step / 2) * first.im[i]!);
    const middle = growth(halfRe, halfIm, rate);
    for (let i = 0; i < count; i++) {
      re[i] = (re[i]! + step * middle.re[i]!) * kept[i]!;
      im[i] = (im[i]! + step * middle.im[i]!) * kept[i]!;
    }
  }
  return { re, im };
}

/** What every partial gains, per metre, from all pairs that add up to it: j·n·rate · Σ P(m)·P(n − m) / 2. */
function growth(re: readonly number[], im: readonly number[], rate: number): { re: number[]; im: number[] } {
  const count = re.length;
  const gainRe: number[] = [];
  const gainIm: number[] = [];
  for (let n = 1; n <= count; n++) {
    let sumRe = 0;
    let sumIm = 0;
    // Pairs m + (n − m), both above 0.
    for (let m = 1; m < n; m++) {
      const a = m - 1;
      const b = n - m - 1;
      sumRe += (re[a]! * re[b]! - im[a]! * im[b]!) / 2;
      sumIm += (re[a]! * im[b]! + im[a]! * re[b]!) / 2;
    }
    // Pairs (n + m) − m: the lower one mirrored. Each stands twice in the sum, so the halves make a whole.
    for (let m = 1; n + m <= count; m++) {
      const a = n + m - 1;
      const b = m - 1;
      sumRe += re[a]! * re[b]! + im[a]! * im[b]!;
      sumIm += im[a]! * re[b]! - re[a]! * im[b]!;
    }
    gainRe.push(-n * rate * sumIm);
    gainIm.push(n * rate * sumRe);
  }
  return { re: gainRe, im: gainIm };
}

const wall: Wave = { gammaRe: 0, gammaIm: 0, impedanceRe: 1, impedanceIm: 0 };

function damping(radiusMetres: number, frequencyHz: number): number {
  waveIn(radiusMetres, frequencyHz, true, wall);
  return wall.gammaRe;
}
