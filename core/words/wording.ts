/** Words for what the model knows about a fingering. */

import { harmonicDeviationCents } from '../horn/harmonics.ts';
import { type Pitch, printPitch } from '../pitch/pitch.ts';
import type { ChoiceReason } from '../plan/plan.ts';
import type { Fingering, FingeringReason, HandState } from '../stopping/fingering.ts';

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

/** A lower harmonic this much flat brings a sharp-stopping hand back, in cents: the 5th, 7th, 10th, 11th, 14th. A choice. */
const FLAT_CENTS = -10;

/**
 * What is to be said of a fingering beside its numbers: its reasons, and, for an alternative, that the flat harmonic it
 * rests on helps a hand that stops sharp. @source commonPractice
 */
export function alternativeTexts(fingering: Fingering, state: HandState): readonly string[] {
  const { reasons, harmonic } = fingering;
  const texts = reasons.map(reasonText);
  const helps = state === 'stopped' && harmonic > 1 && harmonicDeviationCents(harmonic - 1) < FLAT_CENTS;
  if (helps && reasons.indexOf('nothing-changes') < 0)
    texts.push('the harmonic below is flat: for a hand that stops sharp');
  return texts;
}

/**
 * Why a note leaves its standard fingering: "instead of T0: one tube with E4, which the hand alone joins".
 * @param neighbour the written note that made it leave
 */
export function choiceText({ kind }: ChoiceReason, standard: Fingering, neighbour: Pitch): string {
  const beside = printPitch(neighbour);
  const why = {
    'one-tube': `one tube with ${beside}, to which it is joined`,
    'one-side': `stays on the side of ${beside}, with no time to change sides`,
    'fewer-changes': `fewer valves to change beside ${beside} at this speed`,
  }[kind];
  return `instead of ${standard.printed}: ${why}`;
}

/** A deviation in words: "12 cents flat", "in tune". */
export function deviationText(deviationCents: number): string {
  const rounded = Math.abs(Math.round(deviationCents));
  if (rounded === 0) return 'in tune';
  return `${rounded} cents ${deviationCents > 0 ? 'sharp' : 'flat'}`;
}

/** A fingering in words: "open F horn", "F horn 1+2", "B♭ horn 2", "the E♭ crook". */
export function fingeringText({ tube }: Fingering): string {
  const { valves } = tube.combination;
  const name = tube.side.name.replace('b', '♭');
  if (valves === '') return `the ${name} crook`;
  return valves === '0' ? `open ${name} horn` : `${name} horn ${valves.split('').join('+')}`;
}
