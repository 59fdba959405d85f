/** Valves: which of them are put down together, and how far that lowers a side. A list's order means nothing. */

/** Valves put down together. */
export interface ValveCombination {
  /** The valves as players write them: `0`, `2`, `1`, `12`, `3`, … */
  readonly valves: string;
  /** How far they lower a side; below 0 where they raise it. */
  readonly semitones: number;
  /** How much sharper than its semitones the combination is, in cents, because slides tuned alone are short together. */
  readonly sharpCents: number;
  /** True for a combination players reach for only when another will not do. */
  readonly rarer: boolean;
}

/**
 * The usual three valves, in semitones 2 = 1, 1 = 2, 12 or 3 = 3, 23 = 4, 13 = 5, 123 = 6, in the usual setting: third slide drawn long, so that 23 is in tune and 13 and 123 less sharp.
 * It is the default because that is how instruments are set up. The source leaves out valve 3 alone; a third slide
 * that brings 23 to −0.1 beside an exact second slide lowers by 316 cents on its own (computed from slide lengths).
 * @source youngHorn for the steps; thirdHalf for the cents
 */
export const COMPROMISE_VALVES: readonly ValveCombination[] = [
  { valves: '0', semitones: 0, sharpCents: 0, rarer: false },
  { valves: '2', semitones: 1, sharpCents: 0, rarer: false },
  { valves: '1', semitones: 2, sharpCents: 0, rarer: false },
  { valves: '12', semitones: 3, sharpCents: 8.2, rarer: false },
  { valves: '3', semitones: 3, sharpCents: -16, rarer: true },
  { valves: '23', semitones: 4, sharpCents: -0.1, rarer: false },
  { valves: '13', semitones: 5, sharpCents: 14.7, rarer: false },
  { valves: '123', semitones: 6, sharpCents: 37.9, rarer: false },
];

/**
 * Valves whose third raises a side by a tone: it is cut out of the tube until the valve goes down. The slides of the
 * first and the second are then too long for what is left, so that 23, 13 and 123 are flat (computed from the lengths of
 * slides tuned alone; a test reckons them again). 13 gives nothing that 0 has not, and 123 nothing that 2 has not.
 * From memory: the third valve of horns built in France.
 */
export const ASCENDING_VALVES: readonly ValveCombination[] = [
  { valves: '0', semitones: 0, sharpCents: 0, rarer: false },
  { valves: '2', semitones: 1, sharpCents: 0, rarer: false },
  { valves: '1', semitones: 2, sharpCents: 0, rarer: false },
  { valves: '12', semitones: 3, sharpCents: 10.6, rarer: false },
  { valves: '3', semitones: -2, sharpCents: 0, rarer: false },
  { valves: '23', semitones: -1, sharpCents: -11.9, rarer: false },
  { valves: '13', semitones: 0, sharpCents: -23.0, rarer: true },
  { valves: '123', semitones: 1, sharpCents: -21.7, rarer: true },
];

/** A horn without valves. */
export const NO_VALVES: readonly ValveCombination[] = [
  { valves: '', semitones: 0, sharpCents: 0, rarer: false },
];
