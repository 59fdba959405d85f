/** How much of a wave gets out of the bell, past the hand. */
import { RHO_C } from './air.ts';
import { radiate } from './radiation.ts';
import { carryBack, type Field, type Section } from './section.ts';

const field: Field = { pressureRe: 0, pressureIm: 0, flowRe: 0, flowIm: 0 };

/**
 * The share of a wave's amplitude that leaves the bell as sound: 1 when all of its power does, 0 when all comes back.
 * @param bell the last sections of a horn, from where the wave comes in to the rim
 * @param frequencyHz above 0
 * @returns 0–1: the square root of radiated over incoming power
 */
export function passesBell(bell: readonly Section[], frequencyHz: number): number {
  const last = bell.length - 1;
  radiate(bell[last]!.farRadiusMetres, frequencyHz, field);
  const radiated = field.pressureRe * field.flowRe + field.pressureIm * field.flowIm;
  for (let i = last; i >= 0; i--) carryBack(bell[i]!, frequencyHz, true, field);
  // The half of the sound at the near end that runs towards the bell.
  const impedance = RHO_C / (Math.PI * bell[0]!.nearRadiusMetres ** 2);
  const re = (field.pressureRe + impedance * field.flowRe) / 2;
  const im = (field.pressureIm + impedance * field.flowIm) / 2;
  return Math.sqrt((radiated * impedance) / (re * re + im * im));
}
