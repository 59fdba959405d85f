/** Every way a horn can play a written note in a given hand state, ranked as players rank them. */
import { AVOIDED_HARMONICS } from './harmonics.ts';
import {
  HARMONICS,
  type Horn,
  type LowRegisterLimit,
  openPitchCents,
  printValves,
  type Side,
  type Tube,
  tubesOf,
} from './horn.ts';
import { type ClosingBand, closingBand, closingDegree, ECHO_DROP_CENTS, stop } from './stopping.ts';

/** What the hand, or a mute, does to a note. */
export type HandState = 'open' | 'half-stopped' | 'stopped' | 'echo' | 'stopping-mute' | 'straight-mute';

export type Verdict = 'sure' | 'risky' | 'impossible';

/** Why a fingering is not simply sure. Words for it are in wording.ts. */
export type FingeringReason = LowRegisterLimit | 'nothing-changes' | 'off-pitch' | 'unusual-degree';

/** One way to play a note. Pitches sound, in cents above MIDI note 0. */
export interface Fingering {
  readonly tube: Tube;
  /** Valves as printed, with the side's prefix: `12`, `T0`. */
  readonly printed: string;
  /** The harmonic that is played, and pulled down when the hand closes. */
  readonly harmonic: number;
  /** The note the player thinks of, in semitones from the written note: −1 on the F side when stopped. */
  readonly fingeredSemitones: number;
  readonly naturalCents: number;
  /** Natural minus played pitch. */
  readonly dropCents: number;
  /** Played minus wanted pitch; sharp is positive. */
  readonly deviationCents: number;
  /** How far the hand closes, or null where the state itself says so. */
  readonly band: ClosingBand | null;
  readonly verdict: Verdict;
  readonly reasons: readonly FingeringReason[];
}

/** What a player brings: the instrument, an ear and a hand. */
export interface Player {
  readonly horn: Horn;
  /** Fingerings further than this from the written note are no fingerings, in cents; 0–100. */
  readonly toleranceCents: number;
  /** What this player's hand adds to every closure, in cents: above 0 for a hand that stops sharp. */
  readonly handOffsetCents: number;
}

/**
 * Wide enough for the published B♭-side fingering on 123 (39 cents), narrow enough to turn away the 50 cents by which
 * the B♭ side usually misses.
 * @source smalley for the row; the width is a choice
 */
export const DEFAULT_TOLERANCE_CENTS = 40;

/** A fingering further out than this is marked risky: the lip has to help. From memory: about what a player bends without thought. */
export const SURE_CENTS = 25;

/**
 * Natural horns play every harmonic as it comes, the 11th half way between two notes too.
 * @source berlioz (open F♯5, "a bit low"; open A♭5, "a bit high")
 */
const NATURAL_TOLERANCE_CENTS = 50;

/** The least closing of a natural horn that is a degree of its own: half way from open to ¼. */
const LEAST_CLOSING_DEGREE = 0.125;

/** A half stop wanders further than this from half before it is another degree: the bands ¼ to ¾. */
const HALF_STOP_DEGREES = { from: 0.25, to: 0.875 } as const;

/**
 * All fingerings of a note within the player's tolerance, first choice first; those that cannot be played come last.
 * Empty when no tube reaches the note: ask `nearestFingering` what comes closest.
 * @param soundingCents wanted sounding pitch, in cents above MIDI note 0
 */
export function fingerings(soundingCents: number, state: HandState, player: Player): readonly Fingering[] {
  const cache = CACHES.get(player) ?? {};
  CACHES.set(player, cache);
  const ofState = cache[state] ?? new Map<number, readonly Fingering[]>();
  cache[state] = ofState;
  const known = ofState.get(soundingCents);
  if (known) return known;
  const toleranceCents = player.horn.natural
    ? Math.max(player.toleranceCents, NATURAL_TOLERANCE_CENTS)
    : player.toleranceCents;
  const ranked = rank(candidates(soundingCents, state, player, toleranceCents), soundingCents, state, player);
  ofState.set(soundingCents, ranked);
  return ranked;
}

/** A part asks for the same few notes again and again; what a player can do with them does not change. */
const CACHES = new WeakMap<Player, { [state in HandState]?: Map<number, readonly Fingering[]> }>();

/** The fingering that comes closest when none is within tolerance, looking up to a semitone away; null when there is none. */
export function nearestFingering(soundingCents: number, state: HandState, player: Player): Fingering | null {
  const within = candidates(soundingCents, state, player, 100);
  within.sort(
    (a, b) => Math.abs(a.deviationCents) - Math.abs(b.deviationCents) || a.tube.order - b.tube.order,
  );
  return within[0] ?? null;
}

function candidates(
  soundingCents: number,
  state: HandState,
  player: Player,
  toleranceCents: number,
): Fingering[] {
  const found: Fingering[] = [];
  for (const side of player.horn.sides) {
    if (!side.stoppable && (state === 'stopped' || state === 'half-stopped')) continue;
    for (const tube of tubesOf(side)) {
      for (const harmonic of HARMONICS) {
        // Neighbouring harmonics lie less than an octave apart from the 2nd up, so anything further off cannot be it.
        const distance = openPitchCents(tube, harmonic) - soundingCents;
        if (distance < -toleranceCents - 100 || distance > 1200) continue;
        const fingering = PLAYED[state](tube, harmonic, soundingCents, player);
        if (fingering && Math.abs(fingering.deviationCents) <= toleranceCents + ROUNDING_CENTS)
          found.push(fingering);
      }
    }
  }
  return found;
}

/** Floating-point room at the edge of the tolerance. */
const ROUNDING_CENTS = 1e-6;

type Attempt = (tube: Tube, harmonic: number, wantedCents: number, player: Player) => Fingering | null;

const open: Attempt = (tube, harmonic, wantedCents) =>
  describe(tube, harmonic, wantedCents, openPitchCents(tube, harmonic), 0, 0, null, []);

const stopped: Attempt = (tube, harmonic, wantedCents, player) => {
  if (harmonic < 2) return null;
  if (player.horn.natural) return anyDegree(tube, harmonic, wantedCents, player);
  const closed = stop(tube, harmonic, player.handOffsetCents);
  return describe(
    tube,
    harmonic,
    wantedCents,
    closed.stoppedCents,
    closed.dropCents,
    closed.limit === 'nothing-changes'
      ? semitonesFrom(closed.naturalCents, wantedCents)
      : stoppedFingeredSemitones(tube, closed.naturalCents, wantedCents),
    null,
    closed.limit ? [closed.limit] : [],
  );
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
  const reasons: FingeringReason[] = closed.limit ? [closed.limit] : [];
  if (degree < from || degree > to) reasons.push('unusual-degree');
  const fingered = player.horn.natural ? 0 : semitonesFrom(closed.naturalCents, wantedCents);
  return describe(
    tube,
    harmonic,
    wantedCents,
    playedCents,
    closed.naturalCents - playedCents,
    fingered,
    closingBand(degree),
    reasons,
  );
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
  return describe(tube, harmonic, wantedCents, playedCents, ECHO_DROP_CENTS, 1, null, []);
};

/**
 * A stopping mute seals the bell as the hand does and is fingered like it, but needs no hand to hold the low notes down.
 * From memory: brass stopping mutes transpose as the hand does.
 */
const stoppingMute: Attempt = (tube, harmonic, wantedCents, player) => {
  const asHand =
    harmonic < 2 || tube.side.stoppingValveCents > 0 || tube.side.fingeredNote === 'natural-pitch'
      ? null
      : stopped(tube, harmonic, wantedCents, player);
  if (!asHand) return null;
  const reasons = asHand.reasons.filter((reason) => reason === 'off-pitch');
  return { ...asHand, reasons, verdict: verdictOf(reasons) };
};

const PLAYED: { readonly [state in HandState]: Attempt } = {
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

/**
 * The order players choose in. Playable before unplayable; harmonics that stand well before those that do not (when
 * stopping: the one below, which carries the pitch, or the few that the side stops in tune); a tone the hand really
 * changes before one it does not, and among those that it does not the lower, safer harmonic; the preferred side;
 * usual valves; the shortest tube; the nearest pitch.
 */
function rank(
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
  const preferred = state === 'stopped' ? side.stoppedHarmonics : [];
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
