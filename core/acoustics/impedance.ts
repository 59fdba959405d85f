/** Input impedance: how strongly a row of tube sections answers a player at its near end. */
import { radiate } from './radiation.ts';
import { carryBack, type Field, type Section } from './section.ts';

/**
 * Size of the input impedance of a tube that ends in the open air.
 * @param sections from the player to the bell
 * @param frequencyHz above 0
 * @returns |p/u| at the near end, Pa·s/m³
 */
export function inputImpedance(sections: readonly Section[], frequencyHz: number): number {
  const last = sections.length - 1;
  radiate(sections[last]!.farRadiusMetres, frequencyHz, field);
  for (let i = last; i >= 0; i--) carryBack(sections[i]!, frequencyHz, true, field);
  const pressure = field.pressureRe * field.pressureRe + field.pressureIm * field.pressureIm;
  return Math.sqrt(pressure / (field.flowRe * field.flowRe + field.flowIm * field.flowIm));
}

const field: Field = { pressureRe: 0, pressureIm: 0, flowRe: 0, flowIm: 0 };
