/** Ranks the fingerings of a note as players do. */
import { type Side, sidesForOpen, sidesForStopping } from '../horn/horn.ts';
import type { Fingering, HandState, Player } from './player.ts';
import { ECHO_DROP_CENTS } from './stopping.ts';

/**
 * The order players choose in. Playable before unplayable; harmonics that stand well before those that do not (when
 * stopping: the one below, which carries the pitch, or the few that the side stops in tune); a tone the hand really
 * changes before one it does not, and among those that it does not the lower, safer harmonic; the preferred side;
 * usual valves; the least slide put in or cut out, and no flat harmonic without need; the nearest pitch.
 */
export function rank(
  found: Fingering[],
  wantedCents: number,
  state: HandState,
  { horn }: Player,
): readonly Fingering[] {
  const open = state === 'open' || state === 'straight-mute';
  const sides = open ? sidesForOpen(horn, wantedCents) : sidesForStopping(horn);
  const keys = new Map(found.map((fingering) => [fingering, sortKey(fingering, state, sides)]));
  return found.sort((a, b) => compareKeys(keys.get(a)!, keys.get(b)!));
}

function sortKey(fingering: Fingering, state: HandState, sides: readonly Side[]): number[] {
  const { tube, harmonic } = fingering;
  const unchanged = fingering.reasons.indexOf('nothing-changes') >= 0;
  const isByHarmonic =
    tube.side.stoppedHarmonics.length > 0 && (state === 'stopped' || state === 'stopping-mute');
  return [
    fingering.verdict === 'impossible' ? 1 : 0,
    fingering.standsWell ? 0 : 1,
    unchanged ? 1 : 0,
    unchanged ? harmonic : 0,
    sides.indexOf(tube.side),
    tube.combination.rarer ? 1 : 0,
    isByHarmonic ? 0 : reachCents(fingering),
    state === 'half-stopped'
      ? Math.abs(fingering.dropCents - ECHO_DROP_CENTS)
      : Math.abs(fingering.deviationCents),
    harmonic,
  ];
}

/** Players leave a flat harmonic for tubes up to 23, but not for 13. From memory: the usual chart of the double horn. */
const FLAT_HARMONIC_CENTS = 450;

/** How far a fingering lies from the open tube, in cents of slide; a flat harmonic as if it lay beyond 23. */
function reachCents({ tube, carrier }: Fingering): number {
  const isFlat = tube.side.flatHarmonics.indexOf(carrier) >= 0;
  return isFlat ? Math.max(tube.movedCents, FLAT_HARMONIC_CENTS) : tube.movedCents;
}

function compareKeys(a: readonly number[], b: readonly number[]): number {
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return a[i]! - b[i]!;
  return 0;
}
