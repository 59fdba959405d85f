/** What a user can set, and what holds until they do. */
import { DOUBLE } from './data/horns.ts';
import { DEFAULT_TOLERANCE_CENTS, type Player } from './fingering.ts';

/** What a user can set. Every field has a default in DEFAULT_SETTINGS. */
export interface Settings extends Player {
  /** Less time than this, in seconds, for the hand to go in or out is too quick; 0 or more. */
  readonly handSeconds: number;
}

/** From memory: a quarter of a second for the hand; the horn and the tolerance as their own constants say. */
export const DEFAULT_SETTINGS: Settings = {
  horn: DOUBLE,
  toleranceCents: DEFAULT_TOLERANCE_CENTS,
  handOffsetCents: 0,
  handSeconds: 0.25,
};
