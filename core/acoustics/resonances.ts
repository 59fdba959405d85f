/** The resonances of a horn: the peaks of its input impedance, where the lips can hold a note. */
import { SOUND_SPEED } from './air.ts';
import { inputImpedance } from './impedance.ts';
import { HIGHEST_KA } from './radiation.ts';
import type { Section } from './section.ts';

/** Peaks are refined until they lie between two frequencies this close, in hertz: a hundredth of a cent at 40 Hz. */
const TOLERANCE_HZ = 2e-4;

/** Parts of a harmonic's distance in which peaks are looked for; neighbours are never closer than four of them. */
const LOOKS_PER_HARMONIC = 8;

/**
 * The lowest resonances of a horn, counted from the bottom: entry n − 1 is harmonic n.
 * @param fundamentalHz about how far apart they lie
 * @param count how many are wanted
 * @returns hertz, lowest first; fewer than wanted when the bell holds no more, or would need the radiation load beyond
 * where it is known
 */
export function resonances(sections: readonly Section[], fundamentalHz: number, count: number): number[] {
  const step = fundamentalHz / LOOKS_PER_HARMONIC;
  const last = Math.min(fundamentalHz * (count + 2), highestFrequency(sections));
  const found: number[] = [];
  let before = 0;
  let here = inputImpedance(sections, step);
  for (let at = step; at + step <= last && found.length < count; at += step) {
    const after = inputImpedance(sections, at + step);
    if (here > before && here >= after) found.push(refinePeak(sections, at - step, at + step));
    before = here;
    here = after;
  }
  return found;
}

/**
 * The peak that a known one has become after a small change of the horn: uphill from where it was, then refined.
 * @param nearHz the peak before the change
 * @param fundamentalHz about how far apart the peaks lie
 */
export function followPeak(sections: readonly Section[], nearHz: number, fundamentalHz: number): number {
  const step = Math.min(fundamentalHz / (2 * LOOKS_PER_HARMONIC), nearHz / 4);
  let here = inputImpedance(sections, nearHz);
  let at = nearHz;
  for (const direction of [-step, step]) {
    let next = inputImpedance(sections, at + direction);
    while (next > here && at + direction > step) {
      at += direction;
      here = next;
      next = inputImpedance(sections, at + direction);
    }
  }
  return refinePeak(sections, at - step, at + step);
}

function highestFrequency(sections: readonly Section[]): number {
  const rimRadius = sections[sections.length - 1]!.farRadiusMetres;
  return (HIGHEST_KA * SOUND_SPEED) / (2 * Math.PI * rimRadius);
}

/** The top of the one peak between two frequencies, by golden-section search. @source press, golden section search */
function refinePeak(sections: readonly Section[], fromHz: number, toHz: number): number {
  let low = fromHz;
  let high = toHz;
  let left = high - GOLDEN * (high - low);
  let right = low + GOLDEN * (high - low);
  let atLeft = inputImpedance(sections, left);
  let atRight = inputImpedance(sections, right);
  while (high - low > TOLERANCE_HZ) {
    if (atLeft > atRight) {
      high = right;
      right = left;
      atRight = atLeft;
      left = high - GOLDEN * (high - low);
      atLeft = inputImpedance(sections, left);
    } else {
      low = left;
      left = right;
      atLeft = atRight;
      right = low + GOLDEN * (high - low);
      atRight = inputImpedance(sections, right);
    }
  }
  return (low + high) / 2;
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;
