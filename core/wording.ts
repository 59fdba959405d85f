/** Words for what the model knows about a fingering. */
import type { FingeringReason } from './fingering.ts';

const REASONS: { readonly [reason in FingeringReason]: string } = {
  'wants-to-rise': 'so low on this side the closing hand lets the tone slip up',
  'lip-only': 'below the bending range: only the lip holds it down',
  'below-the-hand': 'nothing below this harmonic for the hand to bring it down to',
  'nothing-changes': 'so high that closing the hand does not change the pitch',
  'off-pitch': 'out of tune: the lip has to help',
  'unusual-degree': 'needs an unusual degree of closing',
};

/** A reason in a player's words. */
export function reasonText(reason: FingeringReason): string {
  return REASONS[reason];
}
