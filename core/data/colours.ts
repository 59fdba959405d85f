/**
 * The colour of a note head by verdict; `sure` notes keep their black.
 * @source okabeIto: vermillion and blue, told apart with every kind of colour vision
 */
export const VERDICT_COLOURS = {
  sure: null,
  risky: '#0072B2',
  impossible: '#D55E00',
} as const;
