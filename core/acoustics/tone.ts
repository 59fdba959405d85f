/** What a held tone sounds like as the hand closes: its pitch and partials, worked out from the shape of the horn. */

import { checkInteger } from '../guards/allowed.ts';
import { frequencyHz } from '../pitch/pitch.ts';
import { closingCurve, HIGHEST_CURVE_HARMONIC } from './closingCurve.ts';
import { type HornBore, hornSections } from './hornShape.ts';
import { sines, steepen } from './steepening.ts';
import { passesBell } from './transmission.ts';
import { type TunedHorn, tuneHorn } from './tuning.ts';
import { USUAL_BORE } from './usualBore.ts';

/** A tone outside the bell. */
export interface Tone {
  /** Degree of closing, 0 open … 1 sealed. */
  readonly closing: number;
  readonly frequencyHz: number;
  /** Amplitude of each partial in the room, the 1st at index 0; in pascals of the wave that would carry its power in the horn. */
  readonly partials: readonly number[];
}

/** The tones of one harmonic of a tube on the way from open to sealed. */
export interface ToneCurve {
  readonly harmonicNumber: number;
  /** Evenly spaced in closing, open first, sealed last. */
  readonly tones: readonly Tone[];
}

/**
 * Amplitude of the 1st partial of the wave that leaves the lips with the bell open, in pascals: a moderate mezzo forte.
 * From memory: mouthpiece pressures run from some 100 Pa to several thousand.
 */
const LIP_PASCALS = 600;

/** How much weaker each partial leaves the lips than the one below it, in decibels. From memory: a soft brass tone. */
const LIP_TILT_DECIBELS = 7;

/**
 * A sealed bell lets out about 32 dB less. Players make up for about half of it by blowing harder, and no more than
 * this, in decibels; a choice.
 */
const MADE_UP_SHARE = 0.5;
const MOST_MADE_UP_DECIBELS = 15;

/** Partials are followed up to here; above, a horn gives little and speakers less. */
const HIGHEST_PARTIAL_HZ = 10_000;
const MOST_PARTIALS = 40;

/** Steps from open to sealed. */
const STEPS = 16;

/**
 * Works out the tones of a harmonic from the open hand to the full stop. The wave from the lips steepens on its way
 * through the cylinder, the more the harder the player blows; then each partial passes the bell and the hand in it as
 * their shape lets it. Nothing else is done to the sound: that a stopped tone is thin and metallic comes out of it.
 * @param tube anything with a sounding fundamental in cents above MIDI note 0, 1500–4200
 * @param harmonicNumber 1–16
 * @throws {RangeError} as `closingCurve`, and when the bell holds no such harmonic
 * @source menguyGilbert for the steepening; webster, keefe and dalmont for the bell
 */
export function toneCurve(
  tube: { readonly fundamentalCents: number },
  harmonicNumber: number,
  bore: HornBore = USUAL_BORE,
): ToneCurve {
  checkInteger('harmonicNumber', harmonicNumber, 1, HIGHEST_CURVE_HARMONIC);
  const { harmonics, closings } = closingCurve(tube, { steps: STEPS, harmonics: [harmonicNumber], bore });
  const curve = harmonics[0];
  if (!curve) throw new RangeError(`"harmonicNumber" ${harmonicNumber} is more than this tube's bell holds`);
  const horn = tuneHorn(bore, frequencyHz(tube.fundamentalCents));
  const openPower = power(toneAt(horn, curve.frequenciesHz[0]!, 0, LIP_PASCALS).partials);
  const tones = closings.map((closing, step) => {
    const hz = curve.frequenciesHz[step]!;
    const soft = toneAt(horn, hz, closing, LIP_PASCALS);
    const lostDecibels = Math.max(0, 10 * Math.log10(openPower / power(soft.partials)));
    const madeUp = Math.min(MADE_UP_SHARE * lostDecibels, MOST_MADE_UP_DECIBELS);
    return toneAt(horn, hz, closing, LIP_PASCALS * 10 ** (madeUp / 20));
  });
  return { harmonicNumber, tones };
}

function toneAt({ bore, cylinderMetres }: TunedHorn, hz: number, closing: number, lipPascals: number): Tone {
  const count = Math.min(MOST_PARTIALS, Math.floor(HIGHEST_PARTIAL_HZ / hz));
  const fromLips = Array.from(
    { length: count },
    (_, i) => lipPascals * 10 ** ((-i * LIP_TILT_DECIBELS) / 20),
  );
  const wave = steepen(
    sines(fromLips),
    hz,
    bore.leadpipe.lengthMetres + cylinderMetres,
    bore.boreRadiusMetres,
  );
  const sections = hornSections(bore, cylinderMetres, closing);
  const bell = sections.slice(bore.mouthpiece.length + 2);
  const partials = wave.re.map((re, i) => Math.hypot(re, wave.im[i]!) * passesBell(bell, (i + 1) * hz));
  return { closing, frequencyHz: hz, partials };
}

function power(partials: readonly number[]): number {
  return partials.reduce((sum, amplitude) => sum + amplitude * amplitude, 0);
}

/** The centre of a tone's partials, in hertz, weighted by amplitude: the higher, the brighter. */
export function brightnessHz({ frequencyHz: hz, partials }: Tone): number {
  let sum = 0;
  let weighted = 0;
  partials.forEach((amplitude, i) => {
    sum += amplitude;
    weighted += amplitude * (i + 1) * hz;
  });
  return weighted / sum;
}
