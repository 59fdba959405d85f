/** The closing curve: what happens to each harmonic of a tube on the way from the open hand to the full stop. */

import { checkInteger, checkNumber, checkObject } from '../guards/allowed.ts';
import { frequencyHz } from '../pitch/pitch.ts';
import { checkBore, type HornBore, hornSections } from './hornShape.ts';
import { followPeak, resonances } from './resonances.ts';
import { type TunedHorn, tuneHorn } from './tuning.ts';
import { USUAL_BORE } from './usualBore.ts';

/** The highest harmonic worked out: written C6 on the F side, where closing no longer changes anything. */
export const HIGHEST_CURVE_HARMONIC = 16;

/** What to work out, and for which horn and hand. */
export interface ClosingCurveOptions {
  /** Steps from open to sealed, 1–1000. Default 20. */
  readonly steps?: number;
  /** Harmonics wanted, each 1–16, in any order. Default all. */
  readonly harmonics?: readonly number[];
  /** Another horn, or another hand: `{ ...USUAL_BORE, hand: { ...USUAL_BORE.hand, leakRadiusMetres: 0.003 } }`. */
  readonly bore?: HornBore;
}

/** How one harmonic moves as the hand closes. */
export interface HarmonicCurve {
  /** From 1. */
  readonly harmonicNumber: number;
  /** Resonance at each step, in hertz; the first is the open one. */
  readonly frequenciesHz: readonly number[];
  /** The same in cents from the open resonance: 0 first, then below 0 as the tone falls. */
  readonly centsFromOpen: readonly number[];
  /** How far the open resonance lies above the exact harmonic of the tube, in cents. */
  readonly openDeviationCents: number;
}

/** What the closing hand does to a tube, harmonic by harmonic. */
export interface ClosingCurve {
  /** Sounding pitch of the tube's 1st harmonic, in cents above MIDI note 0. */
  readonly fundamentalCents: number;
  /** Length of the horn from the lips to the rim. */
  readonly lengthMetres: number;
  /** Degrees of closing, 0 open … 1 sealed, evenly spaced: one more than the steps. */
  readonly closings: readonly number[];
  /** Lowest first. A harmonic above the last resonance that the bell holds is left out: on short tubes, the highest. */
  readonly harmonics: readonly HarmonicCurve[];
}

/** Lowest and highest fundamental worked out: the longest crook with every valve down, and a high F side. */
const LOWEST_FUNDAMENTAL_CENTS = 1500;
const HIGHEST_FUNDAMENTAL_CENTS = 4200;

/** A resonance that moves further than this part of the fundamental at once is followed in smaller steps. */
const LONGEST_MOVE = 0.2;

/**
 * Works out the closing curve of a tube from the shape of the horn alone.
 * @param tube anything with a sounding fundamental in cents above MIDI note 0, 1500–4200: a tube of a side with its
 * valves, or a crook. Valves and crooks are cylinder of the same bore
 * @throws {RangeError} when the fundamental, the steps or a harmonic is out of range, or the bore cannot be built or is too
 * long for the tube
 * @source webster; keefe; dalmont (see section.ts, air.ts and radiation.ts).
 * @example
 * // The open F horn, 8th harmonic: written C5 falls to a slightly flat B4.
 * const curve = closingCurve({ fundamentalCents: 2900 }, { harmonics: [8] });
 * Math.round(curve.harmonics[0].centsFromOpen[20]) // => -112
 */
export function closingCurve(
  tube: { readonly fundamentalCents: number },
  options: ClosingCurveOptions = {},
): ClosingCurve {
  checkObject('tube', tube, 'a tube, as tubesOf makes them, or { fundamentalCents }');
  const { fundamentalCents } = tube;
  const { steps = 20, harmonics = ALL_HARMONICS, bore = USUAL_BORE } = options;
  checkNumber('fundamentalCents', fundamentalCents, LOWEST_FUNDAMENTAL_CENTS, HIGHEST_FUNDAMENTAL_CENTS);
  checkInteger('steps', steps, 1, 1000);
  for (const n of harmonics) checkInteger('harmonics', n, 1, HIGHEST_CURVE_HARMONIC);
  checkBore(bore);

  const horn = tuneHorn(bore, frequencyHz(fundamentalCents));
  const open = resonances(
    hornSections(bore, horn.cylinderMetres, 0),
    horn.fundamentalHz,
    Math.max(0, ...harmonics),
  );
  const wanted = open.map((_, i) => i + 1).filter((n) => harmonics.indexOf(n) >= 0);
  const rows: (readonly number[])[] = [wanted.map((n) => open[n - 1]!)];
  for (let step = 1; step <= steps; step++)
    rows.push(follow(horn, rows[step - 1]!, (step - 1) / steps, step / steps));

  return {
    fundamentalCents,
    lengthMetres: hornLength(horn),
    closings: rows.map((_, step) => step / steps),
    harmonics: wanted.map((harmonicNumber, i) => {
      const openHz = rows[0]![i]!;
      const frequenciesHz = rows.map((row) => row[i]!);
      return {
        harmonicNumber,
        frequenciesHz,
        centsFromOpen: frequenciesHz.map((hz) => 1200 * Math.log2(hz / openHz)),
        openDeviationCents: 1200 * Math.log2(openHz / (horn.fundamentalHz * harmonicNumber)),
      };
    }),
  };
}

const ALL_HARMONICS: readonly number[] = Array.from({ length: HIGHEST_CURVE_HARMONIC }, (_, i) => i + 1);

/** Follows peaks from one closing to another, by halves where one of them would move too far to be known again. */
function follow(horn: TunedHorn, peaksHz: readonly number[], from: number, to: number): readonly number[] {
  const sections = hornSections(horn.bore, horn.cylinderMetres, to);
  const moved = peaksHz.map((hz) => followPeak(sections, hz, horn.fundamentalHz));
  const longest = LONGEST_MOVE * horn.fundamentalHz;
  if (moved.every((hz, i) => Math.abs(hz - peaksHz[i]!) <= longest) || to - from < 1e-4) return moved;
  const half = (from + to) / 2;
  return follow(horn, follow(horn, peaksHz, from, half), half, to);
}

function hornLength({ bore, cylinderMetres }: TunedHorn): number {
  return hornSections(bore, cylinderMetres, 0).reduce((sum, { lengthMetres }) => sum + lengthMetres, 0);
}
