/**
 * The colour of a note head by verdict; `sure` notes keep their black.
 * @source okabeIto: vermillion and blue, told apart with every kind of colour vision
 */
export const VERDICT_COLOURS = {
  sure: null,
  risky: '#0072B2',
  impossible: '#D55E00',
} as const;

/**
 * The same as we paint them on notes of a score: off by a hair in their green, which no eye sees and nobody chooses. So
 * a note is known as painted by us even where somebody deleted the text of its mark, and one that its user gave the
 * published colour is not. Marks of versions before painted `VERDICT_COLOURS`, and say so themselves.
 */
export const PAINTED_COLOURS = {
  sure: null,
  risky: '#0073B2',
  impossible: '#D55F00',
} as const;
