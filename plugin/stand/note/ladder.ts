/** The way of one tone from open to sealed, on the ladder of its tube's harmonics: plain numbers to draw and to speak of. */
import {
  closingCurve,
  type Fingering,
  HIGHEST_CURVE_HARMONIC,
  harmonicCents,
  nameNear,
  type Pitch,
} from '../../../core/index.ts';

/** One harmonic of the tube. */
export interface Rung {
  readonly harmonicNumber: number;
  /** Sounding, in cents above MIDI note 0. */
  readonly cents: number;
  /** As the part would write it. */
  readonly written: Pitch;
}

/** Everything the picture shows. Pitches sound, in cents above MIDI note 0. */
export interface Ladder {
  /** Lowest first. */
  readonly rungs: readonly Rung[];
  readonly pulled: Rung;
  /** The next lower harmonic, above which the tone comes to rest. */
  readonly below: Rung;
  /** Evenly spaced from open to sealed. */
  readonly way: readonly number[];
  /** What the part asks for. */
  readonly wantedCents: number;
  /** The length of horn that sounds, a stopping valve that is pressed with it. */
  readonly tube: { readonly fundamentalCents: number };
}

/** Rungs above and below the two that matter. */
const NEIGHBOURS = 1;

/**
 * The ladder of a fingering, or null where the curve does not reach: on the lowest harmonic, and above the 16th.
 * @param written the note, from which the part's other notes are named
 * @param wantedCents its sounding pitch
 */
export function ladderOf(
  { tube, harmonic }: Fingering,
  written: Pitch,
  wantedCents: number,
  writtenCents: number,
): Ladder | null {
  if (harmonic < 2 || harmonic > HIGHEST_CURVE_HARMONIC) return null;
  const fundamentalCents = tube.fundamentalCents - tube.side.stoppingValveCents;
  const curve = curveOf(fundamentalCents, harmonic);
  if (!curve) return null;
  const rung = (harmonicNumber: number): Rung => {
    const cents = fundamentalCents + harmonicCents(harmonicNumber);
    return { harmonicNumber, cents, written: nameNear(written, cents + writtenCents - wantedCents) };
  };
  const rungs: Rung[] = [];
  for (let n = Math.max(1, harmonic - 1 - NEIGHBOURS); n <= harmonic + NEIGHBOURS; n++) rungs.push(rung(n));
  const pulled = rung(harmonic);
  return {
    rungs,
    pulled,
    below: rung(harmonic - 1),
    way: curve.map((cents) => pulled.cents + cents),
    wantedCents,
    tube: { fundamentalCents },
  };
}

/** The pitch at a degree of closing, 0 open … 1 sealed. */
export function pitchAt({ way }: Ladder, closing: number): number {
  const place = closing * (way.length - 1);
  const low = Math.min(Math.floor(place), way.length - 2);
  return way[low]! + (place - low) * (way[low + 1]! - way[low]!);
}

const CURVES = new Map<string, readonly number[] | null>();

/** Cents from the open tone, step by step; worked out once for each tube and harmonic. */
function curveOf(fundamentalCents: number, harmonic: number): readonly number[] | null {
  const key = `${fundamentalCents} ${harmonic}`;
  const known = CURVES.get(key);
  if (known !== undefined) return known;
  const made =
    closingCurve({ fundamentalCents }, { harmonics: [harmonic] }).harmonics[0]?.centsFromOpen ?? null;
  CURVES.set(key, made);
  return made;
}
