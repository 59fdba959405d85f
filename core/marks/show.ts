/** What marks print, as it is chosen for a whole part. */

/** What to print. */
export interface Show {
  /** The fingered note's name, before the valves. */
  readonly fingered: boolean;
  readonly valves: boolean;
  /** The natural pitch, in round brackets. */
  readonly natural: boolean;
  /** ≈ and × with their reason. */
  readonly verdict: boolean;
  readonly colour: boolean;
  /** `changes` leaves a text out where the player's note before in the same bar carries the same one. A tied note never has it twice. */
  readonly repeat: 'all' | 'changes';
  /**
   * `valves` prints no more than has room: in bars whose marks stand closer than a quarter the valves alone, as players
   * write them by hand; over a chord one line for each note, the fingered note and valves.
   */
  readonly quick: 'full' | 'valves';
}

/** Everything is printed, over every stopped note. */
export const SHOW_ALL: Show = {
  fingered: true,
  valves: true,
  natural: true,
  verdict: true,
  colour: true,
  repeat: 'all',
  quick: 'full',
};

/** What parts are marked with unless somebody wishes otherwise: all that is needed once, and no more than has room. */
export const SHOW_USUAL: Show = { ...SHOW_ALL, repeat: 'changes', quick: 'valves' };
