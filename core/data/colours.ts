import type { Verdict } from '../fingering.ts';

/**
 * The colour of a note head by verdict; `sure` notes keep their black.
 * @source okabeIto: vermillion and blue, told apart with every kind of colour vision
 */
export const VERDICT_COLOURS: { readonly [verdict in Verdict]: string | null } = {
  sure: null,
  risky: '#0072B2',
  impossible: '#D55E00',
};
