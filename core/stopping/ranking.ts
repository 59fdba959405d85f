/** Ranks the fingerings of a note as players do. */
import { AVOIDED_HARMONICS } from '../horn/harmonics.ts';
import type { Horn, Side } from '../horn/horn.ts';
import type { Fingering, HandState, Player } from './player.ts';
import { ECHO_DROP_CENTS } from './stopping.ts';

/**
 * The order players choose in. Playable before unplayable; harmonics that stand well before those that do not (when
 * stopping: the one below, which carries the pitch, or the few that the side stops in tune); a tone the hand really
 * changes before one it does not, and among those that it does not the lower, safer harmonic; the preferred side;
 * usual valves; the shortest tube; the nearest pitch.
 */
export function rank(
  found: Fingering[],
  wantedCents: number,
  state: HandState,
  { horn }: Player,
): readonly Fingering[] {
  const open = state === 'open' || state === 'straight-mute';
  const sides = open && isShortSideNote(horn, wantedCents) ? shortSideFirst(horn) : horn.sides;
  const keys = new Map(found.map((fingering) => [fingering, sortKey(fingering, state, sides)]));
  return found.sort((a, b) => compareKeys(keys.get(a)!, keys.get(b)!));
}

/** Above its change-over note a double horn is played open on the short side. */
function isShortSideNote(horn: Horn, wantedCents: number): boolean {
  return horn.shortSideFromCents !== null && wantedCents >= horn.shortSideFromCents;
}

/** The shortest side first, but a side that is not stopped on (the high F) last: it is kept for those who ask. */
function shortSideFirst({ sides }: Horn): readonly Side[] {
  return sides
    .slice()
    .sort((a, b) => Number(b.stoppable) - Number(a.stoppable) || b.fundamentalCents - a.fundamentalCents);
}

function sortKey(fingering: Fingering, state: HandState, sides: readonly Side[]): number[] {
  const { tube, harmonic } = fingering;
  const { side } = tube;
  const unchanged = fingering.reasons.indexOf('nothing-changes') >= 0;
  const carrier =
    (state === 'stopped' || state === 'stopping-mute') && side.fingeredNote === 'lower-harmonic' && !unchanged
      ? harmonic - 1
      : harmonic;
  const preferred = state === 'stopped' || state === 'stopping-mute' ? side.stoppedHarmonics : [];
  const standsWell =
    preferred.length > 0 ? preferred.indexOf(harmonic) >= 0 : AVOIDED_HARMONICS.indexOf(carrier) < 0;
  return [
    fingering.verdict === 'impossible' ? 1 : 0,
    standsWell ? 0 : 1,
    unchanged ? 1 : 0,
    unchanged ? harmonic : 0,
    sides.indexOf(side),
    tube.combination.rarer ? 1 : 0,
    preferred.length === 0 ? tube.order : 0,
    state === 'half-stopped'
      ? Math.abs(fingering.dropCents - ECHO_DROP_CENTS)
      : Math.abs(fingering.deviationCents),
    harmonic,
  ];
}

function compareKeys(a: readonly number[], b: readonly number[]): number {
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return a[i]! - b[i]!;
  return 0;
}
