/** Composes études. */
import { checkInteger, checkNumber, checkObject, checkOneOf } from '../guards/allowed.ts';
import { checkSettings, type Settings } from '../part/settings.ts';
import { type Pitch, pitchCents, printPitch } from '../pitch/pitch.ts';
import {
  type EtudeRequest,
  type EtudeResult,
  FASTEST_TEMPO,
  LONGEST_BARS,
  PHRASE_BARS,
  SHORTEST_BARS,
  SLOWEST_TEMPO,
} from './etude.ts';
import { finished } from './finish.ts';
import { planPhrases } from './harmony.ts';
import { printKey, scaleBetween } from './key.ts';
import { ETUDE_KINDS } from './kinds.ts';
import { LEVELS } from './level.ts';
import { bendsBetween, naturalHornNotes, naturalHornSign, stoppableNotes } from './palette.ts';
import { HIGHEST_SEED, seededRandom } from './random.ts';
import { rangeOf } from './range.ts';
import { transpositionOf } from './transposition.ts';
import type { KindOfEtude } from './workshop.ts';

/** @source commonPractice */
const ADVICE = 'Rest as long as you have played. Stop when the lip tires or the hand hurts.';

/**
 * Composes an étude.
 * @returns the étude, or why this horn or range has none
 * @throws {TypeError} or {RangeError} when kind, key, length, tempo, seed, level, range or player are not what they may be
 * @example
 * const player = DEFAULT_SETTINGS;
 * const asked = { kind: 'bend', key: parseKey('F'), level: 1, bars: 8, tempo: null, low: null, high: null, seed: 7, player };
 * composeEtude(asked).etude.bars.length // => 8
 */
export function composeEtude(request: EtudeRequest): EtudeResult {
  checkObject(
    'request',
    request,
    'what is asked for: { kind, key, level, bars, tempo, low, high, seed, player }',
  );
  checkRequest(request);
  const { key, level, player, seed } = request;
  const kind = ETUDE_KINDS.filter((each) => each.kind === request.kind)[0]!;
  const transposition = transpositionOf(player);
  const { low, high } = rangeOf(request, kind.needs, transposition);
  const isNatural = player.horn.natural;
  const notesOf = isNatural ? naturalHornNotes : stoppableNotes;
  const notes = notesOf(scaleBetween(key, low, high), player, transposition);
  const bends = kind.needs === 'bends' ? bendsBetween(low, high, key, player, transposition) : [];
  const lacking = whatLacks(kind, player, kind.needs === 'bends' ? bends : notes, low, high);
  if (lacking) return { ok: false, reason: lacking };

  const random = seededRandom(seed);
  // The first draws of neighbouring seeds lie close together.
  random();
  const tempo = request.tempo ?? kind.tempo;
  const phrases = planPhrases(random, request.bars / PHRASE_BARS);
  const { meter, bars } = kind.compose({
    random,
    key,
    level,
    tempo,
    notes,
    hand: (written) => (isNatural ? naturalHornSign(written, player, transposition) : 'stopped'),
    hasOpenModel: !isNatural,
    bends,
    phrases,
  });
  return {
    ok: true,
    etude: {
      kind: request.kind,
      title: kind.title,
      subtitle: `${capital(player.horn.label)}, ${printKey(key)}, level ${level}, seed ${seed}`,
      trains: (isNatural && kind.trainsOnNaturalHorn) || kind.trains,
      advice: ADVICE,
      seed,
      key,
      meter,
      tempo,
      transposition,
      bars: finished(bars, 60 / (tempo * meter.beatQuarters)),
    },
  };
}

function checkRequest({ kind, key, bars, tempo, seed, level, low, high, player }: EtudeRequest): void {
  checkOneOf(
    'kind',
    kind,
    ETUDE_KINDS.map((each) => each.kind),
  );
  checkObject('key', key, 'a key, as parseKey reads it');
  checkSettings(player);
  if (!(bars >= SHORTEST_BARS && bars <= LONGEST_BARS) || bars % PHRASE_BARS !== 0)
    throw new RangeError(
      `"bars" must be a multiple of ${PHRASE_BARS} from ${SHORTEST_BARS} to ${LONGEST_BARS}, got ${bars}`,
    );
  if (tempo !== null) checkNumber('tempo', tempo, SLOWEST_TEMPO, FASTEST_TEMPO);
  checkInteger('seed', seed, 0, HIGHEST_SEED);
  checkOneOf('level', level, LEVELS);
  if (low && high && pitchCents(low) >= pitchCents(high))
    throw new RangeError(
      `the lowest note (${printPitch(low)}) must lie below the highest (${printPitch(high)})`,
    );
}

/** Fewer than these are no étude. */
const FEWEST = { notes: 3, bends: 3 } as const;

const NEEDED = {
  notes: 'notes of the key that can be stopped',
  bends: 'tones the hand can take down and let up again',
} as const;

function whatLacks(
  { needs, onNaturalHorn }: KindOfEtude,
  { horn }: Settings,
  { length }: readonly unknown[],
  low: Pitch,
  high: Pitch,
): string | null {
  if (horn.natural && !onNaturalHorn) {
    const others = ETUDE_KINDS.filter((each) => each.onNaturalHorn).map((each) => each.kind);
    return `a natural horn has no second fingering for the same note: choose the kind ${others.join(' or ')}`;
  }
  if (length >= FEWEST[needs]) return null;
  return `from ${printPitch(low)} to ${printPitch(high)} a ${horn.label} has ${length === 0 ? 'no' : `only ${length}`} ${NEEDED[needs]}: choose a wider range, another key, kind or horn`;
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}
