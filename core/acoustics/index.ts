/** The acoustics of the closing hand, as the rest of Bellhand uses it. */

export {
  type ClosingCurve,
  type ClosingCurveOptions,
  closingCurve,
  type HarmonicCurve,
  HIGHEST_CURVE_HARMONIC,
} from './closingCurve.ts';
export { type ClosingForDrop, closingForDrop } from './closingForDrop.ts';
export { type CurveSvgOptions, curveSvg } from './curveSvg.ts';
export { curveText } from './curveText.ts';
export type { Bell, Hand, HornBore } from './hornShape.ts';
export {
  CLOSING_HAND,
  type HandMoment,
  OPENING_HAND,
  PEAK_DECIBELS,
  playedTone,
  SAMPLE_RATE,
} from './playedTone.ts';
export type { Section } from './section.ts';
export { brightnessHz, type Tone, type ToneCurve, toneCurve } from './tone.ts';
export { USUAL_BORE } from './usualBore.ts';
export { waveFile } from './waveFile.ts';
