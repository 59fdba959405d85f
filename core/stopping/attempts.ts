/** What comes of playing one harmonic of one tube with the hand in some state: a fingering, or none. */
import { AVOIDED_HARMONICS } from '../horn/harmonics.ts';
import { openPitchCents, printValves, type Side, type Tube } from '../horn/horn.ts';
import {
  type Fingering,
  type FingeringReason,
  type HandState,
  type Player,
  SURE_CENTS,
  type Verdict,
} from './player.ts';
import { type ClosingBand, closingBand, closingDegree, ECHO_DROP_CENTS, stop } from './stopping.ts';

/** The least closing of a natural horn that is a degree of its own: half way from open to ¼. */
const LEAST_CLOSING_DEGREE = 0.125;

/** A half stop wanders further than this from half before it is another degree: the bands ¼ to ¾. */
const HALF_STOP_DEGREES = { from: 0.25, to: 0.875 } as const;

export type Attempt = (tube: Tube, harmonic: number, wantedCents: number, player: Player) => Fingering | null;

const open: Attempt = (tube, harmonic, wantedCents) =>
  describe(tube, harmonic, harmonic, wantedCents, openPitchCents(tube, harmonic), 0, 0, null, []);

const stopped: Attempt = (tube, harmonic, wantedCents, player) => {
  if (harmonic < 2) return null;
  if (player.horn.natural) return anyDegree(tube, harmonic, wantedCents, player);
  const closed = stop(tube, harmonic, player.handOffsetCents);
  const isUnchanged = closed.limit === 'nothing-changes';
  const fingering = describe(
    tube,
    harmonic,
    isUnchanged ? harmonic : harmonic - 1,
    wantedCents,
    closed.stoppedCents,
    closed.dropCents,
    isUnchanged
      ? semitonesFrom(closed.naturalCents, wantedCents)
      : stoppedFingeredSemitones(tube, closed.naturalCents, wantedCents),
    null,
    closed.limit ? [closed.limit] : [],
  );
  const { stoppedHarmonics } = tube.side;
  return stoppedHarmonics.length > 0
    ? { ...fingering, standsWell: stoppedHarmonics.indexOf(harmonic) >= 0 }
    : fingering;
};

/** A pitch between the open and the stopped one, held by closing part of the way. */
function handClosed(
  tube: Tube,
  harmonic: number,
  wantedCents: number,
  player: Player,
  from: number,
  to: number,
): Fingering | null {
  if (harmonic < 2) return null;
  const closed = stop(tube, harmonic, player.handOffsetCents);
  const degree = closingDegree(closed, wantedCents);
  // Between open and full the hand finds the pitch itself; at either end it rests where the horn puts it.
  const playedCents = Math.min(closed.naturalCents, Math.max(closed.stoppedCents, wantedCents));
  const reasons: FingeringReason[] = closed.limit && !isSteady(closed.limit, degree) ? [closed.limit] : [];
  if (degree < from || degree > to) reasons.push('unusual-degree');
  const fingered = player.horn.natural ? 0 : semitonesFrom(closed.naturalCents, wantedCents);
  return describe(
    tube,
    harmonic,
    harmonic,
    wantedCents,
    playedCents,
    closed.naturalCents - playedCents,
    fingered,
    closed.dropCents > 0 ? closingBand(degree) : null,
    reasons,
  );
}

/**
 * A tone that would slip up under a full stop still comes down a little when the hand closes little.
 * @source widor (B3 half closed, beside A♭3 to B♭3 further); berlioz (A3 and B♭3 to be avoided, not B3)
 */
function isSteady(limit: FingeringReason, degree: number): boolean {
  return limit === 'wants-to-rise' && closingBand(degree) === '¼';
}

/** On a natural horn the hand closes as far as the note needs, whatever the part calls it. */
const anyDegree: Attempt = (tube, harmonic, wantedCents, player) => {
  const closed = handClosed(
    tube,
    harmonic,
    wantedCents,
    player,
    LEAST_CLOSING_DEGREE,
    Number.POSITIVE_INFINITY,
  );
  return closed && closed.reasons.indexOf('unusual-degree') < 0 ? closed : null;
};

const halfStopped: Attempt = (tube, harmonic, wantedCents, player) => {
  if (player.horn.natural) return anyDegree(tube, harmonic, wantedCents, player);
  const half = handClosed(tube, harmonic, wantedCents, player, HALF_STOP_DEGREES.from, HALF_STOP_DEGREES.to);
  return half && half.reasons.indexOf('unusual-degree') < 0 ? half : null;
};

/** Echo horn sounds a semitone lower than fingered, so the player fingers a semitone higher. */
const echo: Attempt = (tube, harmonic, wantedCents) => {
  const playedCents = openPitchCents(tube, harmonic) - ECHO_DROP_CENTS;
  return describe(tube, harmonic, harmonic, wantedCents, playedCents, ECHO_DROP_CENTS, 1, null, []);
};

/**
 * A stopping mute seals the bell as the hand does and is fingered like it, but needs no hand to hold the low notes down.
 * Where the horn has a side that stops by a semitone with nothing to help it, the mute is played there.
 * From memory: brass stopping mutes transpose as the hand does.
 */
const stoppingMute: Attempt = (tube, harmonic, wantedCents, player) => {
  if (harmonic < 2 || (!stopsBySemitone(tube.side) && player.horn.sides.some(stopsBySemitone))) return null;
  const asHand = stopped(tube, harmonic, wantedCents, player);
  if (!asHand) return null;
  const reasons = asHand.reasons.filter((reason) => reason === 'off-pitch');
  return { ...asHand, reasons, verdict: verdictOf(reasons) };
};

function stopsBySemitone({ fingeredNote, stoppingValveCents }: Side): boolean {
  return fingeredNote === 'lower-harmonic' && stoppingValveCents === 0;
}

/** How each hand state is played. */
export const PLAYED: { readonly [state in HandState]: Attempt } = {
  open,
  'half-stopped': halfStopped,
  stopped,
  echo,
  'stopping-mute': stoppingMute,
  'straight-mute': open,
};

function describe(
  tube: Tube,
  harmonic: number,
  carrier: number,
  wantedCents: number,
  playedCents: number,
  dropCents: number,
  fingeredSemitones: number,
  band: ClosingBand | null,
  limits: readonly FingeringReason[],
): Fingering {
  const deviationCents = playedCents - wantedCents;
  const reasons = Math.abs(deviationCents) > SURE_CENTS ? [...limits, 'off-pitch' as const] : limits;
  return {
    tube,
    printed: printValves(tube),
    harmonic,
    carrier,
    standsWell: AVOIDED_HARMONICS.indexOf(carrier) < 0,
    fingeredSemitones,
    naturalCents: playedCents + dropCents,
    dropCents,
    deviationCents,
    band,
    verdict: verdictOf(reasons),
    reasons,
  };
}

function verdictOf(reasons: readonly FingeringReason[]): Verdict {
  if (reasons.indexOf('below-the-hand') >= 0) return 'impossible';
  return reasons.length > 0 ? 'risky' : 'sure';
}

/** On sides that rest a semitone above the lower harmonic the player thinks that harmonic; elsewhere the natural pitch. */
function stoppedFingeredSemitones(tube: Tube, naturalCents: number, wantedCents: number): number {
  if (tube.side.fingeredNote === 'natural-pitch') return semitonesFrom(naturalCents, wantedCents);
  return Math.round((tube.side.stoppingValveCents - tube.side.closureCents) / 100);
}

function semitonesFrom(cents: number, wantedCents: number): number {
  return Math.round((cents - wantedCents) / 100);
}
