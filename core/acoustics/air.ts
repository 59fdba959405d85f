/** The air in the horn and what the tube walls take from a wave in it: warm air at 300 K (26.85 °C), as breath keeps it. */

/** Speed of sound in free air, m/s. @source keefe */
export const SOUND_SPEED = 347.23;

/** Density of air, kg/m³. @source keefe */
export const AIR_DENSITY = 1.1769;

/** Characteristic impedance of free air times area, ρc, in kg/(m²s). */
export const RHO_C = AIR_DENSITY * SOUND_SPEED;

/**
 * Radius over the thickness of the viscous layer at the wall, per metre of radius and root hertz, r = 632.8·a·√f.
 * @source keefe
 */
const LAYER_RATIO = 632.8;

/** How a wave runs in a tube of one radius at one frequency. A field pair is one complex number. */
export interface Wave {
  /** Propagation constant Γ, per metre: the real part is the damping, the imaginary part the phase. */
  gammaRe: number;
  gammaIm: number;
  /** Characteristic impedance over the lossless ρc/S: 1 without losses. */
  impedanceRe: number;
  impedanceIm: number;
}

/**
 * Fills `wave` for a tube with viscous friction and heat lost to the walls.
 * The series in 1/r holds for r above 2, which is 0.3 mm of radius at 100 Hz; every tube here is far wider.
 * @param radiusMetres above 0
 * @param frequencyHz above 0
 * @param lossy false leaves the losses out: Γ = jω/c
 * @source keefe, large-tube series of Γ and Z0
 */
export function waveIn(radiusMetres: number, frequencyHz: number, lossy: boolean, wave: Wave): void {
  const omegaOverC = (2 * Math.PI * frequencyHz) / SOUND_SPEED;
  const v = lossy ? 1 / (LAYER_RATIO * radiusMetres * Math.sqrt(frequencyHz)) : 0;
  wave.gammaRe = omegaOverC * v * (1.045 + v * (1.08 + v * 0.75));
  wave.gammaIm = omegaOverC * (1 + 1.045 * v);
  wave.impedanceRe = 1 + 0.369 * v;
  wave.impedanceIm = -v * (0.369 + v * (1.149 + v * 0.303));
}
