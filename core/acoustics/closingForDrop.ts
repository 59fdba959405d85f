/** How far the hand closes for a wanted pitch, read off a closing curve. */
import type { ClosingCurve } from './closingCurve.ts';

/** A degree of closing, or why there is none. */
export type ClosingForDrop =
  | {
      readonly ok: true;
      /** 0 open … 1 sealed. */
      readonly closing: number;
    }
  | {
      readonly ok: false;
      /** The most this harmonic comes down, in cents: less than was wanted; null when the curve does not hold the harmonic. */
      readonly fullDropCents: number | null;
    };

/**
 * The degree of closing at which a harmonic has come down by so many cents: a second opinion beside the rule that
 * shares the full drop out evenly. Between two steps of the curve it reads along a straight line.
 * @param harmonicNumber one of the curve's
 * @param dropCents natural minus wanted pitch, 0 or more
 * @throws {RangeError} when `dropCents` is below 0 or no number: the hand never raises
 * @example
 * const half = closingForDrop(closingCurve({ fundamentalCents: 2900 }), 8, 50);
 * half.closing.toFixed(1) // => '0.3'
 */
export function closingForDrop(
  curve: ClosingCurve,
  harmonicNumber: number,
  dropCents: number,
): ClosingForDrop {
  if (!(dropCents >= 0)) throw new RangeError(`"dropCents" must be 0 or more, got ${dropCents}`);
  const harmonic = curve.harmonics.filter((each) => each.harmonicNumber === harmonicNumber)[0];
  if (!harmonic) return { ok: false, fullDropCents: null };

  const drops = harmonic.centsFromOpen.map((cents) => -cents);
  for (let step = 0; step < drops.length; step++) {
    const here = drops[step]!;
    if (here < dropCents) continue;
    if (step === 0) return { ok: true, closing: 0 };
    const before = drops[step - 1]!;
    const part = (dropCents - before) / (here - before);
    const from = curve.closings[step - 1]!;
    return { ok: true, closing: from + part * (curve.closings[step]! - from) };
  }
  return { ok: false, fullDropCents: Math.max(...drops) };
}
