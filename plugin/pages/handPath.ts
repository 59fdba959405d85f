/** How the pitch moves while the hand closes: the shape of the way down, as the acoustics of the tube have it. */
import { closingCurve, type Fingering, HIGHEST_CURVE_HARMONIC } from '../../core/index.ts';

const STEPS = 16;

/**
 * How much of the whole fall is done at each step from open to closed, from 0 to 1, evenly spaced. The ends are the
 * stopping rule's; only the way between them comes from the shape of the horn. A straight line where the curve does not
 * reach: above its highest harmonic, or where it hardly falls.
 */
export function shareOfFall({ tube, harmonic }: Fingering): readonly number[] {
  const key = `${tube.fundamentalCents} ${harmonic}`;
  const shares = SHARES.get(key) ?? workOut(tube.fundamentalCents, harmonic);
  SHARES.set(key, shares);
  return shares;
}

/** A part asks for the same few tubes again and again. */
const SHARES = new Map<string, readonly number[]>();

const STRAIGHT: readonly number[] = Array.from({ length: STEPS + 1 }, (_, step) => step / STEPS);
/** A whole fall smaller than this, in cents, has no shape worth drawing. */
const LEAST_FALL_CENTS = 20;

function workOut(fundamentalCents: number, harmonic: number): readonly number[] {
  if (harmonic > HIGHEST_CURVE_HARMONIC) return STRAIGHT;
  const curve = closingCurve({ fundamentalCents }, { steps: STEPS, harmonics: [harmonic] });
  const falls = curve.harmonics[0]?.centsFromOpen.map((cents) => -cents);
  const whole = falls?.[STEPS] ?? 0;
  if (!falls || whole < LEAST_FALL_CENTS) return STRAIGHT;
  return falls.map((fall) => fall / whole);
}
