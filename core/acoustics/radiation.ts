/** The open end: how a bell rim gives sound to the room. */
import { RHO_C, SOUND_SPEED } from './air.ts';
import type { Field } from './section.ts';

/**
 * Wave number times radius up to which the open end is known; a bell 31 cm wide reaches it at 1070 Hz. Beyond it hardly
 * anything comes back: what is left is taken to die away, which no resonance feels and a tone's colour hardly.
 */
export const HIGHEST_KA = 3;

/**
 * Reflection at the open end of a tube that stands free in the room: how much comes back, and from how far outside.
 * Fits to the exact theory of Levine and Schwinger (1948): the magnitude holds to 2.5 %, the correction to 5 % (tested).
 * @param ka wave number times radius, 0 or more; a fit up to HIGHEST_KA, a guess beyond
 * @returns magnitude 0–1 and the end correction over the radius
 * @source dalmont, unflanged pipe
 */
export function openEnd(ka: number): { magnitude: number; correction: number } {
  if (ka > HIGHEST_KA) {
    const { magnitude, correction } = openEnd(HIGHEST_KA);
    return { magnitude: magnitude * Math.exp(HIGHEST_KA - ka), correction };
  }
  const square = ka * ka;
  const sine = Math.sin(2 * ka);
  return {
    magnitude: (1 + 0.2 * ka - 0.084 * square) / (1 + 0.2 * ka + (0.5 - 0.084) * square),
    correction: 0.6133 * ((1 + 0.044 * square) / (1 + 0.19 * square) - 0.02 * sine * sine),
  };
}

/** Sets `field` to sound leaving an open end: pressure and flow in the ratio of the radiation impedance. */
export function radiate(radiusMetres: number, frequencyHz: number, field: Field): void {
  const ka = (2 * Math.PI * frequencyHz * radiusMetres) / SOUND_SPEED;
  const { magnitude, correction } = openEnd(ka);
  // p = (1 + R)·Zc, u = 1 − R, with R = −magnitude·exp(−2j·ka·correction).
  const reflectedRe = -magnitude * Math.cos(2 * ka * correction);
  const reflectedIm = magnitude * Math.sin(2 * ka * correction);
  const characteristic = RHO_C / (Math.PI * radiusMetres * radiusMetres);
  field.pressureRe = characteristic * (1 + reflectedRe);
  field.pressureIm = characteristic * reflectedIm;
  field.flowRe = 1 - reflectedRe;
  field.flowIm = -reflectedIm;
}
