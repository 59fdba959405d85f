/** How far along the player is that an étude is made for. */

/** 1 for the first weeks with the hand, 2 for a player who knows the fingerings, 3 for one who is at home in them. */
export type Level = (typeof LEVELS)[number];
/** Every level, from the first. */
export const LEVELS = [1, 2, 3] as const;
