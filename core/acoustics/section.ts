/** One piece of tube, a cylinder or a cone, and the sound at its two ends: the transmission-line element. */
import { RHO_C, type Wave, waveIn } from './air.ts';

/** A straight-sided piece of tube. Equal radii make a cylinder. */
export interface Section {
  readonly lengthMetres: number;
  /** Radius at the player's end. */
  readonly nearRadiusMetres: number;
  /** Radius at the bell's end. */
  readonly farRadiusMetres: number;
}

/** Sound at one cross-section: complex pressure (Pa) and volume flow towards the bell (m³/s). */
export interface Field {
  pressureRe: number;
  pressureIm: number;
  flowRe: number;
  flowIm: number;
}

const wave: Wave = { gammaRe: 0, gammaIm: 0, impedanceRe: 1, impedanceIm: 0 };

/**
 * Carries the sound at the far end of a section back to its near end, in place:
 * (p, u) near = [A B; C D] (p, u) far, with AD − BC = 1 (reciprocity).
 * The plane-wave cone, exact for Webster's equation without losses; with losses the wall acts as at the mean radius.
 * @param lossy false leaves wall losses out
 * @source chaigneKergomard, transfer matrix of a truncated cone; webster
 */
export function carryBack(section: Section, frequencyHz: number, lossy: boolean, field: Field): void {
  const { lengthMetres: length, nearRadiusMetres: near, farRadiusMetres: far } = section;
  waveIn((near + far) / 2, frequencyHz, lossy, wave);
  const { gammaRe, gammaIm, impedanceRe, impedanceIm } = wave;

  // cosh ΓL and sinh ΓL.
  const grow = Math.exp(gammaRe * length);
  const cosine = Math.cos(gammaIm * length);
  const sine = Math.sin(gammaIm * length);
  const coshRe = ((grow + 1 / grow) / 2) * cosine;
  const coshIm = ((grow - 1 / grow) / 2) * sine;
  const sinhRe = ((grow - 1 / grow) / 2) * cosine;
  const sinhIm = ((grow + 1 / grow) / 2) * sine;

  // 1/Γ; sinh ΓL / Γ; and the taper over each end's radius, which is 1 / its distance from the cone's apex.
  const norm = gammaRe * gammaRe + gammaIm * gammaIm;
  const inverseRe = gammaRe / norm;
  const inverseIm = -gammaIm / norm;
  const sRe = sinhRe * inverseRe - sinhIm * inverseIm;
  const sIm = sinhRe * inverseIm + sinhIm * inverseRe;
  const taper = (far - near) / length;
  const apexProduct = (taper * taper) / (near * far);

  const aRe = (far / near) * coshRe - (taper / near) * sRe;
  const aIm = (far / near) * coshIm - (taper / near) * sIm;
  const dRe = (near / far) * coshRe + (taper / far) * sRe;
  const dIm = (near / far) * coshIm + (taper / far) * sIm;

  // Z = ρc/(π·near·far), with losses; B = Z sinh ΓL.
  const scale = RHO_C / (Math.PI * near * far);
  const zRe = scale * impedanceRe;
  const zIm = scale * impedanceIm;
  const bRe = zRe * sinhRe - zIm * sinhIm;
  const bIm = zRe * sinhIm + zIm * sinhRe;

  // C = (sinh ΓL + (L cosh ΓL − sinh ΓL / Γ)·h/Γ) / Z, where h is the product of the two inverse apex distances.
  const tRe = length * coshRe - sRe;
  const tIm = length * coshIm - sIm;
  const nRe = sinhRe + apexProduct * (tRe * inverseRe - tIm * inverseIm);
  const nIm = sinhIm + apexProduct * (tRe * inverseIm + tIm * inverseRe);
  const zNorm = zRe * zRe + zIm * zIm;
  const cRe = (nRe * zRe + nIm * zIm) / zNorm;
  const cIm = (nIm * zRe - nRe * zIm) / zNorm;

  const { pressureRe: pRe, pressureIm: pIm, flowRe: uRe, flowIm: uIm } = field;
  field.pressureRe = aRe * pRe - aIm * pIm + bRe * uRe - bIm * uIm;
  field.pressureIm = aRe * pIm + aIm * pRe + bRe * uIm + bIm * uRe;
  field.flowRe = cRe * pRe - cIm * pIm + dRe * uRe - dIm * uIm;
  field.flowIm = cRe * pIm + cIm * pRe + dRe * uIm + dIm * uRe;
}
